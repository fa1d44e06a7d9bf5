import type { Told } from '../../reader/fact.ts'
import { type Answer, isInterval } from '../../tree/answers.ts'
import type { Tree } from '../../tree/tree.ts'
import { answerText } from '../../words/answer-text.ts'
import { answerLabel } from '../../words/tree-texts.ts'
import type { Words } from '../../words/words.ts'

/** A fact as it stands on the sheet: two words for what it is about, and what was told of it. */
export function factText(words: Words, tree: Tree, { observation, answer, matched }: Told) {
  const about = tree.observations[observation]
  return {
    name: shortName(words, observation),
    answer: about === undefined ? '' : toldText(words, about, answer, matched)
  }
}

/** Two words for what is observed; the whole question where nobody wrote them. */
export function shortName(words: Words, observation: string): string {
  const short = `ui:short.${observation}` as const
  return words.t(words.has(short) ? short : `observations:${observation}.ask`)
}

function toldText(
  words: Words,
  about: Tree['observations'][string],
  answer: Answer,
  matched?: string
): string {
  const isPart =
    about.kind === 'signs' &&
    typeof answer === 'object' &&
    !isInterval(answer) &&
    !about.signs.every(({ id, volunteered }) => volunteered || Object.hasOwn(answer, id))
  const unnamed =
    isInterval(answer) &&
    about.kind === 'measure' &&
    about.instruments.length > 1 &&
    answer.instrument === undefined
  if (unnamed) {
    return `${answerText(words, about, answer)} (${words.t('ui:prompts.instrument-unknown')})`
  }
  if (!isPart) return answerText(words, about, answer)
  // "Everyone is fine" is shorter than the list of what nobody has.
  const [, second] = Object.values(answer)
  if (matched !== undefined && second !== undefined && Object.values(answer).every(isNo)) {
    return words.t('ui:desk.in-words', { words: matched })
  }
  // Of a screen told in part each sign says for itself what was told.
  return Object.entries(answer)
    .map(([sign, value]) => signText(words, about.id, sign, value))
    .join('; ')
}

/** What was told of one sign. */
export function signText(words: Words, observation: string, sign: string, value: string): string {
  const label = answerLabel(words, observation, sign)
  if (value === 'yes') return label
  return words.t(value === 'no' ? 'ui:desk.not-sign' : 'ui:desk.unsure-sign', { label })
}

const isNo = (value: string): boolean => value === 'no'
