import { z } from 'zod'
import { day, id, text } from './common.ts'

/** `shared/sources.yaml`: every publication cited, and what stands in none. */
export const sourcesSchema = z.record(
  id,
  z.strictObject({
    title: text,
    publisher: text.nullable(),
    year: z.number().int().min(1800).max(2200).nullable(),
    address: text.nullable(),
    kind: z.enum([
      'publication',
      'regulation',
      'relayed',
      'common-practice',
      'own-caution',
      'from-memory'
    ]),
    copy: z.enum(['original', 'copy', 'none']),
    checked: z.strictObject({ how: z.enum(['read', 'relayed', 'memory']), on: day }),
    note: text.optional()
  })
)
export type Sources = z.infer<typeof sourcesSchema>
