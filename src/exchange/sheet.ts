import { CsvError, parse } from 'csv-parse/sync'
import { csvOf } from '../tables/csv.ts'
import { type ExchangeText, type ReturnedText, UnreadableExchange } from './exchange-text.ts'

/** The columns of the spreadsheet, in their order; the English and the translation are named by their tags. */
const COLUMNS = ['id', 'kind', 'note', 'most words', 'state', 'made from'] as const

/**
 * Texts as a spreadsheet: CSV (RFC 4180) in UTF-8 with the mark by which spreadsheets tell it.
 *
 * A text that a spreadsheet would take for a formula gets an apostrophe before it, and so does one that
 * begins as if it had one already: `readSheet` takes one off, and nothing is lost.
 */
export function sheetOf(texts: readonly ExchangeText[], from: string, to: string): string {
  const rows = texts.map(text => [
    text.id,
    text.kind,
    text.note ?? '',
    text.most === null ? '' : String(text.most),
    held(text.english),
    held(text.target ?? ''),
    text.state,
    text.from
  ])
  const [id, kind, note, most, state, origin] = COLUMNS
  return csvOf([[id, kind, note, most, from, to, state, origin], ...rows], true)
}

/** What `csvOf` puts an apostrophe before (as `tables/csv.ts` says why), behind any number of them. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: null is one of them.
const FORMULA = /^'*[=+\-@\t\r\n\u0000\uFF1D\uFF0B\uFF0D\uFF20]/
const held = (text: string): string =>
  text.startsWith("'") && FORMULA.test(text) ? `'${text}` : text
const freed = (text: string): string =>
  text.startsWith("'") && FORMULA.test(text) ? text.slice(1) : text

/** The texts of a spreadsheet, whatever the order of its columns. @throws UnreadableExchange */
export function readSheet(text: string, from: string, to: string): readonly ReturnedText[] {
  const [head = [], ...rows] = rowsOf(text)
  const columnOf = (name: string) => {
    const column = head.indexOf(name)
    if (column < 0) {
      throw new UnreadableExchange(
        `Line 1: the column \`${name}\` is missing. Keep the first line as it was exported.`
      )
    }
    return column
  }
  const [id, english, target] = [columnOf('id'), columnOf(from), columnOf(to)]
  const origin = head.indexOf('made from')
  return rows.map(row => {
    const said = freed(row[target] ?? '')
    return {
      id: row[id] ?? '',
      english: freed(row[english] ?? ''),
      target: said === '' ? null : said,
      from: row[origin] || null
    }
  })
}

function rowsOf(text: string): readonly (readonly string[])[] {
  // Spreadsheets of some countries write a semicolon or a tab between two cells.
  const first = text.replace(/^\uFEFF/, '').split(/[\r\n]/, 1)[0] ?? ''
  const delimiter = [',', ';', '\t'].find(sign => first.split(sign).length >= 3) ?? ','
  try {
    return parse(text, {
      bom: true,
      delimiter,
      skip_empty_lines: true,
      relax_column_count_less: true
    })
  } catch (error) {
    if (!(error instanceof CsvError)) throw error
    const line = 'lines' in error ? error.lines : '?'
    throw new UnreadableExchange(
      `Line ${line}: a row of this CSV has no end or a stray quote. Save the sheet again as CSV.`
    )
  }
}
