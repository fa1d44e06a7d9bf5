import type { Range } from '../tree/observation.ts'
import type { Cell } from './table.ts'

/** A cell as an S-FEEL unary test: `-`, `"no","unsure"`, `<= 4.2`, `(4.2..4.6]`. */
export function unaryTest(cell: Cell): string {
  if (cell === null) return '-'
  return 'among' in cell ? cell.among.map(quoted).join(',') : interval(cell.within)
}

/** An id as an S-FEEL string. */
export const quoted = (text: string): string => `"${text.replace(/["\\]/g, sign => `\\${sign}`)}"`

function interval({ atLeast, over, under, atMost }: Range): string {
  const from = atLeast ?? over
  const to = atMost ?? under
  if (from === undefined && to === undefined) return '-'
  if (to === undefined) return `${atLeast === undefined ? '>' : '>='} ${from}`
  if (from === undefined) return `${atMost === undefined ? '<' : '<='} ${to}`
  return `${atLeast === undefined ? '(' : '['}${from}..${to}${atMost === undefined ? ')' : ']'}`
}
