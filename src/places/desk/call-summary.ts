import { ofJarAlone, subjectOf } from '../../contacts/what-to-record.ts'
import { evaluate } from '../../evaluate/evaluate.ts'
import { callOf, type Fact } from '../../evaluate/facts.ts'
import { TRACKS } from '../../tree/observation.ts'
import type { Tree } from '../../tree/tree.ts'
import { answerText } from '../../words/answer-text.ts'
import { verdictText } from '../../words/verdict-text.ts'
import type { Words } from '../../words/words.ts'
import { shortName } from './fact-text.ts'

/** For whom a call is summed up: who knows more, or who keeps the trees. */
export type SummaryFor = 'specialist' | 'doubt'

/**
 * A call in lines of text for somebody else: edition, what was told of the jar, and the outcome of the jar
 * alone. It names nobody, and nothing in it follows from what was told of people.
 */
export function callSummary(
  tree: Tree,
  facts: readonly Fact[],
  words: Words,
  to: SummaryFor
): readonly string[] {
  // Which of two contradicting facts counts can hang on people: they are left out before that is settled.
  const { answers, either } = callOf(
    tree,
    facts.filter(({ observation }) => tree.observations[observation]?.about !== 'person')
  )
  const { fingerprint } = subjectOf(tree)
  const lines = Object.entries(answers).flatMap(([id, answer]) => {
    const observation = tree.observations[id]
    return observation === undefined
      ? []
      : [`- ${shortName(words, id)}: ${answerText(words, observation, answer)}`]
  })
  const { settled } = ofJarAlone(evaluate(tree, answers, either))
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
    ...(lines.length > 0 ? lines : [`- ${words.t('ui:desk.summary.nothing')}`]),
    '',
    words.t('ui:desk.summary.outcome'),
    ...outcome,
    '',
    words.t('ui:desk.summary.people')
  ]
}
