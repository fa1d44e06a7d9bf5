import { type Entry, isFilled, meant, named, quoted } from '../wording.ts'

/** What a file's keys and values can have wrong, before they are linked to each other. */
export const SHAPE_FINDINGS = {
  'unknown-key': {
    says: f => `The key ${quoted(f.key)} has no meaning here.${meant(f)}`,
    remedy: f =>
      isFilled(f.known) ? `What may stand here: ${named(f.known, 'and')}.` : 'Leave it out.'
  },
  'missing-key': {
    says: f => `The key ${quoted(f.key)} is missing in ${quoted(f.group)}.`,
    remedy: f => `Add \`${f.key}:\`, ${f.wants}.`
  },
  'wrong-kind': {
    says: f => `${quoted(f.key)} holds ${f.has} where ${f.wants} is meant.`,
    remedy: f => `Write ${f.wants}.`
  },
  'wrong-value': {
    says: f => `${quoted(f.key)} cannot be ${quoted(f.value)}.${meant(f)}`,
    remedy: f => `Write ${named(f.among)}.`
  },
  'wrong-form': {
    says: f => `${quoted(f.value)} is not ${f.wants}.`,
    remedy: f => `Write ${f.wants}.`
  },
  'out-of-bounds': {
    says: f => `${quoted(f.key)} is out of bounds: ${f.wants} is meant.`,
    remedy: f => `Write ${f.wants}.`
  },
  'key-not-for-kind': {
    says: f =>
      `The question ${quoted(f.question)} asks ${quoted(f.asks)}, ${f.kind}, which has no use for ${quoted(f.key)}.`,
    remedy: f => `Leave it out; ${f.kind} takes ${named(f.known, 'and')}.`
  }
} satisfies Record<string, Entry>
