import { z } from 'zod'
import { day, id, ids, recheck, text, trigger } from './common.ts'
import { afterSchema, questionSchema } from './question.ts'
import { ruleSchema } from './rules.ts'
import { stepsSchema } from './verdicts.ts'

const note = z.strictObject({
  adds: z.array(id).optional(),
  clean: z.array(id).optional(),
  drops: z.array(id).optional(),
  'not-when-discarded': z.boolean().optional(),
  recheck: recheck.optional(),
  refer: z.array(trigger).optional(),
  because: ids
})
export type AuthoredNote = z.infer<typeof note>

/** `trees/<id>.yaml`: one tree. */
export const treeSchema = z.strictObject({
  id,
  edition: z.number().int().min(1),
  review: z.strictObject({
    state: z.enum(['draft', 'signed']),
    by: z.array(text),
    reviewed: day.nullable(),
    due: day
  }),
  pieces: z.record(id, z.record(id, id)).optional(),
  start: id,
  questions: z.record(id, questionSchema),
  after: z.record(id, afterSchema).optional(),
  rules: z.array(ruleSchema).optional(),
  advice: z.record(id, stepsSchema).optional(),
  notes: z.record(id, note).optional()
})
export type AuthoredTree = z.infer<typeof treeSchema>

/** `shared/pieces/<id>.yaml`: questions that several trees copy in. */
export const pieceSchema = z.strictObject({
  id,
  start: id,
  exits: z.array(id),
  questions: z.record(id, questionSchema),
  notes: z.record(id, note).optional()
})
export type AuthoredPiece = z.infer<typeof pieceSchema>
