import { type Answer, type Answers, type SignValue, signsOf } from '../tree/answers.ts'
import type {
  ChoiceObservation,
  MeasureObservation,
  Observation,
  SignsObservation
} from '../tree/observation.ts'
import { tell } from '../tree/tell.ts'
import type { Words } from '../words/words.ts'
import { offered, openSigns } from './question-text.ts'

/** What a typed line means to the question on the screen. */
export type Typed =
  | { readonly kind: 'answer'; readonly answer: Answer }
  /** A number whose instrument is still to be named. */
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'move'; readonly move: Move }
  | { readonly kind: 'unclear'; readonly say: string }

export type Move = 'back' | 'change' | 'why' | 'quit'

const MOVES: Readonly<Record<string, Move>> = { b: 'back', c: 'change', w: 'why', q: 'quit' }

/** Reads a line as an answer to the question, or as one of the moves that every screen has. */
export function readTyped(
  line: string,
  observation: Observation,
  answers: Answers,
  words: Words
): Typed {
  const word = line.toLowerCase()
  const move = Object.hasOwn(MOVES, word) ? MOVES[word] : undefined
  if (move) return { kind: 'move', move }
  switch (observation.kind) {
    case 'choice':
      return typedChoice(word, observation, words)
    case 'signs':
      return typedSigns(word, observation, answers, words)
    case 'measure':
      return typedMeasure(word, observation, words)
  }
}

function typedChoice(word: string, observation: ChoiceObservation, words: Words): Typed {
  if (word === 'u') return { kind: 'answer', answer: 'unsure' }
  const names = offered(observation)
  const answer = pick(word, names)
  return answer ? { kind: 'answer', answer } : notAChoice(words, names.length)
}

/**
 * Numbers are signs seen, `4?` is a sign one is not sure of, `0` rules the others out and `u` leaves
 * them unsure. Numbers alone leave the others open: a sign not told is not a sign ruled out.
 */
function typedSigns(
  word: string,
  observation: SignsObservation,
  answers: Answers,
  words: Words
): Typed {
  const names = offered(observation)
  const signs: Record<string, SignValue> = {}
  let others: SignValue | undefined
  for (const part of word.split(/[\s,]+/).filter(Boolean)) {
    if (part === '0' || part === 'u') {
      // Both at once: unsure, because not knowing is the more cautious of the two.
      others = part === 'u' || others === 'unsure' ? 'unsure' : 'no'
      continue
    }
    const sign = pick(part.replace(/\?$/, ''), names)
    if (!sign) return notAChoice(words, names.length)
    signs[sign] = part.endsWith('?') && signs[sign] !== 'yes' ? 'unsure' : 'yes'
  }
  if (others === undefined && Object.keys(signs).length === 0)
    return notAChoice(words, names.length)
  if (others !== undefined) {
    for (const { id } of openSigns(observation, answers)) signs[id] ??= others
  }
  return { kind: 'answer', answer: signsOf(tell(answers, observation, signs), observation.id) }
}

function typedMeasure(word: string, observation: MeasureObservation, words: Words): Typed {
  if (word === 'u') return { kind: 'answer', answer: 'unsure' }
  const { from, to } = observation.span
  const whole = observation.unit === 'day'
  if (!(whole ? /^-?\d+$/ : /^-?\d+(\.\d+)?$/).test(word)) {
    return { kind: 'unclear', say: words.t('ui:errors.not-a-number') }
  }
  const value = Number(word)
  return value >= from && value <= to
    ? { kind: 'number', value }
    : { kind: 'unclear', say: words.t('ui:errors.out-of-span', { from, to }) }
}

/** The name that a number stands for, counted from 1. */
export function pick<T>(word: string, names: readonly T[]): T | undefined {
  return /^\d+$/.test(word) ? names[Number(word) - 1] : undefined
}

const notAChoice = (words: Words, count: number): Typed => ({
  kind: 'unclear',
  say: words.t('ui:errors.not-a-choice', { count })
})
