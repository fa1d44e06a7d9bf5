import { z } from 'zod'
import { day, id, text } from './common.ts'

/** `trees/withdrawn.json`: trees that are not shown to anybody until a newer edition stands. */
export const withdrawnSchema = z.record(
  id,
  z.strictObject({
    edition: z.number().int().min(1).describe('The last edition that is withdrawn.'),
    because: text.describe('Why, for those who mend it.'),
    on: day.describe('The day of the withdrawal.')
  })
)
export type Withdrawals = z.infer<typeof withdrawnSchema>
