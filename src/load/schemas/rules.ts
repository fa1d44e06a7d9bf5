import { z } from 'zod'
import { because, id, ids, rangeKeys, text, use } from './common.ts'

const signValue = z.enum(['yes', 'no', 'unsure'])

/** One name or several; signs by name; a part of a measure's line, or a limit that the interval straddles. */
const condition = z
  .union([
    id,
    z.array(id).min(1),
    z.strictObject({
      ...rangeKeys,
      straddles: z
        .number()
        .optional()
        .describe('The reading, give or take, reaches to both sides of this limit.')
    }),
    z.record(id, z.union([signValue, z.array(signValue).min(1)]))
  ])
  .meta({ id: 'condition' })
export type AuthoredCondition = z.infer<typeof condition>

export const conjunction = z.record(id, condition).meta({ id: 'conditions' })
export type AuthoredConjunction = z.infer<typeof conjunction>

/** What a rule can claim; each rule makes one claim. */
export const CLAIMS = [
  'at-least',
  'at-most',
  'use-is',
  'use-at-most',
  'use-at-least',
  'nothing-about',
  'note',
  'says',
  'never-says'
] as const

/** What must hold for every complete set of answers. */
export const ruleSchema = z
  .strictObject({
    id: id.describe('The name of the rule. It says what the rule says, such as fuzz-is-discarded.'),
    when: conjunction.describe(
      'For which answers it speaks, by observation; all must hold. `rest: usual`: all else looks ordinary.'
    ),
    unless: z.array(conjunction).optional().describe('Exceptions, each written like `when`.'),
    // biome-ignore lint/suspicious/noThenProperty: the word that authors write
    then: z
      .strictObject({
        'at-least': id.optional().describe('This verdict or a more cautious one on its track.'),
        'at-most': id.optional().describe('This verdict or a gentler one on its track.'),
        'use-is': use.optional().describe('Exactly this may be drunk.'),
        'use-at-most': use.optional().describe('This or less may be drunk.'),
        'use-at-least': use.optional().describe('This or more may be drunk.'),
        'nothing-about': z
          .enum(['person', 'container', 'batch'])
          .optional()
          .describe('No verdict about this is given at all.'),
        note: id.optional().describe('This note is said.'),
        says: ids
          .optional()
          .describe('These steps and notes are said; steps of one list in this order.'),
        'never-says': ids.optional().describe('None of these steps and notes is said.')
      })
      // One claim a rule: loading says so too, once the names are linked.
      .meta({ minProperties: 1, maxProperties: 1 })
      .describe('What must then come out: one claim.'),
    basis: z
      .enum(['published', 'relayed', 'common-practice', 'own-caution', 'memory'])
      .describe('What kind of ground it stands on.'),
    because,
    dissent: z
      .array(
        z.strictObject({
          source: id.optional().describe('Which source; left out where it is not one text.'),
          says: text.describe('What it says, in a sentence.')
        })
      )
      .min(1)
      .optional()
      .describe('What sources say otherwise. The rule itself is the side taken.')
  })
  .meta({ id: 'rule' })
export type AuthoredRule = z.infer<typeof ruleSchema>

/** `trees/<id>/rules.yaml`: the rules of a tree, and `shared/rules/<name>.yaml`: rules that several share. */
export const rulesSchema = z.strictObject({
  with: z.array(id).min(1).optional().describe('Rules of shared/rules that hold for this one too.'),
  rules: z.array(ruleSchema).describe('What must hold for every set of answers.'),
  'unfound-faults': z
    .record(text, text.describe('Why no rule can find it, or none is written.'))
    .optional()
    .describe('Slips in the tree that nothing finds, as `jarside check --faults` names them.')
})
export type AuthoredRules = z.infer<typeof rulesSchema>
