import type { Evaluation } from '../../evaluate/evaluate.ts'
import { answersToKeep } from '../../evaluate/keep.ts'
import { TRACKS } from '../../tree/observation.ts'
import { answerText } from '../../words/answer-text.ts'
import { verdictText } from '../../words/verdict-text.ts'
import type { Words } from '../../words/words.ts'
import { shortName } from './fact-text.ts'
import { ofJarAlone, subjectOf } from './what-to-record.ts'

/** For whom a call is summed up: who knows more, or who keeps the trees. */
export type SummaryFor = 'specialist' | 'doubt'

/**
 * A call in lines of text for somebody else: edition, what was told of the jar, and the outcome of the jar
 * alone. It names nobody, and nothing in it follows from what was told of people.
 */
export function callSummary(
  evaluation: Evaluation,
  words: Words,
  to: SummaryFor
): readonly string[] {
  const { tree, answers } = evaluation
  const { fingerprint } = subjectOf(tree)
  const told = Object.entries(answersToKeep(tree, answers)).flatMap(([id, answer]) => {
    const observation = tree.observations[id]
    return observation === undefined
      ? []
      : [`- ${shortName(words, id)}: ${answerText(words, observation, answer)}`]
  })
  const { settled } = ofJarAlone(evaluation)
  const outcome =
    settled === null
      ? [`- ${words.t('ui:desk.summary.open')}`]
      : [
          ...TRACKS.flatMap(track => {
            const id = settled.outcome[track]
            return id === null ? [] : [`- ${verdictText(words, tree.id, id, 'name')}`]
          }),
          `- ${words.t(`${tree.id}:use.${settled.outcome.use}`)}`
        ]
  return [
    words.t(`ui:desk.summary.${to}`),
    `${words.t(`${tree.id}:title`)} · ${words.t('ui:edition', { edition: tree.edition })} · ${fingerprint}`,
    '',
    words.t('ui:desk.summary.told'),
    ...(told.length > 0 ? told : [`- ${words.t('ui:desk.summary.nothing')}`]),
    '',
    words.t('ui:desk.summary.outcome'),
    ...outcome,
    '',
    words.t('ui:desk.summary.people')
  ]
}
