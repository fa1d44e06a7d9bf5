import type { Answer, Answers } from '../tree/answers.ts'
import type { Observation } from '../tree/observation.ts'
import { measured } from '../tree/reading.ts'
import { withdraw } from '../tree/tell.ts'
import { answerText } from '../words/answer-text.ts'
import type { LineReader } from './line-reader.ts'
import type { Making } from './making.ts'
import { PROMPTS } from './prompts.ts'
import { instrumentLines, numbered, offered } from './question-text.ts'
import { print, type Terminal } from './terminal.ts'
import { pick, type Typed } from './typed-line.ts'

/** Everything that a talk with a person goes through. */
export interface Talk {
  readonly terminal: Terminal
  readonly lines: LineReader
  readonly making: Making
}

/** What was told so far, and in which order: only the order of telling knows what "back" means. */
export interface Sofar {
  readonly answers: Answers
  readonly order: readonly string[]
}

/** Adds an answer. A screen told in parts counts once in the order. */
export function told(sofar: Sofar, observation: string, answer: Answer): Sofar {
  return {
    answers: { ...sofar.answers, [observation]: answer },
    order: [...sofar.order.filter(id => id !== observation), observation]
  }
}

/** Takes one observation back: the rest alone decides, as on a fresh start. */
export function takenBack(sofar: Sofar, observation: string): Sofar {
  return {
    answers: withdraw(sofar.answers, observation),
    order: sofar.order.filter(id => id !== observation)
  }
}

/** Asks for the instrument of a reading; null when the input has ended. */
export async function completed(
  { terminal, lines, making: { words } }: Talk,
  typed: Extract<Typed, { kind: 'answer' | 'number' }>,
  observation: Observation
): Promise<Answer | null> {
  if (typed.kind === 'answer') return typed.answer
  if (observation.kind !== 'measure') throw new Error(`${observation.id} is not a measure`)
  const names = offered(observation)
  if (names.length === 0) return measured(observation, typed.value)
  print(
    terminal,
    words.t('ui:prompts.instrument'),
    ...instrumentLines(observation, words),
    `${'u'.padStart(4)}  ${words.t('ui:prompts.instrument-unknown')}`
  )
  for (;;) {
    const line = await lines.next()
    if (line === null) return null
    if (line.toLowerCase() === 'u') return measured(observation, typed.value)
    const instrument = pick(line, names)
    if (instrument) return measured(observation, typed.value, instrument)
    print(terminal, words.t('ui:errors.not-a-choice', { count: names.length }))
  }
}

/** Lets the person pick an earlier answer and takes it back, so that it is asked again. */
export async function changed(
  { terminal, lines, making: { words } }: Talk,
  observations: Readonly<Record<string, Observation>>,
  sofar: Sofar
): Promise<Sofar | null> {
  const listed = sofar.order.flatMap(id => {
    const observation = observations[id]
    const answer = sofar.answers[id]
    return observation && answer !== undefined ? [{ id, observation, answer }] : []
  })
  if (listed.length === 0) {
    print(terminal, PROMPTS.nothingToChange)
    return sofar
  }
  print(
    terminal,
    words.t('ui:trail'),
    ...listed.map(({ id, observation, answer }, index) =>
      numbered(
        index,
        `${words.t(`observations:${id}.ask`)} ${answerText(words, observation, answer)}`
      )
    ),
    PROMPTS.changeWhich
  )
  for (;;) {
    const line = await lines.next()
    if (line === null) return null
    if (line === '') return sofar
    const entry = pick(line, listed)
    if (entry) return takenBack(sofar, entry.id)
    print(terminal, words.t('ui:errors.not-a-choice', { count: listed.length }))
  }
}
