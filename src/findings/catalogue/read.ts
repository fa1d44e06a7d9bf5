import { type Entry, isFilled, named, quoted } from '../wording.ts'

/** What reading a file can find, before its shape is known. */
export const READ_FINDINGS = {
  'unknown-file': {
    says: f => `The file ${quoted(f.file)} stands where nothing is read.`,
    remedy: () =>
      'Keep each tree in a folder of its own, `trees/<id>/tree.yaml`, pieces in `shared/pieces/` and words in `locales/<language>/`, with small letters and hyphens in their names.'
  },
  'missing-file': {
    says: f => `The file ${quoted(f.file)} is missing.`,
    remedy: f => `Add ${quoted(f.file)}: ${f.holds}.`
  },
  'file-too-large': {
    says: f => `The file holds ${f.size}, more than the ${f.limit} that are read.`,
    remedy: () => 'Split it: a tree by ferment, questions that several trees share into a piece.'
  },
  'nested-too-deeply': {
    says: f => `The lists and groups here lie more than ${f.limit} deep in each other.`,
    remedy: () =>
      'Close the brackets that were left open, or indent less: no format here needs so much.'
  },
  'syntax-error': {
    says: f => `The file cannot be read from here on: ${f.fault}.`,
    remedy: f => String(f.cure)
  },
  'alias-used': {
    says: f =>
      `The mark ${quoted(f.mark)} stands for something written elsewhere, which is not read.`,
    remedy: () =>
      'Write it out. A question that answers like another says `like:`, and shared questions go into a piece.'
  },
  'duplicate-key': {
    says: f => `The key ${quoted(f.key)} is given twice in one group.`,
    remedy: f => `Keep one ${quoted(f.key)}, and move what the other holds into it.`
  },
  'forbidden-key': {
    says: f =>
      `The key ${quoted(f.key)} is not read: it means something to the machine underneath.`,
    remedy: () => 'Choose another name.'
  },
  'key-not-a-name': {
    says: () => 'A key must be a plain name, not a list, a group or nothing.',
    remedy: () => 'Write a name before the colon; put quotation marks around it if it holds signs.'
  },
  'too-many-findings': {
    says: f => `This file has ${f.more} more findings that are not shown.`,
    remedy: f => `Fix the first ${f.shown}, then check again.`
  },
  'duplicate-id': {
    says: f => `The ${f.what} ${quoted(f.id)} is there twice.`,
    remedy: f =>
      isFilled(f.taken)
        ? `Rename one of them; taken are ${named(f.taken, 'and')}.`
        : `Rename one of them, and what refers to it.`
  },
  'id-not-file-name': {
    says: f =>
      `Its file or folder is named ${quoted(f.stem)}, but it calls itself ${quoted(f.id)}.`,
    remedy: f => `Write \`id: ${f.stem}\`, or rename it.`
  }
} satisfies Record<string, Entry>
