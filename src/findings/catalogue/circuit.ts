import { type Entry, quoted } from '../wording.ts'

/** What a linked tree can have wrong as a whole, and what of the catalogue lies unused. */
export const CIRCUIT_FINDINGS = {
  'unreachable-question': {
    says: f => `Nothing leads to the question ${quoted(f.question)}.`,
    remedy: f => `Point an answer at ${quoted(f.question)}, or remove it.`
  },
  'read-before-told': {
    says: f =>
      `${quoted(f.observation)} is read here, and a walk can come here that has not asked it.`,
    remedy: f =>
      `Ask ${quoted(f.observation)} on every way here, or lead to a question that asks it.`
  },
  circle: {
    says: f =>
      `The walk can go in a circle: ${(f.questions as readonly string[]).map(quoted).join(' → ')}.`,
    remedy: () => 'Send one of these answers on to a later question, or end there.'
  },
  'observation-unused': {
    says: f => `No tree asks the observation ${quoted(f.observation)}.`,
    remedy: () => 'Ask it in a tree, or remove it with its words.'
  },
  'piece-unused': {
    says: f => `No tree takes in the piece ${quoted(f.piece)}.`,
    remedy: () =>
      'Name it under `pieces:` of a tree, or, for rows, under `with:` in its `rows.yaml`; or remove it.'
  },
  'note-unused': {
    says: f => `Nothing adds the note ${quoted(f.note)}.`,
    remedy: () => 'Add it to the answers that call for it, or remove it with its words.'
  },
  'sign-unmentioned': {
    says: f =>
      `The tree asks ${quoted(f.observation)} but has no use for its sign ${quoted(f.sign)}.`,
    remedy: f => `List ${quoted(f.sign)} in a question, with \`{}\` if nothing follows from it.`
  },
  'danger-raises-nothing': {
    says: f =>
      `The danger sign ${quoted(f.sign)} of ${quoted(f.observation)} raises no verdict in this tree.`,
    remedy: () => 'Let it `raise:` a verdict, or take the danger mark off.'
  },
  'settled-never-asked': {
    says: f =>
      `The tree asks ${quoted(f.observation)}, which settles ${quoted(f.settles)}, and never asks that.`,
    remedy: f => `Ask ${quoted(f.settles)} first, or leave the other question out.`
  }
} satisfies Record<string, Entry>
