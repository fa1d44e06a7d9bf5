import type { Value, Variable } from '../diagrams/space.ts'
import { diagramsOf, type TreeDiagrams } from '../diagrams/tree-diagrams.ts'
import { walk } from '../evaluate/walk.ts'
import { everything, isUsual } from '../prove/open.ts'
import { completed, shortestTo, type ValueChoice } from '../prove/witness.ts'
import { type Answers, type Interval, isInterval } from '../tree/answers.ts'
import { bandKey, cutsOn, isExact, past } from '../tree/bands.ts'
import type { Outcome } from '../tree/caution.ts'
import type { Lens } from '../tree/lens.ts'
import { at, must } from '../tree/must.ts'
import type { MeasureObservation, Unit } from '../tree/observation.ts'
import { measured, rounded } from '../tree/reading.ts'
import type { Tree } from '../tree/tree.ts'
import type { PatternPart } from './patterns.ts'
import { lensesOf } from './tables.ts'

/** The readings nearest a limit on both sides, by one instrument, in one situation. */
export interface LimitCases {
  readonly measure: string
  readonly limit: number
  /** Null for a count, and for what is only worked out. */
  readonly instrument: string | null
  /** How far two readings lie apart that count as neighbours. */
  readonly step: number
  /** What is told besides and is not what an ordinary jar shows, and every other number. */
  readonly besides: readonly PatternPart[]
  /** From the lowest reading up. */
  readonly cases: readonly LimitCase[]
}

export interface LimitCase {
  readonly interval: Interval
  /** What `walk` was given. */
  readonly answers: Answers
  readonly outcome: Outcome
}

/** A limit with its cases; none where no answers make an outcome differ at it. */
export interface NumericLimit {
  readonly measure: string
  readonly limit: number
  readonly cases: readonly LimitCases[]
}

/** In what steps somebody reads a measure off. */
const STEPS: Readonly<Record<Unit, number>> = {
  ph: 0.01,
  day: 1,
  fahrenheit: 1,
  percent: 0.1,
  milliliter: 1,
  gram: 1,
  'gram-per-liter': 0.1,
  'ph-difference': 0.01
}

/** What is no finer than this is read in tenths. */
const COARSE = 0.1

/**
 * Every limit that the tree or its rules set on what it asks for, with the readings nearest to it. The
 * situation is the most ordinary one in which the limit decides; one for each side of the outcome
 * that it can decide. Outcomes are those of `walk`.
 */
export function limitCasesOf(tree: Tree): readonly NumericLimit[] {
  const compiled = diagramsOf(tree)
  return compiled.variables.flatMap((variable, index) => {
    const measure = tree.observations[variable.observation]
    if (measure?.kind !== 'measure') return []
    const limits = [...new Set(cutsOn(tree, measure).map(cut => cut.at))]
    const instruments = measure.instruments.length === 0 ? [null] : measure.instruments
    return limits.map(limit => ({
      measure: measure.id,
      limit,
      cases: instruments.flatMap(instrument =>
        casesOf(compiled, { variable, index, measure }, limit, instrument?.id ?? null)
      )
    }))
  })
}

/** A measure and where it stands in the answer space. */
interface Measured {
  readonly variable: Variable
  readonly index: number
  readonly measure: MeasureObservation
}

function casesOf(
  compiled: TreeDiagrams,
  measured: Measured,
  limit: number,
  instrument: string | null
): readonly LimitCases[] {
  const { tree } = compiled
  const { measure, variable, index } = measured
  const step = stepOf(measure, instrument)
  const readings = readingsAround(tree, measure, limit, instrument, step)
  const values = readings.map(interval => placeOfValue(tree, measure, variable, interval))
  const situations = situationsOf(compiled, index, values).map(choice => ({
    choice,
    parts: besides(compiled, choice, index)
  }))
  // Two sides of the outcome may turn in one and the same situation.
  const once = new Map(situations.map(each => [JSON.stringify(each.parts), each]))
  return [...once.values()].map(({ choice, parts }) => ({
    measure: measure.id,
    limit,
    instrument,
    step,
    besides: parts,
    cases: readings.map(interval => {
      const answers = {
        ...completed(compiled, choice, everything(compiled)),
        [measure.id]: interval
      }
      return { interval, answers, outcome: walk(tree, answers).outcome }
    })
  }))
}

