/** What is told of one sign. Not yet told is not `unsure`: it is absent. */
export type SignValue = 'yes' | 'no' | 'unsure'

/** Worst first: of two told at once the first counts. */
export const SIGN_VALUES: readonly SignValue[] = ['yes', 'unsure', 'no']

/** A measurement as law 8 takes it: the reading and what it can truly be, in the measure's unit. */
export interface Interval {
  readonly low: number
  readonly reading: number
  readonly high: number
  readonly instrument?: string
}

/** A value given for an observation: an answer id or `unsure`; signs by id; an interval. */
export type Answer = string | Signs | Interval
export type Signs = Readonly<Record<string, SignValue>>

/** The answers told so far, by observation id. A set: no order, no history. */
export type Answers = Readonly<Record<string, Answer>>

export const isSignValue = (value: unknown): value is SignValue =>
  SIGN_VALUES.some(each => each === value)

/** @throws RangeError where it is none. */
export function signValueOf(value: unknown): SignValue {
  if (!isSignValue(value)) throw new RangeError(`A sign cannot be ${JSON.stringify(value)}.`)
  return value
}

/** The signs told of a `signs` observation. */
export function signsOf(answers: Answers, observation: string): Signs {
  const answer = own(answers, observation)
  return isSigns(answer) ? answer : {}
}

/** The interval told of a measure, `unsure`, or undefined when it is not told. */
export function measureOf(answers: Answers, observation: string): Interval | 'unsure' | undefined {
  const answer = own(answers, observation)
  return answer === 'unsure' || isInterval(answer) ? answer : undefined
}

/** The answer told of a choice, itself and not what settles it. */
export function choiceOf(answers: Answers, observation: string): string | undefined {
  const answer = own(answers, observation)
  return typeof answer === 'string' ? answer : undefined
}

export function isInterval(answer: unknown): answer is Interval {
  return (
    typeof answer === 'object' &&
    answer !== null &&
    'reading' in answer &&
    typeof answer.reading === 'number'
  )
}

export const isSigns = (answer: Answer | undefined): answer is Signs =>
  typeof answer === 'object' && !isInterval(answer)

/** Ids come from outside: only an own property is an answer. */
function own(answers: Answers, observation: string): Answer | undefined {
  return Object.hasOwn(answers, observation) ? answers[observation] : undefined
}
