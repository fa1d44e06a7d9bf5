import type { Observation } from './observation.ts'

/** A value that has to be there. @throws RangeError where it is not, which names it. */
export function must<T>(value: T | null | undefined, name: string): T {
  if (value === null || value === undefined) throw new RangeError(`There is no ${name}.`)
  return value
}

/** The entry of a list at an index within it. @throws RangeError where there is none. */
export function at<T>(list: ArrayLike<T>, index: number): T {
  const entry = list[index]
  if (entry === undefined) throw new RangeError(`There is no entry ${index} of ${list.length}.`)
  return entry
}

/** An observation of one kind. @throws RangeError where there is none of that id, or it is of another kind. */
export function observationOf<K extends Observation['kind']>(
  observations: Readonly<Record<string, Observation>>,
  id: string,
  kind: K
): Extract<Observation, { kind: K }> {
  const observation = observations[id]
  if (observation !== undefined && isOfKind(observation, kind)) return observation
  throw new RangeError(`There is no observation ${id} of the kind ${kind}.`)
}

const isOfKind = <K extends Observation['kind']>(
  observation: Observation,
  kind: K
): observation is Extract<Observation, { kind: K }> => observation.kind === kind