function stepOf(measure: MeasureObservation, instrument: string | null): number {
  const plusMinus = measure.instruments.find(({ id }) => id === instrument)?.plusMinus ?? 0
  return plusMinus > COARSE ? Math.max(COARSE, STEPS[measure.unit]) : STEPS[measure.unit]
}

/** Those readings next to which the limit tells a neighbour apart. */
function readingsAround(
  tree: Tree,
  measure: MeasureObservation,
  limit: number,
  instrument: string | null,
  step: number
): readonly Interval[] {
  const cuts = cutsOn(tree, measure).filter(cut => cut.at === limit)
  const plusMinus = measure.instruments.find(({ id }) => id === instrument)?.plusMinus ?? 0
  const { from, to } = measure.span
  const first = Math.floor(rounded((limit - plusMinus) / step)) - 2
  const last = Math.ceil(rounded((limit + plusMinus) / step)) + 2
  const grid = Array.from({ length: last - first + 1 }, (_, i) => rounded((first + i) * step))
    .filter(reading => reading >= from && reading <= to)
    .map(reading => measured(measure, reading, instrument ?? undefined))
  const side = ({ low, reading, high }: Interval) =>
    `${past(cuts, low)} ${past(cuts, high)} ${past(cuts, reading)}`
  // Of a measured value only its two ends are held against a limit, but where taste is asked for.
  const ends = isExact(measure)
    ? side
    : ({ low, high }: Interval) => `${past(cuts, low)} ${past(cuts, high)}`
  return grid.filter((interval, i) => {
    const [before, after] = [grid[i - 1], grid[i + 1]]
    return [before, after].some(next => next !== undefined && ends(next) !== ends(interval))
  })
}

/** The place of an interval among the values that limits tell apart. */
function placeOfValue(
  tree: Tree,
  measure: MeasureObservation,
  { values }: Variable,
  interval: Interval
): number {
  const key = bandKey(tree, measure, interval)
  return values.findIndex(
    ({ answer }) => isInterval(answer) && bandKey(tree, measure, answer) === key
  )
}

/** For each side of the outcome that the values can decide, the most ordinary answers in which they do. */
function situationsOf(
  compiled: TreeDiagrams,
  index: number,
  values: readonly number[]
): readonly ValueChoice[] {
  const sides: readonly Lens[] = ['use', 'batch', 'person', 'container']
  const found = new Map<string, ValueChoice>()
  for (const side of sides) {
    const choice = situationFor(compiled, side, index, values)
    if (choice !== undefined) found.set(JSON.stringify([...choice]), choice)
  }
  if (found.size > 0) return [...found.values()]
  const notes = lensesOf(compiled.tree).filter(lens => typeof lens === 'object')
  for (const note of notes) {
    const choice = situationFor(compiled, note, index, values)
    if (choice !== undefined) return [choice]
  }
  return []
}

function situationFor(
  compiled: TreeDiagrams,
  side: Lens,
  index: number,
  values: readonly number[]
): ValueChoice | undefined {
  const { diagrams } = compiled
  const diagram = compiled.of(side)
  const parts = values
    .filter(value => value >= 0)
    .map(value => diagrams.restrict(diagram, index, value))
  const [first] = parts
  if (first === undefined || parts.every(part => part === first)) return undefined
  const differs = diagrams.combine(parts, levels =>
    levels.every(level => level === levels[0]) ? 0 : 1
  )
  return shortestTo(compiled, differs, everything(compiled), level => level === 1)
}

/** What the situation tells besides the measure that is not usual, and the numbers it has. */
function besides(
  { tree, variables }: TreeDiagrams,
  choice: ValueChoice,
  measure: number
): readonly PatternPart[] {
  return variables.flatMap((variable, index) => {
    if (index === measure) return []
    const value = choiceIn(tree, variable, choice.get(index))
    const isNumber = tree.observations[variable.observation]?.kind === 'measure'
    if (!isNumber && isUsual(tree, variable, value)) return []
    const { observation, sign } = variable
    return [{ observation, sign: sign ?? null, values: [value] }]
  })
}

function choiceIn(tree: Tree, variable: Variable, chosen: number | undefined): Value {
  if (chosen !== undefined) return at(variable.values, chosen)
  return must(
    variable.values.find(value => isUsual(tree, variable, value)) ?? variable.values[0],
    'value'
  )
}
