import type { Lens } from '../tree/lens.ts'
import type { Input, Table } from './table.ts'

// FEEL reads a hyphen as minus, so names carry underscores; two of them stand between an observation
// and what is named of it, which no id can hold.
const name = (...ids: readonly string[]): string =>
  ids.map(id => id.replaceAll('-', '_')).join('__')

/** The variable that an input is read from: `people_signs__illness_signs`, `jar_ph`, `jar_ph__low`. */
export function variableName(input: Input): string {
  if (input.kind === 'number') return name(input.observation, input.end)
  return input.sign === null ? name(input.observation) : name(input.observation, input.sign)
}

/** The name of what a lens gives: `batch`, `use`, `note__cold_room`. */
export function outputName(lens: Lens): string {
  return typeof lens === 'object' ? name('note', lens.note) : lens
}

/** The name of a lens in the name of a file: `batch`, `note-cold-room`. */
export const lensFileName = (lens: Lens): string =>
  typeof lens === 'object' ? `note-${lens.note}` : lens

/** The name of a table in the name of a file: `batch`, `batch-3`, `note-cold-room`. */
export function tableName({ lens, part }: Table): string {
  return part === null ? lensFileName(lens) : `${lensFileName(lens)}-${part.number}`
}

/** The name of a table as one that FEEL can refer to: `batch`, `batch__3`. */
export function decisionName({ lens, part }: Table): string {
  return part === null ? outputName(lens) : name(outputName(lens), `${part.number}`)
}
