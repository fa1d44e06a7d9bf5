import { CATALOGUE } from './catalogue.ts'
import type { Finding, Witness } from './finding.ts'
import type { Place } from './place.ts'
import { clean, type Entry } from './wording.ts'

const WIDEST_EXCERPT = 100

/** A finding worded for a terminal: place, sentence, the line with a caret, walk, remedy. */
export function formatFinding(
  finding: Finding,
  textOf: (file: string) => string | undefined
): string {
  const { code, place, because, facts, witness } = finding
  const entry: Entry = CATALOGUE[code]
  const parts = [
    place ? `${spot(place)}  ${code}` : code,
    `  ${entry.says(facts)}`,
    ...excerpt(place, textOf),
    ...because.flatMap(other => [
      `  ${other.label}: ${spot(other.place)}`,
      ...excerpt(other.place, textOf)
    ]),
    ...(witness ? [`  Walk: ${formatWitness(witness)}`] : []),
    `  Fix: ${entry.remedy(facts)}\n  See: trees/README.md#${code}`
  ]
  return `${parts.join('\n\n')}\n`
}

/** A walk on one line: `a=b → c=d`. */
export const formatWitness = (witness: Witness): string =>
  witness.map(({ observation, answer }) => `${observation}=${answer}`).join(' → ')

// A file is named by whoever made it.
const spot = ({ file, line, column }: Place): string => `${clean(file)}:${line}:${column}`

function excerpt(place: Place | null, textOf: (file: string) => string | undefined): string[] {
  const line = place && textOf(place.file)?.split('\n')[place.line - 1]?.replace(/\r$/, '')
  if (!place || line === undefined || line === null || line === '') return []
  const { column, length } = place
  // A long line is shown around the caret, so that one line of prose does not fill the screen.
  const from = line.length > WIDEST_EXCERPT && column > 60 ? column - 40 : 0
  const shown = clean(line.slice(from, from + WIDEST_EXCERPT))
  const lead = from > 0 ? '…' : ''
  const tail = from + WIDEST_EXCERPT < line.length ? '…' : ''
  const gutter = `  ${place.line} | `
  const indent = ' '.repeat(lead.length + column - 1 - from)
  const carets = '^'.repeat(Math.max(1, Math.min(length, shown.length - (column - 1 - from))))
  return [`${gutter}${lead}${shown}${tail}\n${' '.repeat(gutter.length - 2)}| ${indent}${carets}`]
}
