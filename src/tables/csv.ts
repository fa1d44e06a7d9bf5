/**
 * Rows of text as CSV: fields and line ends as RFC 4180 has them. A cell that a spreadsheet would take
 * for a formula gets an apostrophe before it: OWASP ASVS 5, 1.2.10 (= + - @, tab, null) and, from memory,
 * OWASP's page on CSV injection (line ends, and the full-width forms of the four signs). `mark` puts the byte
 * order mark first by which some spreadsheets tell UTF-8.
 */
export function csvOf(rows: readonly (readonly string[])[], mark = false): string {
  const lines = rows.map(row => `${row.map(field).join(',')}\r\n`)
  return `${mark ? '\uFEFF' : ''}${lines.join('')}`
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: null is one of them.
const FORMULA = /^[=+\-@\t\r\n\u0000\uFF1D\uFF0B\uFF0D\uFF20]/

function field(text: string): string {
  const harmless = FORMULA.test(text) ? `'${text}` : text
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless
}
