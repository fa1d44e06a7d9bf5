import { z } from 'zod'
import { day, id } from './common.ts'

/** What a reviewer can make of one item. */
export const DECISIONS = ['agree', 'change', 'cannot judge'] as const

/** Those without whose signature nothing is published as signed. */
export const MUST_SIGN: readonly string[] = ['food-safety specialist']

/** Who signs besides a native reader of each language. */
export const SIGNING_ROLES: readonly string[] = [...MUST_SIGN, 'food-preservation educator']

/** The role of somebody who grew up with a language, by its tag. */
export const nativeReaderOf = (tag: string): string => `native reader of ${tag}`

const FINGERPRINT = /^[0-9a-f]{64}$/
const ITEM = /^[a-z-]+(?:\/[A-Za-z0-9._-]+)+$/
const ROLE = new RegExp(
  `^(?:${SIGNING_ROLES.join('|')}|native reader of [a-z]{2,3}(?:-[A-Za-z0-9]{2,8})*)$`
)

const fingerprint = z
  .string()
  .regex(FINGERPRINT, 'a fingerprint of 64 digits, as the packet has it')
  .meta({ id: 'fingerprint' })

const itemName = z
  .string()
  .regex(ITEM, 'the name of an item, as the packet has it')
  .meta({ id: 'item-name' })

/** `<tree>.review.yaml`: what a reviewer's office fills in and sends back. No name of a person has a place in it. */
export const reviewFileSchema = z.strictObject({
  tree: id.describe('The tree that was reviewed.'),
  meaning: fingerprint.describe('The fingerprint of its meaning.'),
  words: fingerprint.describe('The fingerprint of its English words and its pictures.'),
  items: fingerprint.describe('The fingerprint of the items of part 1.'),
  decisions: z
    .record(
      itemName,
      z.strictObject({
        decision: z
          .enum(DECISIONS)
          .nullable()
          .describe('agree, change or cannot judge. Empty until somebody has decided.'),
        comment: z
          .string()
          .nullable()
          .optional()
          .describe('What the reviewer says to it; of a change: what it should be.')
      })
    )
    .describe('For each item of part 1, by its name, what was decided.'),
  signatures: z
    .array(
      z.strictObject({
        role: z
          .string()
          .regex(ROLE, `one of ${[...SIGNING_ROLES, nativeReaderOf('es')].join(', ')}`)
          .describe('In what role: never a name.'),
        signed: day
          .nullable()
          .describe('The day on which that role signed on paper. Empty until it has.')
      })
    )
    .describe('Who signed, by role. The paper with the names stays in the office.')
})
export type ReviewFile = z.infer<typeof reviewFileSchema>
