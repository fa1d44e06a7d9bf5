import { type Answer, isInterval, SIGN_VALUES, type SignValue } from '../tree/answers.ts'
import type { Observation } from '../tree/observation.ts'
import type { Tree } from '../tree/tree.ts'
import type { Fact } from './fact.ts'

/** The answers of a choice or the signs of a screen, most worrying first; none of a measure. */
export function answersOf(observation: Observation): readonly string[] {
  if (observation.kind === 'measure') return []
  const all = observation.kind === 'choice' ? observation.answers : observation.signs
  return all.map(({ id }) => id)
}

/** Whether an answer or sign is marked as one that must never end gently. */
export function isDanger(observation: Observation, answer: string): boolean {
  if (observation.kind === 'measure') return false
  const all = observation.kind === 'choice' ? observation.answers : observation.signs
  return all.some(({ id, danger }) => id === answer && danger)
}

/** Whether a fact tells of a danger sign that it is there. */
export function isDangerFact(tree: Tree, { observation: id, answer }: Fact): boolean {
  const observation = tree.observations[id]
  const [sign, value] = toldIn(answer)
  return observation !== undefined && value === 'yes' && isDanger(observation, sign)
}

/** Compares facts, most worrying first: danger signs, then the order of the walk and of the authors. */
export function byWorry(tree: Tree): (a: Fact, b: Fact) => number {
  const order = Object.keys(tree.observations)
  const key = ({ observation: id, answer }: Fact): readonly number[] => {
    const observation = tree.observations[id]
    if (observation === undefined) return []
    const [sign, value] = toldIn(answer)
    const place = answersOf(observation).indexOf(sign)
    return [
      SIGN_VALUES.indexOf(value),
      isDanger(observation, sign) ? 0 : 1,
      order.indexOf(id),
      place < 0 ? Number.MAX_SAFE_INTEGER : place
    ]
  }
  return (a, b) => {
    const [x, y] = [key(a), key(b)]
    const differs = x.findIndex((each, index) => each !== y[index])
    return differs < 0 ? 0 : (x[differs] ?? 0) - (y[differs] ?? 0)
  }
}

/** The answer or sign that a fact names, and what it says of it; a reading names none. */
function toldIn(answer: Answer): readonly [string, SignValue] {
  if (typeof answer === 'string') return [answer, answer === 'unsure' ? 'unsure' : 'yes']
  if (isInterval(answer)) return ['', 'yes']
  return Object.entries(answer)[0] ?? ['', 'yes']
}
