import type { Breach } from '../../src/prove/claim.ts'
import { type Lens, lensName, levelOf } from '../../src/tree/lens.ts'
import type { Effect, Tree } from '../../src/tree/tree.ts'
import type { Plan } from './plan.ts'

/** What every way and every sign of a plan gives on one side of the outcome, as a level of caution. */
export interface Levels {
  /** By spot and way. */
  readonly ways: readonly (readonly number[])[]
  /** By spot, sign and value. */
  readonly cells: readonly (readonly (readonly number[])[])[]
}

export function levelsOf(tree: Tree, { spots }: Plan, lens: Lens): Levels {
  const cache = new Map<Effect, number>()
  const level = (effect: Effect | null, end?: string): number => {
    if (effect === null) return 0
    const result = cache.get(effect) ?? levelOf(tree, lens, effect, end)
    cache.set(effect, result)
    return result
  }
  return {
    ways: spots.map(({ ways }) => ways.map(({ effect, end }) => level(effect, end))),
    cells: spots.map(({ cells }) => cells.map(({ effects }) => effects.map(one => level(one))))
  }
}

/** Levels that a claim does not tell apart are one grade; the highest grade met on a walk decides. */
export interface Grades {
  readonly lens: Lens
  /** Equal for two claims that grade alike. */
  readonly name: string
  readonly of: readonly number[]
  readonly breaks: readonly boolean[]
  /** From this grade on nothing that follows can break the claim any more. */
  readonly lost: number
}

const LEVELS = 32

/** As a claim grades levels: runs of neighbours that all break it or all keep it. */
export function gradesOf({ lens, breaks }: Breach): Grades {
  const of: number[] = []
  const runs: boolean[] = []
  for (let level = 0; level < LEVELS; level++) {
    if (runs.at(-1) !== breaks(level)) runs.push(breaks(level))
    of.push(runs.length - 1)
  }
  return {
    lens,
    name: `${lensName(lens)} ${of}`,
    of,
    breaks: runs,
    lost: runs.lastIndexOf(true) + 1
  }
}
