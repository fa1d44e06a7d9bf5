import type { Tree } from '../tree/tree.ts'
import { alarmsOf, type KnownVerdicts } from '../words/alarms.ts'
import type { Making } from './making.ts'

/** What cannot wait for the end of the walk, a line each. */
export function alarmLines(
  tree: Tree,
  verdicts: KnownVerdicts,
  { words, paint }: Making
): string[] {
  return alarmsOf(tree, verdicts, words).map(
    ({ signal, signalWord, message, meanwhile }) =>
      `${paint.signal(signal, signalWord)}  ${paint.strong(message)} ${meanwhile}`
  )
}
