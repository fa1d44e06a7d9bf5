import { z } from 'zod'
import { day, id, text } from './common.ts'

/** `shared/sources.yaml`: every publication cited, and what stands in none. */
export const sourcesSchema = z.record(
  id,
  z
    .strictObject({
      title: text.describe('Its title; [in brackets] where we describe it ourselves.'),
      publisher: text.nullable().describe('Who published it; null where that is not known.'),
      short: text.optional().describe('How its publisher is commonly known, for paper.'),
      year: z
        .number()
        .int()
        .min(1800)
        .max(2200)
        .nullable()
        .describe('The year of publication; null where that is not known.'),
      address: text.nullable().describe('Where it can be read; null where it cannot.'),
      kind: z
        .enum([
          'publication',
          'regulation',
          'relayed',
          'common-practice',
          'own-caution',
          'from-memory'
        ])
        .describe('What kind of ground it is. Never claim a publication that nobody read.'),
      copy: z
        .enum(['original', 'copy', 'none'])
        .describe('Which text was read: the publisher’s own, somebody’s copy, or none.'),
      checked: z
        .strictObject({
          how: z.enum(['read', 'relayed', 'memory']).describe('How we came to know it.'),
          on: day.describe('When.')
        })
        .describe('How and when it was checked.'),
      note: text.optional().describe('What a reviewer should know about it.')
    })
    .meta({ id: 'source' })
)
export type Sources = z.infer<typeof sourcesSchema>
