import type { Variable } from '../diagrams/space.ts'
import { type Interval, isInterval } from '../tree/answers.ts'
import { cutsOn, isExact, past, tasteCuts } from '../tree/bands.ts'
import { must } from '../tree/must.ts'
import type { MeasureObservation, Range } from '../tree/observation.ts'
import { type Cut, sortCuts } from '../tree/range.ts'
import type { Tree } from '../tree/tree.ts'
import { boxesOf } from './boxes.ts'
import { type Cell, type Input, MEASURED, type NumberInput } from './table.ts'

/** One way on from a vertex: what it asks of the coordinate's inputs, and the vertex it leads to. */
export interface Way {
  readonly cells: readonly Cell[]
  readonly leads: number
}

/** How one coordinate of the answer space stands in a table. */
export interface Columns {
  readonly inputs: readonly Input[]
  /** The ways on, given the vertex that each value leads to: without overlap, none left out. */
  ways(leads: readonly number[]): readonly Way[]
}

/** The columns of a coordinate. */
export function columnsOf(tree: Tree, variable: Variable): Columns {
  const measure = tree.observations[variable.observation]
  const ways =
    measure?.kind === 'measure' ? numberWays(tree, measure, variable) : answerWays(variable)
  const cache = new Map<string, readonly Way[]>()
  return {
    inputs: inputsOf(tree, variable),
    ways(leads) {
      const key = `${leads}`
      const result = cache.get(key) ?? ways(leads)
      cache.set(key, result)
      return result
    }
  }
}

function inputsOf(tree: Tree, { observation: id, sign, values }: Variable): readonly Input[] {
  const observation = tree.observations[id]
  if (observation?.kind === 'measure') {
    return [
      { kind: 'told', observation: id, sign: null, values: [MEASURED, 'unsure'] },
      ...endsOf(observation).map((end): Input => ({ kind: 'number', observation: id, end }))
    ]
  }
  const kind = sign === undefined ? 'choice' : 'sign'
  const answers = values.map(({ answer }) => String(answer))
  return [{ kind, observation: id, sign: sign ?? null, values: answers }]
}

/** A count is exact: one number says it. */
function endsOf(measure: MeasureObservation): readonly NumberInput['end'][] {
  return isExact(measure) ? ['reading'] : ['low', 'reading', 'high']
}

function answerWays({ values }: Variable) {
  return (leads: readonly number[]): readonly Way[] =>
    [...new Set(leads)].map(to => ({
      cells: [
        { among: values.flatMap((value, i) => (leads[i] === to ? String(value.answer) : [])) }
      ],
      leads: to
    }))
}

function numberWays(tree: Tree, measure: MeasureObservation, { values }: Variable) {
  const ends = endsOf(measure)
  const cuts = ends.map(end =>
    end === 'reading' && ends.length > 1
      ? sortCuts(tasteCuts(tree, measure))
      : cutsOn(tree, measure)
  )
  const readings = values.flatMap(({ answer }, value) =>
    isInterval(answer) ? [{ value, point: pointOf(answer, ends, cuts) }] : []
  )
  const boxes = boxesOf(
    cuts.map(own => own.length + 1),
    readings.map(({ point }) => point)
  )
  const unsure = values.findIndex(({ answer }) => answer === 'unsure')
  return (leads: readonly number[]): readonly Way[] => [
    ...boxes(readings.map(({ value }) => must(leads[value], 'lead'))).map(({ box, leads: to }) => ({
      cells: [
        { among: [MEASURED] },
        ...box.map(([from, last], axis) => within(must(cuts[axis], 'cut'), from, last))
      ],
      leads: to
    })),
    { cells: [{ among: ['unsure'] }, ...ends.map(() => null)], leads: must(leads[unsure], 'lead') }
  ]
}

function pointOf(
  interval: Interval,
  ends: readonly NumberInput['end'][],
  cuts: readonly (readonly Cut[])[]
): readonly number[] {
  return ends.map((end, axis) => past(must(cuts[axis], 'cut'), interval[end]))
}

/** The numbers in a run of bands. */
function within(cuts: readonly Cut[], from: number, last: number): Cell {
  const [start, end] = [cuts[from - 1], cuts[last]]
  if (start === undefined && end === undefined) return null
  const range: Range = {
    ...(start && (start.side === 'below' ? { atLeast: start.at } : { over: start.at })),
    ...(end && (end.side === 'below' ? { under: end.at } : { atMost: end.at }))
  }
  return { within: range }
}
