/**
 * Rows of text as CSV: fields and line ends as RFC 4180 has them. A cell that a spreadsheet would take
 * for a formula gets an apostrophe before it (OWASP, CSV injection; from memory). `mark` puts the byte
 * order mark first by which some spreadsheets tell UTF-8.
 */
export function csvOf(rows: readonly (readonly string[])[], mark = false): string {
  const lines = rows.map(row => `${row.map(field).join(',')}\r\n`)
  return `${mark ? '\uFEFF' : ''}${lines.join('')}`
}

function field(text: string): string {
  const harmless = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless
}
