import type { Finding } from '../findings/finding.ts'
import type { Place } from '../findings/place.ts'
import { at } from '../tree/must.ts'
import type { Authored, Keys } from './authored.ts'
import { likeAnother } from './like.ts'
import { unknownName } from './linking.ts'
import type { Shaped } from './project.ts'
import type { FindingReport } from './report.ts'
import type { AuthoredBranch, AuthoredQuestion } from './schemas/question.ts'
import type { AuthoredNote, AuthoredPiece, AuthoredTree } from './schemas/tree.ts'

/** A question as it stands in the expanded tree, before its names are linked. */
export interface DraftQuestion {
  readonly id: string
  /** With what `like:` copies in. */
  readonly body: AuthoredQuestion
  place(keys: Keys, part?: 'key' | 'value'): Place
  /** Where the piece is taken in that the question comes from. */
  readonly because: Finding['because']
  /** What may follow `to:` here, as authors write it, and the question that it means. */
  readonly leads: ReadonlyMap<string, string>
  /** Set where `instead:` stands for it: it reads what was told, and has no word of its own to ask it. */
  readonly reads?: {
    /** What follows where none of the signs is there. */
    readonly none?: AuthoredBranch
  }
}

/** A note as it stands in the expanded tree. */
export interface DraftNote {
  readonly id: string
  readonly body: AuthoredNote
  place(keys: Keys, part?: 'key' | 'value'): Place
}

/** A tree with its pieces copied in. */
export interface Draft {
  readonly start: string
  /** The question through which every end leads, where there is one. */
  readonly last?: string
  readonly questions: ReadonlyMap<string, DraftQuestion>
  readonly after: readonly DraftQuestion[]
  readonly notes: ReadonlyMap<string, DraftNote>
}

interface Owner {
  readonly doc: Authored
  readonly questions: Readonly<Record<string, AuthoredQuestion>>
  readonly leads: ReadonlyMap<string, string>
  readonly prefix: string
  readonly because: Finding['because']
}

/** Copies the pieces into a tree under their prefix, and what `like:` names into its questions. */
export function expand(
  { value: tree, doc }: Shaped<AuthoredTree>,
  pieces: ReadonlyMap<string, Shaped<AuthoredPiece>>,
  report: FindingReport
): Draft {
  const taken = takenIn({ value: tree, doc }, pieces, report)
  const leads = new Map(Object.keys(tree.questions).map(id => [id, id]))
  for (const { value } of taken) leads.set(value.id, `${value.id}-${value.start}`)
  const top: Owner = { doc, questions: tree.questions, leads, prefix: '', because: [] }
  const owners = [
    ...taken.map(piece => pieceOwner(piece, { value: tree, doc }, leads, report)),
    top
  ]
  const questions = new Map<string, DraftQuestion>()
  for (const owner of owners) {
    for (const draft of Object.keys(owner.questions).map(id => draftOf(owner, id, report))) {
      if (questions.has(draft.id)) {
        const facts = { what: 'question', id: draft.id, taken: [] }
        report.add('duplicate-id', draft.place([]), facts, owner.because)
      } else questions.set(draft.id, draft)
    }
  }
  const meant = (key: 'start' | 'last', name: string) => {
    const id = leads.get(name)
    if (id !== undefined) return id
    unknownName(report, 'unknown-question', doc.place([key], 'value'), name, leads.keys())
    return ''
  }
  const after: AuthoredQuestion[] = Object.values(tree.after ?? {})
  return {
    start: meant('start', tree.start),
    ...(tree.last !== undefined && { last: meant('last', tree.last) }),
    questions,
    after: Object.keys(tree.after ?? {}).map((id, index) => ({
      id,
      body: at(after, index),
      place: (keys, part) => doc.place(['after', id, ...keys], part),
      because: [],
      leads: new Map()
    })),
    notes: notesOf([...taken, { value: tree, doc }], report)
  }
}

function takenIn(
  { value: tree, doc }: Shaped<AuthoredTree>,
  pieces: ReadonlyMap<string, Shaped<AuthoredPiece>>,
  report: FindingReport
): readonly Shaped<AuthoredPiece>[] {
  return Object.entries(tree.pieces ?? {}).flatMap(([id, exits]) => {
    const piece = pieces.get(id)
    if (!piece) {
      unknownName(report, 'unknown-piece', doc.place(['pieces', id]), id, pieces.keys())
      return []
    }
    for (const exit of Object.keys(exits)) {
      if (piece.value.exits.includes(exit)) continue
      const place = doc.place(['pieces', id, exit])
      unknownName(report, 'unknown-exit', place, exit, piece.value.exits)
    }
    for (const exit of piece.value.exits) {
      if (Object.hasOwn(exits, exit)) continue
      report.add('missing-exit', doc.place(['pieces', id]), { piece: id, exit })
    }
    return [piece]
  })
}

function pieceOwner(
  { value: piece, doc }: Shaped<AuthoredPiece>,
  tree: Shaped<AuthoredTree>,
  treeLeads: ReadonlyMap<string, string>,
  report: FindingReport
): Owner {
  const leads = new Map(Object.keys(piece.questions).map(id => [id, `${piece.id}-${id}`]))
  const place = tree.doc.place(['pieces', piece.id])
  const because = [{ label: 'Copied in here', place }]
  if (!leads.has(piece.start)) {
    const place = doc.place(['start'], 'value')
    unknownName(report, 'unknown-question', place, piece.start, leads.keys(), because)
  }
  // An author is told of an exit once: what uses it is not at fault.
  for (const exit of piece.exits) leads.set(exit, '')
  for (const [exit, to] of Object.entries(tree.value.pieces?.[piece.id] ?? {})) {
    const lead = treeLeads.get(to)
    if (lead !== undefined) leads.set(exit, lead)
    else {
      const place = tree.doc.place(['pieces', piece.id, exit], 'value')
      unknownName(report, 'unknown-question', place, to, treeLeads.keys())
    }
  }
  return { doc, questions: piece.questions, leads, prefix: `${piece.id}-`, because }
}

function draftOf(owner: Owner, name: string, report: FindingReport): DraftQuestion {
  const { body, from } = likeAnother(name, owner.questions, owner.doc, owner.because, report)
  return {
    id: `${owner.prefix}${name}`,
    body,
    // What was copied stands where it was copied from.
    place: (keys, part) => owner.doc.place(['questions', from(keys[0]), ...keys], part),
    because: owner.because,
    leads: owner.leads
  }
}

function notesOf(
  owners: readonly { readonly value: AuthoredTree | AuthoredPiece; readonly doc: Authored }[],
  report: FindingReport
): ReadonlyMap<string, DraftNote> {
  const notes = new Map<string, DraftNote>()
  for (const { value, doc } of owners) {
    for (const [id, body] of Object.entries(value.notes ?? {})) {
      const place: DraftNote['place'] = (keys, part) => doc.place(['notes', id, ...keys], part)
      const before = notes.get(id)
      if (before) {
        const facts = { what: 'note', id, taken: [] }
        report.add('duplicate-id', place([]), facts, [
          { label: 'First here', place: before.place([]) }
        ])
      } else notes.set(id, { id, body, place })
    }
  }
  return notes
}
