import { type Entry, meant, quoted } from '../wording.ts'

/** What the words can have wrong: every text has its place, and every place its text. */
export const WORD_FINDINGS = {
  'missing-text': {
    says: f => `${quoted(f.text)} has no English words.${meant(f)}`,
    remedy: f => `Add it to ${quoted(f.file)}.`
  },
  'orphaned-text': {
    says: f => `Nothing shows the text ${quoted(f.text)}.${meant(f)}`,
    remedy: () => 'Remove it, or use the name that the tree uses.'
  }
} satisfies Record<string, Entry>
