import { z } from 'zod'
import { id, text, use } from './common.ts'

const signs = z.record(id, z.enum(['yes', 'no', 'unsure'])).meta({ id: 'told-signs' })

/** A reading with its instrument, such as 3.2@meter, or the name of an answer or sign. */
const word = z
  .string()
  .regex(/^(?:[a-z][a-z0-9-]*|-?\d+(?:\.\d+)?@[a-z][a-z0-9-]*)$/)
  .meta({ id: 'told-word' })

export const told = z
  .record(id, z.union([word, z.number(), z.array(id).min(1), signs]))
  .meta({ id: 'told' })
export type AuthoredTold = z.infer<typeof told>

const verdict = (of: string) =>
  id.nullable().optional().describe(`The verdict on ${of}; null: none.`)

const group = z
  .strictObject({
    expect: z
      .strictObject({
        person: verdict('the person'),
        container: verdict('the container'),
        batch: verdict('the batch'),
        use: use.optional().describe('What may be drunk.')
      })
      .refine(
        expected => Object.keys(expected).length > 0,
        'what must come out, on one track at least'
      )
      .meta({ minProperties: 1 })
      .describe(
        'What must come out; a track or the use that is left out is not settled by the row.'
      ),
    source: text.describe('Where the guidance says so.'),
    told: z
      .array(z.record(z.string(), told))
      .min(1)
      .describe('One row a line: its number and what was found, then what is told of it.')
  })
  .meta({ id: 'rows' })
export type AuthoredRowGroup = z.infer<typeof group>

/** `trees/<id>/rows.yaml`, and `shared/rows/<name>.yaml`: rows of the guidance. */
export const rowsSchema = z.strictObject({
  with: z.array(id).min(1).optional().describe('Rows of shared/rows that hold for this one too.'),
  usual: told
    .optional()
    .describe('What an ordinary one shows where a row says nothing, beside what is marked usual.'),
  rows: z.array(group).optional().describe('What the guidance finds, and what comes of it.'),
  limits: z.array(group).optional().describe('Each limit, on both sides.')
})
export type AuthoredRows = z.infer<typeof rowsSchema>
