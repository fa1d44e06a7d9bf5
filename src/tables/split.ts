import type { Diagrams } from '../diagrams/diagram.ts'
import { must } from '../tree/must.ts'
import type { Columns } from './columns.ts'
import { Ordering } from './ordering.ts'
import type { Cell } from './table.ts'

/** What a table beyond this many rows is split for: nobody reads more at a stretch. */
export const MOST_ROWS = 500

/** What all rows of a share ask of one coordinate. */
export interface Kept {
  readonly variable: number
  readonly cells: readonly Cell[]
}

/** One table's worth of a diagram, and what all of its rows have in common. */
export interface Share {
  readonly where: readonly Kept[]
  readonly ordering: Ordering
}

/**
 * Splits a diagram until each share makes a table of at most so many rows, each time by the
 * observation or sign that, put first, makes the fewest rows without leaving most of them in one part.
 */
export function sharesOf(
  diagrams: Diagrams,
  diagram: number,
  columns: readonly Columns[],
  mostRows: number,
  where: readonly Kept[] = []
): readonly Share[] {
  const ordering = new Ordering(diagrams, diagram, (variable, leads) =>
    must(columns[variable], 'columns').ways(leads)
  )
  ordering.sift()
  const rows = ordering.rows()
  const first = rows <= mostRows ? undefined : firstOf(ordering)
  if (first === undefined) return [{ where, ordering }]
  const values = Array.from({ length: must(diagrams.sizes[first], 'size') }, (_, value) =>
    diagrams.restrict(diagram, first, value)
  )
  return must(columns[first], 'columns')
    .ways(values)
    .flatMap(({ cells, leads }) =>
      sharesOf(diagrams, leads, columns, mostRows, [...where, { variable: first, cells }])
    )
}

/** What to split by. */
function firstOf(ordering: Ordering): number | undefined {
  const candidates = [...ordering.variables()]
    .sort((a, b) => a - b)
    .map(variable => {
      const parts = ordering.partsBy(variable)
      const rows = parts.reduce((sum, part) => sum + part, 0)
      return { variable, rows, evenly: Math.max(...parts) <= rows * MOST_IN_ONE }
    })
  const even = candidates.filter(({ evenly }) => evenly)
  const [first, ...others] = even.length > 0 ? even : candidates
  return first && others.reduce((best, one) => (one.rows < best.rows ? one : best), first).variable
}

/** The share of the rows that may stay together in one part. */
const MOST_IN_ONE = 2 / 3
