import { z } from 'zod'
import { answerId, id, range, said } from './common.ts'

const about = z.enum(['person', 'container', 'batch'])

const choice = z.strictObject({
  kind: z.literal('choice'),
  about,
  settles: id.optional(),
  picture: id.optional(),
  said: said.optional(),
  answers: z.record(
    answerId,
    z.strictObject({
      danger: z.boolean().optional(),
      usual: z.boolean().optional(),
      'stands-for': id.optional(),
      picture: id.optional(),
      said: said.optional()
    })
  )
})

const signs = z.strictObject({
  kind: z.literal('signs'),
  about,
  picture: id.optional(),
  said: said.optional(),
  signs: z.record(
    answerId,
    z.strictObject({
      danger: z.boolean().optional(),
      volunteered: z.boolean().optional(),
      picture: id.optional(),
      said: said.optional()
    })
  )
})

const measure = z.strictObject({
  kind: z.literal('measure'),
  about,
  unit: z.enum(['ph', 'day', 'fahrenheit', 'percent']),
  instruments: z.record(id, z.number().positive()).optional(),
  span: z.strictObject({ from: z.number(), to: z.number() }),
  usual: range.optional(),
  picture: id.optional(),
  said: said.optional()
})

/** `shared/observations.yaml`: every observation there is. */
export const observationsSchema = z.record(
  id,
  z.discriminatedUnion('kind', [choice, signs, measure])
)
export type AuthoredObservations = z.infer<typeof observationsSchema>
export type AuthoredObservation = AuthoredObservations[string]
