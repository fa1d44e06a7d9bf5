import type { TreeDiagrams } from '../diagrams/tree-diagrams.ts'
import { type Answer, isInterval } from '../tree/answers.ts'
import { bandKey } from '../tree/bands.ts'
import { must } from '../tree/must.ts'

/** Which value of which coordinates an answer is, by index. */
export type Coordinates = readonly (readonly [number, number])[]

/** The coordinates that an answer fixes: of a screen of signs one for each sign told. */
export function coordinatesOf(compiled: TreeDiagrams, id: string, answer: Answer): Coordinates {
  const observation = compiled.tree.observations[id]
  const coordinatesOf = (sign: string | undefined, is: (answer: Answer) => boolean) => {
    const index = compiled.indexOf(id, sign)
    const values = index === undefined ? [] : must(compiled.variables[index], 'variable').values
    const value = values.findIndex(one => is(one.answer))
    return index === undefined || value < 0 ? [] : [[index, value] as const]
  }
  if (observation?.kind === 'signs') {
    return Object.entries(answer).flatMap(([sign, answer]) =>
      coordinatesOf(sign, one => one === answer)
    )
  }
  if (observation?.kind !== 'measure' || !isInterval(answer)) {
    return coordinatesOf(undefined, one => one === answer)
  }
  const key = bandKey(compiled.tree, observation, answer)
  return coordinatesOf(
    undefined,
    one => isInterval(one) && bandKey(compiled.tree, observation, one) === key
  )
}
