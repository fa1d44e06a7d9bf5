import { tablesHtml } from '../paper/table.tsx'
import { spreadsheetRows } from '../paper/table-rows.ts'
import { csvOf } from '../tables/csv.ts'
import { dmnOf } from '../tables/dmn.ts'
import { lensFileName, tableName } from '../tables/names.ts'
import type { Table } from '../tables/table.ts'
import { tablesOf } from '../tables/tables.ts'
import type { Lens } from '../tree/lens.ts'
import type { Tree } from '../tree/tree.ts'
import type { SourceLedger } from '../words/sources.ts'
import type { Words } from '../words/words.ts'

export const FORMATS = ['dmn', 'csv', 'html'] as const
export type Format = (typeof FORMATS)[number]

/** What files of tables are made of. */
export interface TablesWanted {
  readonly format: Format
  readonly tree: Tree
  readonly lenses: readonly Lens[]
  readonly words: Words
  readonly sources: SourceLedger
  readonly country: string | undefined
  readonly today: Date
  /** The byte order mark before a CSV. */
  readonly mark: boolean
}

/** One file, and how many rows each table in it has. */
export interface TableFile {
  readonly name: string
  readonly text: string
  readonly rows: readonly number[]
}

/** The files that were asked for, one by one as they are made. */
export function* tableFiles(wanted: TablesWanted): Generator<TableFile, undefined> {
  const { format, tree, lenses, words, sources, country, today, mark } = wanted
  if (format === 'html') {
    const tables = lenses.flatMap(lens => tablesOf(tree, lens))
    const text = tablesHtml({ tree, tables, words, sources, country, today })
    yield { name: `${tree.id}-tables-${words.tag}.html`, text, rows: lengths(tables) }
    return undefined
  }
  for (const lens of lenses) {
    const tables = tablesOf(tree, lens)
    if (format === 'dmn') {
      const name = `${tree.id}-${lensFileName(lens)}.dmn`
      yield { name, text: dmnOf(tree, tables, sources), rows: lengths(tables) }
      continue
    }
    for (const table of tables) {
      const rows = spreadsheetRows(words, tree, table, sources, today)
      const name = `${tree.id}-${tableName(table)}-${words.tag}.csv`
      yield { name, text: csvOf(rows, mark), rows: lengths([table]) }
    }
  }
  return undefined
}

const lengths = (tables: readonly Table[]) => tables.map(({ rows }) => rows.length)
