import { z } from 'zod'
import { MODEL_INPUTS, type Model } from '../../tree/derived.ts'
import { must } from '../../tree/must.ts'
import { answerId, id, range, said } from './common.ts'

const about = z
  .enum(['person', 'container', 'batch'])
  .describe('What it tells about: a person, the container, or the batch in it.')
const settles = id
  .optional()
  .describe('Another choice to which an answer here counts as a second answer.')
const danger = z
  .boolean()
  .optional()
  .describe('true: it must never end gently. Mark few: each mark costs needless waits.')
const picture = id.optional().describe('A drawing: shared/pictures/<picture>.svg.')

const choice = z.strictObject({
  kind: z.literal('choice').describe('One answer of several.'),
  about,
  settles,
  unordered: z
    .boolean()
    .optional()
    .describe(
      'true: the answers are kinds, none more worrying than the next in all cases. Of two told either can be so.'
    ),
  picture,
  said: said.optional(),
  answers: z
    .record(
      answerId,
      z.strictObject({
        danger,
        usual: z.boolean().optional().describe('true: what an ordinary, untroubled jar shows.'),
        'stands-for': id
          .optional()
          .describe('The answer of the settled choice that this one means.'),
        picture,
        said: said.optional()
      })
    )
    .describe('The answers by name, most worrying first. Unsure is understood.')
})

const signs = z.strictObject({
  kind: z.literal('signs').describe('Several signs on one screen, each there or not.'),
  about,
  picture,
  said: said.optional(),
  signs: z
    .record(
      answerId,
      z.strictObject({
        danger,
        volunteered: z.boolean().optional().describe('true: heard when told, never asked.'),
        picture,
        said: said.optional()
      })
    )
    .describe('The signs by name, most worrying first.')
})

const derivation = (by: Model) =>
  z.strictObject({
    by: z.literal(by).describe('The model that works it out.'),
    from: z
      .strictObject(
        Object.fromEntries(
          MODEL_INPUTS[by].map(input => [input, id.describe('The observation that is this input.')])
        )
      )
      .describe('Which observation is which of its inputs.')
  })
const isModel = (name: string): name is Model => Object.hasOwn(MODEL_INPUTS, name)
const [firstModel, ...otherModels] = Object.keys(MODEL_INPUTS).filter(isModel).map(derivation)
const derived = z
  .discriminatedUnion('by', [must(firstModel, 'model'), ...otherModels])
  .optional()
  .describe('How it can be worked out from quantities that people know.')

const measure = z.strictObject({
  kind: z.literal('measure').describe('A number, read off or counted.'),
  about,
  unit: z
    .enum([
      'ph',
      'day',
      'fahrenheit',
      'percent',
      'milliliter',
      'gram',
      'gram-per-liter',
      'ph-difference'
    ])
    .describe('In what it is told.'),
  instruments: z
    .record(id, z.number().positive())
    .optional()
    .describe('What it is read with, and how far a reading may be off either way.'),
  span: z
    .strictObject({
      from: z.number().describe('The least reading.'),
      to: z.number().describe('The greatest reading.')
    })
    .describe('The readings that can be true at all, both ends included.'),
  usual: range.optional().describe('What an ordinary, untroubled jar shows.'),
  derived,
  picture,
  said: said.optional()
})

/** `shared/observations.yaml`: every observation there is. */
export const observationsSchema = z.record(
  id,
  z.discriminatedUnion('kind', [choice, signs, measure])
)
export type AuthoredObservations = z.infer<typeof observationsSchema>
export type AuthoredObservation = AuthoredObservations[string]
