import type { Answer } from './answers.ts'
import type { Observation } from './observation.ts'
import type { Tree } from './tree.ts'

/**
 * The models that work a measure out from plain quantities, and the inputs of each by name. Of inputs
 * that stand together one is enough; what nobody knows is told as `unsure`, and never guessed.
 */
export const MODEL_INPUTS = {
  'starter-share': ['starter', 'batch'],
  'mix-acidity': ['starter', 'batch', 'starter-ph', 'starter-source'],
  'acid-progress': ['first-ph', 'first-day', 'ph', 'day', 'temperature'],
  'bottle-pressure': ['sugar', 'days', 'temperature', 'headspace', 'bottle'],
  'salt-share': ['salt-weight', 'salt-volume', 'salt-kind', 'vegetables']
} as const

export type Model = keyof typeof MODEL_INPUTS

/** How a measure is worked out: the model, and which observation is which of its inputs. */
export interface Derivation {
  readonly by: Model
  /** Observations by the model's names of its inputs. */
  readonly from: Readonly<Record<string, string>>
}

/** How an observation is worked out from others; null where it only can be told. */
export const derivationOf = (observation: Observation | undefined): Derivation | null =>
  observation?.kind === 'measure' ? (observation.derived ?? null) : null

/**
 * Whether an observation can be worked out and never be read off: a difference has no instrument, and
 * nobody can say what share of its strength a bottle holds.
 */
export const isOnlyWorkedOut = (observation: Observation): boolean =>
  observation.kind === 'measure' &&
  (observation.unit === 'ph-difference' || observation.derived?.by === 'bottle-pressure')

/** The observations that an observation can be worked out from, in the order of its model. */
export function inputsOf(observation: Observation | undefined): readonly string[] {
  const derivation = derivationOf(observation)
  return derivation === null
    ? []
    : MODEL_INPUTS[derivation.by].flatMap(input => derivation.from[input] ?? [])
}

/** The observations that a tree asks for nothing but to work others out. */
export function onlyInputs(tree: Tree): ReadonlySet<string> {
  const asked = new Set([...Object.values(tree.questions), ...tree.after].map(({ asks }) => asks))
  return new Set(Object.keys(tree.observations).filter(id => !asked.has(id)))
}

/** The instrument of an interval that was worked out and not measured. */
export const WORKED_OUT = 'worked-out'

/** What working a measure out came to, with the numbers that its arithmetic shows. */
export interface Worked {
  readonly by: Model
  /**
   * `worked`; `unsure`: something that it needs is not known; `no-published-range`: nothing published
   * covers it; `bad-input`: a number that cannot be. All but the first count as unsure.
   */
  readonly standing: 'worked' | 'unsure' | 'no-published-range' | 'bad-input'
  /** An interval, or `unsure`. */
  readonly answer: Answer
  readonly shows: Readonly<Record<string, number>>
}

/**
 * A tree with what callers speak of by itself: without what is told only to work others out, and without
 * what is worked out in a unit in which something else is read. "pH 4.1" is the jar's.
 */
export function asSpokenOf(tree: Tree): Tree {
  const inputs = onlyInputs(tree)
  const all = Object.values(tree.observations)
  const read = new Set(
    all.flatMap(one =>
      one.kind === 'measure' && one.derived === undefined && !inputs.has(one.id) ? [one.unit] : []
    )
  )
  const spoken = all.filter(
    one =>
      !inputs.has(one.id) &&
      !(one.kind === 'measure' && one.derived !== undefined && read.has(one.unit))
  )
  return { ...tree, observations: Object.fromEntries(spoken.map(one => [one.id, one])) }
}
