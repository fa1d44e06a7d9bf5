import type { Open } from '../diagrams/reach.ts'
import type { Variable } from '../diagrams/space.ts'
import { diagramsOf, type TreeDiagrams } from '../diagrams/tree-diagrams.ts'
import { walk } from '../evaluate/walk.ts'
import { countLevels } from '../prove/count.ts'
import { boxDiagram, coverWithin } from '../prove/cover.ts'
import type { Outcome } from '../tree/caution.ts'
import type { Lens } from '../tree/lens.ts'
import { must } from '../tree/must.ts'
import type { Tree } from '../tree/tree.ts'
import { alarmsOf } from './emergencies.ts'
import { outputsOf } from './table.ts'

/** What sets of answers have in common that come to an outcome; whatever is not named may be anything. */
export interface OutcomePattern {
  readonly when: readonly PatternPart[]
  /** How many sets of answers fit it. They count sets, not callers, and patterns overlap. */
  readonly sets: bigint
}

/** One thing that is told, and what it may be. */
export interface PatternPart {
  readonly observation: string
  readonly sign: string | null
  readonly values: Variable['values']
}

/** The patterns that bring one level of caution. */
export interface LevelPatterns {
  /** An index into what the table gives. */
  readonly level: number
  /** The verdict, the use, or whether a note is said. */
  readonly output: string
  /** In how many sets of answers exactly this comes out. */
  readonly sets: bigint
  /** Fewest conditions first. Of a level that is what is left over there are none. */
  readonly patterns: readonly OutcomePattern[]
}

/** One side of the outcome by patterns: of all that fit, the most cautious counts. */
export interface SidePatterns {
  readonly lens: Lens
  /** All sets of answers without an emergency. */
  readonly sets: bigint
  /** Most cautious first; what no answers come to is left out. */
  readonly levels: readonly LevelPatterns[]
}

/** What of one thing that is told is an emergency by itself, and what then comes out. */
export interface AlarmPattern {
  readonly observation: string
  /** Answers or signs. */
  readonly answers: readonly string[]
  readonly outcome: Outcome
}

/** The answers that are an emergency whatever else is told: they count before every pattern. */
export function alarmPatternsOf(tree: Tree): readonly AlarmPattern[] {
  const { variables } = diagramsOf(tree)
  return alarmsOf(tree, variables).flatMap(({ variable, alarming, answers }) => {
    const { observation, sign } = must(variables[variable], 'variable')
    const { outcome } = walk(tree, answers)
    return [{ observation, answers: sign === undefined ? alarming : [sign], outcome }]
  })
}

/** No tree needs nearly as many; a side that would is not printed as if it were whole. */
const MOST_PATTERNS = 3000

/**
 * The decision tables of one side of the outcome, read from the most cautious level down: a set of answers
 * comes to the first level of which some pattern fits it, and to the last one where none does. That
 * takes some hundred patterns where the rows of the tables, of which exactly one fits, are thousands.
 *
 * @throws RangeError where even these would be too many to be all found.
 */
export function patternsOf(tree: Tree, lens: Lens): SidePatterns {
  const compiled = diagramsOf(tree)
  const { diagrams } = compiled
  const diagram = compiled.of(lens)
  const counts = countLevels(diagrams, diagram)
  const levels = [...counts.keys()].sort((one, other) => other - one)
  const last = levels.at(-1)
  return {
    lens,
    sets: [...counts.values()].reduce((sum, some) => sum + some, 0n),
    levels: levels.map(level => {
      const exactly = diagrams.combine([diagram], ([found]) => (found === level ? 1 : 0))
      const orMore = diagrams.combine([diagram], ([found]) => (Number(found) >= level ? 1 : 0))
      const boxes = level === last ? [] : boxesIn(compiled, exactly, orMore)
      return {
        level,
        output: must(outputsOf(tree, lens)[level], 'output'),
        sets: counts.get(level) ?? 0n,
        patterns: patternsIn(compiled, boxes)
      }
    })
  }
}

/** The patterns of one level alone: nothing else has to be looked at. */
export function patternsOfLevel(
  tree: Tree,
  lens: Lens,
  level: number,
  most = MOST_PATTERNS
): readonly OutcomePattern[] | null {
  const compiled = diagramsOf(tree)
  const exactly = compiled.diagrams.combine([compiled.of(lens)], ([found]) =>
    found === level ? 1 : 0
  )
  const { boxes, truncated } = coverWithin(compiled, exactly, exactly, most)
  return truncated ? null : patternsIn(compiled, boxes)
}

/** In how many sets of answers one level comes out. */
export const setsOfLevel = (tree: Tree, lens: Lens, level: number): bigint => {
  const compiled = diagramsOf(tree)
  return countLevels(compiled.diagrams, compiled.of(lens)).get(level) ?? 0n
}

function boxesIn(compiled: TreeDiagrams, wanted: number, allowed: number): readonly Open[] {
  const { boxes, truncated } = coverWithin(compiled, wanted, allowed, MOST_PATTERNS)
  if (truncated) throw new RangeError(`More than ${MOST_PATTERNS} patterns for one outcome.`)
  return boxes
}

function patternsIn(compiled: TreeDiagrams, boxes: readonly Open[]): readonly OutcomePattern[] {
  const { diagrams, variables } = compiled
  return boxes
    .map(box => ({
      when: variables.flatMap(({ observation, sign, values }, index) => {
        const open = must(box[index], 'box')
        if (open.every(Boolean)) return []
        return [{ observation, sign: sign ?? null, values: values.filter((_, i) => open[i]) }]
      }),
      sets: countLevels(diagrams, boxDiagram(diagrams, box)).get(1) ?? 0n
    }))
    .sort((one, other) => one.when.length - other.when.length)
}
