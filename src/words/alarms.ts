import { isLeft, level, verdict } from '../tree/caution.ts'
import type { Signal, Tree } from '../tree/tree.ts'
import { verdictText } from './verdict-text.ts'
import type { Words } from './words.ts'

/** What cannot wait for the end of a walk. */
export interface Alarm {
  readonly id: string
  readonly signal: Signal
  readonly signalWord: string
  readonly message: string
  /** How to go on with the questions meanwhile. */
  readonly meanwhile: string
}

/** The verdicts known on the two tracks that cannot wait: raised so far, or the least that can come. */
export interface KnownVerdicts {
  readonly person: string | null
  readonly container: string | null
}

/**
 * What is said as soon as it is raised, while the walk goes on: a person who needs help today, and a
 * jar that may burst, to which nobody goes back for an answer.
 */
export function alarmsOf(
  tree: Tree,
  { person, container }: KnownVerdicts,
  words: Words
): readonly Alarm[] {
  const urgent = level(tree, 'person', person) >= level(tree, 'person', 'poison-help')
  const burst = isLeft(tree, container)
  const raised = [
    ...(urgent && person !== null ? [[person, words.t('ui:people-first')] as const] : []),
    ...(burst && container !== null ? [[container, words.t('ui:from-memory')] as const] : [])
  ]
  return raised.map(([id, meanwhile]) => {
    const { signal } = verdict(tree, id)
    return {
      id,
      signal,
      signalWord: signal === 'none' ? '' : words.t(`ui:signal.${signal}`),
      message: verdictText(words, tree.id, id, 'message'),
      meanwhile
    }
  })
}
