import type { Variable } from '../diagrams/space.ts'
import { diagramsOf, type TreeDiagrams } from '../diagrams/tree-diagrams.ts'
import { walk } from '../evaluate/walk.ts'
import { level } from '../tree/caution.ts'
import { effectsOf } from '../tree/effects.ts'
import type { Lens } from '../tree/lens.ts'
import { must } from '../tree/must.ts'
import { TRACKS } from '../tree/observation.ts'
import type { Tree } from '../tree/tree.ts'
import { adviceOf, becauseOf, fits } from './because.ts'
import { type Columns, columnsOf } from './columns.ts'
import { type AlarmingVariable, alarmsOf } from './emergencies.ts'
import type { Ordering } from './ordering.ts'
import { type Kept, MOST_ROWS, sharesOf } from './split.ts'
import { type Among, type Cell, type Input, outputsOf, type Table, type TableRow } from './table.ts'

/** Every side of a tree's outcome that has a table: the tracks, the use, and each note it can say. */
export function lensesOf(tree: Tree): readonly Lens[] {
  const effects = Object.values(tree.questions).flatMap(effectsOf)
  const notes = [...new Set(effects.flatMap(effect => effect.notes))]
  return [...TRACKS, 'use', ...notes.map(note => ({ note }))]
}

/** A row before its table is put together: what it asks of each coordinate that it asks about. */
interface Drawn {
  readonly cells: ReadonlyMap<number, readonly Cell[]>
  readonly level: number
  readonly because: readonly string[]
}

/**
 * The decision tables of one side of the outcome: one, or where that were too long several that are
 * complete only together. That about the person tells of emergencies; the others fit no answers with
 * one, since container, batch and use are not judged then.
 */
export function tablesOf(tree: Tree, lens: Lens, mostRows = MOST_ROWS): readonly Table[] {
  const compiled = diagramsOf(tree)
  const alarms = alarmsOf(tree, compiled.variables)
  const columns = compiled.variables.map(variable => columnsOf(tree, variable))
  const shares = sharesOf(compiled.diagrams, compiled.of(lens), columns, mostRows)
  const inEmergency = lens === 'person' ? emergencyRows(tree, alarms) : []
  const parts = shares.map(({ where, ordering }) => ({
    where,
    rows: drawn(compiled, lens, columns, alarms, where, ordering)
  }))
  const [only, ...others] = parts
  const all =
    only !== undefined && others.length === 0
      ? [{ where: only.where, rows: [...inEmergency, ...only.rows] }]
      : [...(inEmergency.length > 0 ? [{ where: [], rows: inEmergency }] : []), ...parts]
  const widened = columns.map(({ inputs }, variable) =>
    inputs.map((input): Input => {
      const alarm = alarms.find(one => one.variable === variable)
      if (alarm === undefined || input.kind === 'number' || lens !== 'person') return input
      return { ...input, values: alarm.values }
    })
  )
  return all.map(({ where, rows }, index) => ({
    lens,
    part: all.length === 1 ? null : partOf(widened, where, index + 1, all.length),
    outputs: outputsOf(tree, lens),
    ...filled(widened, rows)
  }))
}

function partOf(
  columns: readonly (readonly Input[])[],
  where: readonly Kept[],
  number: number,
  of: number
) {
  const named = where.flatMap(({ variable, cells }) =>
    cells.flatMap((cell, index) =>
      cell === null ? [] : [{ input: must(columns[variable]?.[index], 'input'), cell }]
    )
  )
  return { number, of, where: named }
}

/** Every way from the top of a diagram to an end: no two of them fit the same answers. */
function drawn(
  compiled: TreeDiagrams,
  lens: Lens,
  columns: readonly Columns[],
  alarms: readonly AlarmingVariable[],
  where: readonly Kept[],
  ordering: Ordering
): readonly Drawn[] {
  const rows: Drawn[] = []
  const always = new Map<number, readonly Cell[]>([
    ...alarms.map(({ variable, quiet }) => [variable, [{ among: quiet }]] as const),
    ...where.map(({ variable, cells }) => [variable, cells] as const)
  ])
  const visit = (vertex: number, cells: ReadonlyMap<number, readonly Cell[]>): void => {
    if (ordering.isConstant(vertex)) {
      const fitting = (variable: number) => {
        const { inputs } = must(columns[variable], 'columns')
        return (value: Variable['values'][number]) => fits(value, inputs, cells.get(variable) ?? [])
      }
      rows.push({ cells, level: vertex, because: becauseOf(compiled, lens, vertex, fitting) })
      return
    }
    const { variable, children } = ordering.vertexOf(vertex)
    for (const way of must(columns[variable], 'columns').ways(children)) {
      visit(way.leads, new Map([...cells, [variable, way.cells]]))
    }
  }
  visit(ordering.root, always)
  return rows
}

/** One row for each coordinate that can tell of an emergency, none before it having told of one. */
function emergencyRows(tree: Tree, alarms: readonly AlarmingVariable[]): readonly Drawn[] {
  return alarms.map(({ variable, alarming, answers }, index) => {
    const before = alarms
      .slice(0, index)
      .map((alarm): [number, readonly Among[]] => [alarm.variable, [{ among: alarm.quiet }]])
    const { trail, outcome } = walk(tree, answers)
    const caution = level(tree, 'person', outcome.person)
    const because = [...trail.flatMap(step => step.because), ...adviceOf(tree, 'person', caution)]
    return {
      cells: new Map([...before, [variable, [{ among: alarming }]]]),
      level: caution,
      because: [...new Set(because)]
    }
  })
}

/** Rows over the inputs that any of them asks about. */
function filled(
  columns: readonly (readonly Input[])[],
  rows: readonly Drawn[]
): { readonly inputs: readonly Input[]; readonly rows: readonly TableRow[] } {
  const places = columns
    .flatMap((inputs, variable) => inputs.map((input, index) => ({ input, variable, at: index })))
    .filter(({ variable, at }) =>
      rows.some(({ cells }) => (cells.get(variable)?.[at] ?? null) !== null)
    )
  return {
    inputs: places.map(({ input }) => input),
    rows: rows.map(({ cells, level: given, because }) => ({
      cells: places.map(({ variable, at }) => cells.get(variable)?.[at] ?? null),
      level: given,
      because
    }))
  }
}
