import { walk } from '../evaluate/walk.ts'
import { type Answer, type Answers, isInterval, signsOf } from '../tree/answers.ts'
import type { Outcome } from '../tree/caution.ts'
import type { Tree } from '../tree/tree.ts'
import { usualExcept } from '../tree/usual-answers.ts'
import { SIDES } from './score.ts'

/** One thing that a caller says when asked, and that an ordinary ferment does not show. */
export interface CallerFact {
  readonly observation: string
  /** A whole answer, or of a screen one sign. */
  readonly answer: Answer
  /** Whether it decided the outcome: without it another comes out, or it alone brings a verdict of it. */
  readonly decides: boolean
  /** How it stands on the volunteer's sheet. */
  readonly entered: 'so' | 'not' | 'otherwise'
}

/** What stands on a sheet and the caller would not say. */
export interface Mistaken {
  readonly observation: string
  readonly answer: Answer
}

/** Every answer of a caller: what is not listed is usual. */
export const fullAnswers = (tree: Tree, listed: Answers): Answers => ({
  ...listed,
  ...usualExcept(tree, listed)
})

/** What the tree comes to on a caller's full answers. */
export const outcomeFor = (tree: Tree, listed: Answers): Outcome =>
  walk(tree, fullAnswers(tree, listed)).outcome

/** A caller's facts, those that decided the outcome first. */
export function callerFacts(tree: Tree, listed: Answers, entered: Answers): readonly CallerFact[] {
  const facts = Object.entries(listed).flatMap(([observation, answer]) =>
    partsOf(answer).map(part => ({ observation, answer: part }))
  )
  const expected = outcomeFor(tree, listed)
  const ordinary = outcomeFor(tree, {})
  const decisive = facts.map((fact, index) => {
    const rest = answersOf(facts.filter((_, other) => other !== index))
    const without = outcomeFor(tree, rest)
    const alone = outcomeFor(tree, answersOf([fact]))
    const decides = SIDES.some(
      side =>
        without[side] !== expected[side] ||
        (alone[side] === expected[side] && alone[side] !== ordinary[side])
    )
    return { ...fact, decides, entered: standing(fact, entered) }
  })
  return [
    ...decisive.filter(({ decides }) => decides),
    ...decisive.filter(({ decides }) => !decides)
  ]
}

/** What a volunteer entered that is not so. */
export function mistakenIn(tree: Tree, listed: Answers, entered: Answers): readonly Mistaken[] {
  const full = fullAnswers(tree, listed)
  return Object.entries(entered).flatMap(([observation, answer]): readonly Mistaken[] => {
    const truth = full[observation]
    if (truth === undefined) return []
    if (typeof answer === 'object' && !isInterval(answer)) {
      const signs = signsOf(full, observation)
      return Object.entries(answer).flatMap(([sign, value]) =>
        value === 'yes' && (signs[sign] ?? 'no') === 'no'
          ? [{ observation, answer: { [sign]: value } }]
          : []
      )
    }
    // What the caller lists is among the caller's facts, as entered otherwise.
    if (Object.hasOwn(listed, observation) || answer === 'unsure') return []
    const isSo = isInterval(answer)
      ? isInterval(truth) && truth.reading === answer.reading
      : isUsual(tree, observation, answer)
    return isSo ? [] : [{ observation, answer }]
  })
}

/** Of a screen each sign by itself; those that are not there are as usual. */
function partsOf(answer: Answer): readonly Answer[] {
  if (typeof answer === 'string' || isInterval(answer)) return [answer]
  return Object.entries(answer).flatMap(([sign, value]) =>
    value === 'no' ? [] : [{ [sign]: value }]
  )
}

function answersOf(facts: readonly Mistaken[]): Answers {
  const answers: Record<string, Answer> = {}
  for (const { observation, answer } of facts) {
    answers[observation] =
      typeof answer === 'string' || isInterval(answer)
        ? answer
        : { ...signsOf(answers, observation), ...answer }
  }
  return answers
}

function standing({ observation, answer }: Mistaken, entered: Answers): CallerFact['entered'] {
  const there = entered[observation]
  if (there === undefined) return 'not'
  if (typeof answer === 'string') return there === answer ? 'so' : 'otherwise'
  if (isInterval(answer)) {
    return isInterval(there) && there.reading === answer.reading ? 'so' : 'otherwise'
  }
  const signs = signsOf(entered, observation)
  const [first] = Object.entries(answer).map(([sign, value]) => [signs[sign], value] as const)
  if (first?.[0] === undefined) return 'not'
  return first[0] === first[1] ? 'so' : 'otherwise'
}

function isUsual(tree: Tree, observation: string, answer: Answer): boolean {
  const of = tree.observations[observation]
  if (of?.kind !== 'choice') return false
  return of.settles !== undefined || of.answers.some(({ id, usual }) => usual && id === answer)
}
