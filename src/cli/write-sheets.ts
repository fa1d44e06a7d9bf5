import { createHash } from 'node:crypto'
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { type Printed, printPages } from './print-sheets.ts'
import { indexOfSheets } from './sheet-index.ts'
import type { SheetToPrint } from './sheets-to-print.ts'
import { say, type Terminal } from './terminal.ts'
import { makeFolder, writeWhole } from './write-file.ts'

/** One sheet in the manifest. */
export interface ManifestEntry {
  readonly name: string
  readonly sheet: string
  readonly tree: string
  readonly edition: number
  readonly fingerprint: string
  /** Of the tree's guidance. */
  readonly review: 'draft' | 'signed'
  readonly verdict: string | null
  readonly language: string
  /** The type of its smallest side, in points; null where sides are not fitted. */
  readonly size: number | null
  readonly tooLong: boolean
  /** How many parts had to leave its fullest side. */
  readonly left: number
  /** SHA-256 of what it was made from, and of the PDF. */
  readonly from: string
  readonly pdf: string
  /** SHA-256 of its drawing; left out where it is none. */
  readonly svg?: string
}

const MANIFEST = 'manifest.json'

/** How many sheets may be lost to a crash: the manifest is written after so many. */
const KEEP_EVERY = 10

/**
 * Writes sheets into a folder with an index page and a manifest. A sheet that stands there already, made
 * from the same, is left as it is: what was broken off goes on where it was.
 *
 * @returns The names of those that take more than their side.
 */
export async function writeSheets(
  sheets: readonly SheetToPrint[],
  folder: string,
  terminal: Terminal
): Promise<readonly string[]> {
  makeFolder(folder)
  const entries = new Map(readManifest(folder).map(entry => [entry.name, entry]))
  const keep = () => {
    const all = [...entries.values()].sort((one, other) => (one.name < other.name ? -1 : 1))
    writeWhole(join(folder, MANIFEST), `${JSON.stringify({ sheets: all }, null, 2)}\n`)
    return all
  }
  const isThere = (sheet: SheetToPrint) => {
    const entry = entries.get(sheet.name)
    return (
      entry !== undefined &&
      entry.from === hashOf(sheet.html) &&
      existsSync(join(folder, `${sheet.name}.html`)) &&
      entry.pdf === hashOfFile(join(folder, `${sheet.name}.pdf`)) &&
      (sheet.svg === null || entry.svg === hashOfFile(join(folder, `${sheet.name}.svg`)))
    )
  }
  const wanting = sheets.filter(sheet => !isThere(sheet))
  let done = sheets.length - wanting.length
  const tell = (sheet: SheetToPrint, printed: Printed) => {
    entries.set(sheet.name, entryOf(sheet, printed))
    done += 1
    if (done % KEEP_EVERY === 0) keep()
    const endings = ['pdf', 'html', ...(sheet.svg === null ? [] : ['svg'])]
    say(terminal.output, endings.map(ending => `${sheet.name}.${ending}`).join('  '))
    if (terminal.interactive) terminal.errors.write(bar(done, sheets.length))
  }
  try {
    if (wanting.length > 0) await printPages(wanting, folder, terminal.today, tell)
  } finally {
    const all = keep()
    writeWhole(join(folder, 'index.html'), indexOfSheets(all))
  }
  return sheets.map(({ name }) => name).filter(name => entries.get(name)?.tooLong)
}

function entryOf(
  { name, kind, tree, verdict, language, html, svg }: SheetToPrint,
  printed: Printed
) {
  const entry: ManifestEntry = {
    name,
    sheet: kind,
    tree: tree.id,
    edition: tree.edition,
    fingerprint: tree.fingerprint,
    review: tree.review.state,
    verdict,
    language,
    size: printed.size,
    tooLong: printed.tooLong,
    left: printed.left,
    from: hashOf(html),
    pdf: hashOf(printed.pdf),
    ...(svg !== null && { svg: hashOf(svg) })
  }
  return entry
}

/** What an earlier run wrote; nothing where that cannot be read: then every sheet is made again. */
function readManifest(folder: string): readonly ManifestEntry[] {
  try {
    const { sheets } = JSON.parse(readFileSync(join(folder, MANIFEST), 'utf8'))
    return Array.isArray(sheets) ? sheets.filter(({ name }) => typeof name === 'string') : []
  } catch {
    return []
  }
}

const hashOf = (content: string | Uint8Array) => createHash('sha256').update(content).digest('hex')

const hashOfFile = (file: string) => (existsSync(file) ? hashOf(readFileSync(file)) : null)

const WIDTH = 30

/** A bar that is written over itself. */
function bar(done: number, all: number): string {
  const full = Math.round((done / all) * WIDTH)
  const end = done === all ? '\n' : ''
  return `\r[${'#'.repeat(full)}${' '.repeat(WIDTH - full)}] ${done} of ${all}${end}`
}
