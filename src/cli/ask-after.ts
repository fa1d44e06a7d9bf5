import { afterNotes } from '../evaluate/after.ts'
import { withDerived } from '../machine/derived/derive.ts'
import { isOnlyWorkedOut } from '../tree/derived.ts'
import type { Tree } from '../tree/tree.ts'
import { section } from '../words/outcome-lines.ts'
import { completed, type Sofar, type Talk, told } from './conversation.ts'
import { PROMPTS } from './prompts.ts'
import { openSigns, questionText } from './question-text.ts'
import { print } from './terminal.ts'
import { readTyped } from './typed-line.ts'

/** Asks what to change next time, then says it; each question may be skipped. Null when the input ended. */
export async function askAfter(tree: Tree, start: Sofar, talk: Talk): Promise<Sofar | null> {
  const { terminal, lines, making } = talk
  let sofar = start
  print(terminal, PROMPTS.skip)
  for (const { asks } of tree.after) {
    const observation = tree.observations[asks]
    // What nobody reads off is no question for a terminal: `jarside reckon course` works it out.
    if (observation && isOnlyWorkedOut(observation)) continue
    while (observation && isOpen(tree, asks, sofar)) {
      print(terminal, '', ...questionText(observation, sofar.answers, making))
      const line = await lines.next()
      if (line === null || line.toLowerCase() === 'q') return null
      if (line === '') break
      const typed = readTyped(line, observation, sofar.answers, making.words)
      if (typed.kind === 'unclear') print(terminal, typed.say)
      if (typed.kind === 'move') print(terminal, PROMPTS.skip)
      if (typed.kind === 'unclear' || typed.kind === 'move') continue
      const answer = await completed(talk, typed, observation)
      if (answer === null) return null
      sofar = told(sofar, asks, answer)
    }
  }
  const notes = afterNotes(tree, withDerived(tree, sofar.answers)).map(
    note => `- ${making.words.t(`notes:${note}`)}`
  )
  print(
    terminal,
    ...(notes.length > 0
      ? section(making.paint, making.words.t('ui:what-to-change'), notes)
      : ['', PROMPTS.nothingToAdd])
  )
  return sofar
}

function isOpen(tree: Tree, asks: string, { answers }: Sofar): boolean {
  const observation = tree.observations[asks]
  return observation?.kind === 'signs'
    ? openSigns(observation, answers).length > 0
    : !Object.hasOwn(answers, asks)
}
