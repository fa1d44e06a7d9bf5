import { BadInput } from '../../science/bad-input.ts'
import type { Span } from '../../science/span.ts'
import { type Answer, type Interval, isInterval } from '../../tree/answers.ts'
import { WORKED_OUT, type Worked } from '../../tree/derived.ts'
import { rounded } from '../../tree/reading.ts'

/** What was told of a model's inputs, by their names; what is absent was not told yet. */
export type Inputs = Readonly<Record<string, Answer | undefined>>
/** What working out came to, but for the model's name; null while something is not told yet. */
export type WorksOut = (inputs: Inputs) => Omit<Worked, 'by'> | null

export const UNSURE: Omit<Worked, 'by'> = { standing: 'unsure', answer: 'unsure', shows: {} }
export const NO_RANGE: Omit<Worked, 'by'> = { ...UNSURE, standing: 'no-published-range' }

/** The interval told of an input; null where it is told as unsure, or not at all. */
export const numberOf = (answer: Answer | undefined): Interval | null =>
  answer !== undefined && isInterval(answer) ? answer : null

/** The answer told of a choice; null where it is unsure, or not told. */
export const nameOf = (answer: Answer | undefined): string | null =>
  typeof answer === 'string' && answer !== 'unsure' ? answer : null

export const isUntold = (answer: Answer | undefined): boolean => answer === undefined

/** An interval as the models take it. */
export const spanOf = ({ low, reading, high }: Interval): Span => ({ low, mid: reading, high })

/** What was worked out, as the answer that a walk takes; rounded so that no float decides. */
export function worked(span: Span, shows: Worked['shows']): Omit<Worked, 'by'> {
  const answer = {
    low: rounded(span.low),
    reading: rounded(span.mid),
    high: rounded(span.high),
    instrument: WORKED_OUT
  }
  return { standing: 'worked', answer, shows }
}

/** Works out, and tells a number that cannot be as one. */
export function unlessBad(work: () => Omit<Worked, 'by'>): Omit<Worked, 'by'> {
  try {
    return work()
  } catch (error) {
    if (!(error instanceof BadInput)) throw error
    return { ...UNSURE, standing: 'bad-input' }
  }
}
