import { type Answers, signsOf } from '../tree/answers.ts'
import type { Observation, Sign } from '../tree/observation.ts'
import { askKey, howKey } from '../words/ask-key.ts'
import { answerHint, answerLabel } from '../words/tree-texts.ts'
import type { Words } from '../words/words.ts'
import type { Making } from './making.ts'
import { PROMPTS } from './prompts.ts'

/** What a question offers, in the order in which it is numbered from 1. */
export function offered(observation: Observation): readonly string[] {
  switch (observation.kind) {
    case 'choice':
      return observation.answers.map(({ id }) => id)
    case 'signs':
      return observation.signs.filter(({ volunteered }) => !volunteered).map(({ id }) => id)
    case 'measure':
      return observation.instruments.map(({ id }) => id)
  }
}

/** The signs of a screen that are asked and not yet told. */
export function openSigns(
  observation: Extract<Observation, { kind: 'signs' }>,
  answers: Answers
): readonly Sign[] {
  const signs = signsOf(answers, observation.id)
  return observation.signs.filter(
    ({ id, volunteered }) => !volunteered && !Object.hasOwn(signs, id)
  )
}

/** A question as lines: its heading, how to look, its numbered answers. */
export function questionText(
  observation: Observation,
  answers: Answers,
  { words, paint }: Making,
  recalled = false
): string[] {
  const { id, kind } = observation
  return [
    paint.strong(words.t(askKey(words, id, recalled))),
    words.t(howKey(words, observation, recalled)),
    '',
    ...(kind === 'measure' ? [] : answerLines(words, observation, answers)),
    ...(kind === 'signs' ? [`${'0'.padStart(4)}  ${answerLabel(words, id, 'none')}`] : []),
    // The hint of "not sure" may send somebody to look again.
    `${'u'.padStart(4)}  ${recalled ? answerLabel(words, id, 'unsure') : withHint(words, id, 'unsure')}`
  ]
}

/** The instruments of a measure, numbered. */
export function instrumentLines(observation: Observation, words: Words): string[] {
  return offered(observation).map((instrument, index) =>
    numbered(index, words.t(`observations:${observation.id}.instruments.${instrument}`))
  )
}

// A sign that was told stays in its line: a number must not come to mean another sign.
function answerLines(words: Words, observation: Observation, answers: Answers): string[] {
  const marks = signsOf(answers, observation.id)
  return offered(observation).map((answer, index) => {
    const value = Object.hasOwn(marks, answer) ? marks[answer] : undefined
    return numbered(
      index,
      value
        ? `${answerLabel(words, observation.id, answer)} ${PROMPTS.told[value]}`
        : withHint(words, observation.id, answer)
    )
  })
}

/** A line of a numbered list. */
export const numbered = (index: number, text: string): string =>
  `${String(index + 1).padStart(4)}  ${text}`

function withHint(words: Words, id: string, answer: string): string {
  const hint = answerHint(words, id, answer)
  const label = answerLabel(words, id, answer)
  return hint ? `${label}: ${hint}` : label
}
