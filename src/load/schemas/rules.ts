import { z } from 'zod'
import { id, ids, rangeKeys, use } from './common.ts'

const signValue = z.enum(['yes', 'no', 'unsure'])

/** One name or several; signs by name; a part of a measure's line, or a limit that the interval straddles. */
const condition = z.union([
  id,
  z.array(id).min(1),
  z.strictObject({ ...rangeKeys, straddles: z.number().optional() }),
  z.record(id, z.union([signValue, z.array(signValue).min(1)]))
])
export type AuthoredCondition = z.infer<typeof condition>

const conjunction = z.record(id, condition)
export type AuthoredConjunction = z.infer<typeof conjunction>

/** What a rule can claim; each rule makes one claim. */
export const CLAIMS = [
  'at-least',
  'at-most',
  'use-is',
  'use-at-most',
  'use-at-least',
  'note'
] as const

/** What must hold for every complete set of answers. */
export const ruleSchema = z.strictObject({
  id,
  when: conjunction,
  unless: z.array(conjunction).optional(),
  // biome-ignore lint/suspicious/noThenProperty: the word that authors write
  then: z.strictObject({
    'at-least': id.optional(),
    'at-most': id.optional(),
    'use-is': use.optional(),
    'use-at-most': use.optional(),
    'use-at-least': use.optional(),
    note: id.optional()
  }),
  basis: z.enum(['published', 'relayed', 'common-practice', 'own-caution', 'memory']),
  because: ids
})
export type AuthoredRule = z.infer<typeof ruleSchema>

/** `trees/<id>.rules.yaml`: the rules of a tree, in a file of their own. */
export const rulesSchema = z.strictObject({ rules: z.array(ruleSchema) })
