import { type Entry, quoted } from '../wording.ts'

/** What is wrong with the editions of a tree that were published. */
export const EDITION_FINDINGS = {
  'edition-unreadable': {
    says: f => `The file ${quoted(f.file)} is not the published edition that its name says.`,
    remedy: () => 'Take it back from the project’s history: a published edition is never edited.'
  },
  'edition-changed': {
    says: f =>
      `Edition ${f.edition} of ${quoted(f.tree)} was published, and its ${f.part} changed since.`,
    remedy: () =>
      'Take the file back from the project’s history; publish what is new as a new edition.'
  },
  'withdrawn-unknown': {
    says: f => `${quoted(f.tree)} is withdrawn, and there is no such tree.`,
    remedy: () => 'Write the tree’s own name, or take the line out: what was meant is still shown.'
  },
  'edition-not-raised': {
    says: f =>
      `${quoted(f.tree)} calls itself edition ${f.edition}, which was published with another meaning or before a newer one.`,
    remedy: f =>
      `Write \`edition: ${f.next}\` in \`trees/${f.tree}/tree.yaml\`; \`jarside compare\` shows what changed.`
  }
} satisfies Record<string, Entry>
