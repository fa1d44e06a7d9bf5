import { type Answer, isInterval } from '../../tree/answers.ts'
import { type Fact, type Fragment, factKey } from './fact.ts'

/** What a line comes to in a call: what it tells, and what it takes back of what was told before. */
export interface Heard {
  readonly told: readonly Fact[]
  /** Of a screen only the signs that are taken back. */
  readonly takenBack: readonly Fact[]
}

/** Hears the parts of a line after some facts. What only may be meant takes back what it contradicts, and tells nothing. */
export function heard(before: readonly Fact[], parts: readonly Fragment[]): Heard {
  const told = parts.flatMap(({ candidates }) => candidates.filter(({ sure }) => sure))
  const against = parts.flatMap(({ candidates, corrects, denies = [] }) => [
    ...(corrects ? candidates.map(each => ({ fact: each, differs: true })) : []),
    ...denies.map(fact => ({ fact, differs: false }))
  ])
  const takenBack = before.flatMap(fact =>
    against.flatMap(({ fact: other, differs }) => contested(fact, other, differs))
  )
  const plain = told.map(({ observation, answer }): Fact => ({ observation, answer }))
  return { told: distinct(plain), takenBack: distinct(takenBack) }
}

/** The facts without what is taken back. */
export function without(facts: readonly Fact[], gone: readonly Fact[]): readonly Fact[] {
  return facts.flatMap(({ observation, answer }) => {
    const own = gone.filter(each => each.observation === observation)
    if (!isSigns(answer)) {
      return own.some(each => sameAnswer(each.answer, answer)) ? [] : [{ observation, answer }]
    }
    const left = Object.entries(answer).filter(
      ([sign, value]) => !own.some(each => isSigns(each.answer) && each.answer[sign] === value)
    )
    return left.length === 0 ? [] : [{ observation, answer: Object.fromEntries(left) }]
  })
}

/** The part of a fact that another one contradicts, or, where it does not have to differ, repeats. */
function contested(fact: Fact, other: Fact, differs: boolean): readonly Fact[] {
  const { observation, answer } = fact
  if (observation !== other.observation) return []
  if (!isSigns(answer) || !isSigns(other.answer)) {
    return sameAnswer(answer, other.answer) === differs ? [] : [fact]
  }
  const against = other.answer
  return Object.entries(answer)
    .filter(([sign, value]) => Object.hasOwn(against, sign) && (against[sign] === value) !== differs)
    .map(([sign, value]) => ({ observation, answer: { [sign]: value } }))
}

type Signs = Exclude<Extract<Answer, object>, { readonly reading: number }>

const isSigns = (answer: Answer): answer is Signs =>
  typeof answer === 'object' && !isInterval(answer)

const sameAnswer = (one: Answer, other: Answer): boolean =>
  factKey({ observation: '', answer: one }) === factKey({ observation: '', answer: other })

function distinct(facts: readonly Fact[]): readonly Fact[] {
  return [...new Map(facts.map(fact => [factKey(fact), fact])).values()]
}
