import { checked } from '../../science/bad-input.ts'
import type { AcidReading } from '../../science/course.ts'
import { DAY_MS } from '../../science/days.ts'
import { readDecimal } from '../../science/decimal.ts'
import { type PhInstrument, starterReading } from '../../science/mix.ts'

/** What was pasted: the readings in the order of their days, and the lines that no reading was found in. */
export interface Pasted {
  readonly readings: readonly AcidReading[]
  readonly notUnderstood: readonly string[]
}

/**
 * Reads readings as a spreadsheet gives them: a line for each, a day or a date, then the pH; columns set
 * apart by a tab, a semicolon, a comma or blanks; a decimal point or comma; a heading is passed over. Dates
 * count from the first one.
 *
 * @throws BadInput for a pH outside 1.5 to 7, or a day below 0.
 */
export function readPasted(text: string, instrument: PhInstrument | undefined): Pasted {
  const lines = text.split(/\r?\n/).map(line => line.trim())
  const notUnderstood: string[] = []
  const found: { when: number; isDate: boolean; ph: number }[] = []
  for (const [index, line] of lines.entries()) {
    if (line === '') continue
    const [first = '', second = ''] = cellsOf(line)
    const date = dateOf(first)
    const when = date ?? readDecimal(first.replace(/^(day|día|dia)\s*/i, ''))
    const ph = readDecimal(second.replace(/^ph\s*/i, ''))
    if (when === null || ph === null) {
      // Only the first line can be a heading.
      if (index > 0 || /\d/.test(line)) notUnderstood.push(line)
      continue
    }
    found.push({ when, isDate: date !== null, ph })
  }
  const start = Math.min(...found.filter(({ isDate }) => isDate).map(({ when }) => when))
  const readings = found
    .map(({ when, isDate, ph }) => ({
      day: checked('day', isDate ? Math.round(when - start) : when, {
        from: 0,
        to: 3650,
        unit: 'days'
      }),
      ph: starterReading(ph, instrument)
    }))
    .sort((a, b) => a.day - b.day)
  return { readings, notUnderstood }
}

/** Tabs and semicolons part cells; a comma does where nothing else can, blanks where no comma is left. */
function cellsOf(line: string): readonly string[] {
  for (const mark of [/\t+/, /;/]) {
    if (mark.test(line)) return line.split(mark).map(cell => cell.trim())
  }
  const byComma = line.split(/,\s+|,(?=\d+[.]\d)/)
  if (byComma.length === 2) return byComma.map(cell => cell.trim())
  const byBlank = line.split(/\s+(?=[\d.,]+$)/)
  if (byBlank.length === 2) return byBlank.map(cell => cell.trim())
  return line.split(',').map(cell => cell.trim())
}

/** Days since 1970 of `2026-11-25` or, as the US writes it, `11/25/2026`; null for anything else. */
function dateOf(text: string): number | null {
  const iso = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(text)
  const us = /^(\d{1,2})\/(\d{1,2})\/(\d{2}|\d{4})$/.exec(text)
  const [year, month, day] = iso
    ? [iso[1], iso[2], iso[3]]
    : us
      ? [us[3]?.length === 2 ? `20${us[3]}` : us[3], us[1], us[2]]
      : []
  if (year === undefined) return null
  const time = Date.UTC(Number(year), Number(month) - 1, Number(day))
  return Number.isNaN(time) ? null : time / DAY_MS
}
