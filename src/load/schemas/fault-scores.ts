import { z } from 'zod'
import { id, text } from './common.ts'

const count = z.number().int().min(0)

/** `trees/fault-scores.json`: how many seeded faults were found when they were last all made. */
export const recordedScoresSchema = z.record(
  id,
  z.strictObject({
    fingerprint: text.describe('Of the tree that was scored, with its rules and its pieces.'),
    faults: count.describe('Slips that make some outcome less cautious.'),
    found: count.describe('Those that some rule or law finds.'),
    unfound: z.array(text).describe('The names of the others.'),
    advice: z
      .strictObject({
        faults: count.describe('Slips with which some outcome says something else.'),
        found: count.describe('Those that some rule or law finds.'),
        unfound: z.array(text).describe('The names of the others.')
      })
      .optional()
      .describe('The same of slips in what is said.')
  })
)
export type RecordedScores = z.infer<typeof recordedScoresSchema>
