import type { Variable } from '../diagrams/space.ts'
import type { TreeDiagrams } from '../diagrams/tree-diagrams.ts'
import { type Answer, isInterval } from '../tree/answers.ts'
import { bandKey } from '../tree/bands.ts'

/** Which value of which coordinates an answer is, by index. */
export type Coordinates = readonly (readonly [number, number])[]

/** The coordinates that an answer fixes: of a screen of signs one for each sign told. */
export function coordinatesOf(made: TreeDiagrams, id: string, answer: Answer): Coordinates {
  const observation = made.tree.observations[id]
  const at = (sign: string | undefined, is: (answer: Answer) => boolean) => {
    const index = made.indexOf(id, sign)
    const values = index === undefined ? [] : (made.variables[index] as Variable).values
    const value = values.findIndex(one => is(one.answer))
    return index === undefined || value < 0 ? [] : [[index, value] as const]
  }
  if (observation?.kind === 'signs') {
    return Object.entries(answer).flatMap(([sign, told]) => at(sign, one => one === told))
  }
  if (observation?.kind !== 'measure' || !isInterval(answer)) {
    return at(undefined, one => one === answer)
  }
  const key = bandKey(made.tree, observation, answer)
  return at(undefined, one => isInterval(one) && bandKey(made.tree, observation, one) === key)
}
