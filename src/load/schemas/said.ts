import { z } from 'zod'
import { answerId, id, rangeKeys, said } from './common.ts'

const meaning = z
  .strictObject({
    told: said.optional().describe('Words that can mean nothing else, by language.'),
    'may-mean': said
      .optional()
      .describe('Words that can mean this and something else: offered, never taken.'),
    'rules-out': said.optional().describe('Words that say of a sign that it is not there.'),
    'as-well': z
      .array(answerId)
      .optional()
      .describe('Signs of the screen that the words that rule this one out rule out too.'),
    reads: z
      .strictObject({
        unit: z.enum(['hour', 'fahrenheit']).describe('What it is read in.'),
        ...rangeKeys
      })
      .optional()
      .describe('The readings that this answer of a choice stands for.'),
    both: z
      .tuple([answerId, answerId])
      .optional()
      .describe('Two signs of the screen that told together are this one.')
  })
  .meta({ id: 'meaning' })

/** `shared/said.yaml`, and `trees/<id>/said.yaml`: more of what callers say, a line a phrase. */
export const saidSchema = z.strictObject({
  foods: said
    .default({})
    .describe('What is made, and in what, by language: words that tell nothing by themselves.'),
  ferments: z
    .record(id, said)
    .default({})
    .describe(
      'By tree: what callers call what it is about. Named in another, its questions are offered.'
    ),
  phrases: z
    .record(id, z.record(id, meaning).describe('By answer or sign; `none` for none of the signs.'))
    .describe('By observation.')
})
export type AuthoredSaid = z.infer<typeof saidSchema>
