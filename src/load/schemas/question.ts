import { z } from 'zod'
import { id, ids, rangeKeys, use } from './common.ts'

const effectKeys = { raise: ids.optional(), use: use.optional(), note: ids.optional() }
const leadsKeys = { to: id.optional(), end: id.optional() }
const noteKeys = { note: ids.optional() }

const effect = z.strictObject(effectKeys)
const branch = z.strictObject({ ...effectKeys, ...leadsKeys })

/** A question of a tree or piece. Which keys it may have depends on the kind of what it asks. */
export const questionSchema = z.strictObject({
  asks: id,
  because: ids,
  like: id.optional(),
  volunteered: z.boolean().optional(),
  answers: z.record(id, branch).optional(),
  signs: z.record(id, z.strictObject({ ...effectKeys, unsure: effect.optional() })).optional(),
  branch: z
    .array(
      z.strictObject({
        signs: z.array(id).min(1),
        'or-unsure': z.boolean().optional(),
        ...effectKeys,
        ...leadsKeys
      })
    )
    .optional(),
  taste: z.array(z.strictObject({ ...rangeKeys, ...effectKeys })).optional(),
  ranges: z.array(z.strictObject({ ...rangeKeys, ...effectKeys, ...leadsKeys })).optional(),
  borderline: branch.optional(),
  unsure: branch.optional(),
  ...leadsKeys
})
export type AuthoredQuestion = z.infer<typeof questionSchema>
export type AuthoredBranch = z.infer<typeof branch>
export type AuthoredEffect = z.infer<typeof effect>

const note = z.strictObject(noteKeys)

/** A question put after the outcome: notes only. */
export const afterSchema = z.strictObject({
  asks: id,
  because: ids,
  answers: z.record(id, note).optional(),
  signs: z.record(id, z.strictObject({ ...noteKeys, unsure: note.optional() })).optional(),
  ranges: z.array(z.strictObject({ ...rangeKeys, ...noteKeys })).optional(),
  borderline: note.optional(),
  unsure: note.optional()
})
