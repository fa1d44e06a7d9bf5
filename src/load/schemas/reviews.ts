import { z } from 'zod'
import { REVIEWERS } from '../../translation/ledger.ts'
import { day, text } from './common.ts'

const HASH = /^[0-9a-f]{16}$/

/** `shared/reviews/<language>.json`: which translations were reviewed, and against which English. */
export const reviewsSchema = z.record(
  text,
  z.strictObject({
    english: z.string().regex(HASH, 'a hash of 16 digits, as `jarside translate accept` writes it'),
    target: z.string().regex(HASH, 'a hash of 16 digits, as `jarside translate accept` writes it'),
    by: z.enum(REVIEWERS),
    on: day
  })
)
export type AuthoredReviews = z.infer<typeof reviewsSchema>
