import { nativeReaderOf, type ReviewFile, SIGNING_ROLES } from '../load/schemas/review-file.ts'
import type { PacketItem } from '../paper/packet/items.ts'
import { SOURCE_TAG } from '../words/words.ts'

/** What a review is of: the same in the packet and in the file that comes back. */
export type ReviewedState = Pick<ReviewFile, 'tree' | 'meaning' | 'words' | 'items'>

/** The roles that a packet has a place for: those of the field, and a native reader of each language. */
export const rolesFor = (tags: readonly string[]): readonly string[] => [
  ...SIGNING_ROLES,
  ...tags.filter(tag => tag !== SOURCE_TAG).map(nativeReaderOf)
]

/** The file that a reviewer's office fills in: every decision and every signature is empty. */
export function reviewTemplate(
  { tree, meaning, words, items }: ReviewedState,
  all: readonly PacketItem[],
  roles: readonly string[]
): string {
  const decisions = all.flatMap(({ id, name }, index) => [
    `  # ${index + 1}. ${oneLine(name)}`,
    `  ${id}:`,
    '    decision:',
    '    comment:'
  ])
  const signatures = roles.flatMap(role => [`  - role: ${role}`, '    signed:'])
  return `${[
    '# yaml-language-server: $schema=shared/schemas/review.schema.json',
    '# What was decided of the review packet. Fill in and give it to: jarside publish <tree> --review <this file>',
    '# decision: agree, change, or cannot judge. comment: in quotes, "like this"; of a change what it should be.',
    '# signed: the day, like 2027-03-02. Roles alone: the paper with the names stays in the office.',
    `tree: ${tree}`,
    // In quotes: digits alone, or with one e among them, would be read as a number.
    `meaning: '${meaning}'`,
    `words: '${words}'`,
    `items: '${items}'`,
    all.length === 0 ? 'decisions: {}' : 'decisions:',
    ...decisions,
    'signatures:',
    ...signatures
  ].join('\n')}\n`
}

/** A comment must not end where its line does. */
const oneLine = (text: string): string => text.replace(/\s+/g, ' ').slice(0, MOST)

const MOST = 110
