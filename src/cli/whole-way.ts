import { evaluate } from '../evaluate/evaluate.ts'
import { type AuthoredFile, load } from '../load/load.ts'
import { withDerived } from '../machine/derived/derive.ts'
import { readOfficePack } from '../office/read-office.ts'
import { prove } from '../prove/prove.ts'
import { reportOn } from '../report/report.ts'
import type { Answers } from '../tree/answers.ts'
import { outcomeLines } from '../words/outcome-lines.ts'
import { say } from '../words/say.ts'
import { createWords } from '../words/words.ts'
import { wordsOfTree } from './words-of-tree.ts'

/** One caller's jar: which tree is asked, what was told, in which language and on which day. */
export interface CallersJar {
  readonly tree: string
  readonly told: Answers
  readonly language: string
  readonly today: Date
}

/**
 * The whole way from what authors wrote to what a caller reads, for somebody who has five minutes. Every
 * place goes this way; each step is a room of `src`.
 *
 * @throws Error where a step has something to say against the one before it: nothing that has findings, is
 * not proved or is half a walk is shown to anybody.
 */
export async function wholeWay(files: readonly AuthoredFile[], asked: CallersJar): Promise<string> {
  // Load: files become trees, or findings with their places.
  const loaded = await load(files)
  const [finding] = loaded.findings
  if (finding !== undefined) throw new Error(`${finding.place?.file}: ${finding.code}`)
  const tree = loaded.trees.find(({ id }) => id === asked.tree)
  if (tree === undefined) throw new Error(`there is no tree ${asked.tree}`)

  // Prove: every rule and every law, over every set of answers that there can be.
  const proofs = prove(tree, loaded.places[tree.id], loaded.sources)
  const open = proofs.find(({ standing }) => standing !== 'proved')
  if (open !== undefined) throw new Error(`${tree.id}: ${open.property} is not proved`)

  // Evaluate: answers become verdicts, what may be drunk, and advice as ids.
  const evaluation = evaluate(tree, withDerived(tree, asked.told))
  const report = reportOn(evaluation, readOfficePack(loaded.office), asked.today)

  // Word: ids become sentences in the caller's language.
  const { texts, sources } = wordsOfTree(tree, loaded)
  const words = createWords(texts, asked.language)
  const said = say(report, words, sources)

  // Show: a screen, a sheet or, here, lines of text.
  return outcomeLines(said, words).join('\n')
}
