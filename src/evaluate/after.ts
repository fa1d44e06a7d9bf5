import type { Answers } from '../tree/answers.ts'
import { decide } from '../tree/decide.ts'
import type { Tree } from '../tree/tree.ts'

/** The notes that the answers to the `after` questions add: what to change next time. */
export function afterNotes(tree: Tree, answers: Answers): readonly string[] {
  const notes = tree.after.flatMap(question => decide(tree, question, answers)?.branch.notes ?? [])
  return [...new Set(notes)]
}
