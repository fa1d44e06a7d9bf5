import { isPast } from '../office/stale.ts'
import type { Table } from '../tables/table.ts'
import { must } from '../tree/must.ts'
import type { Tree } from '../tree/tree.ts'
import { isDraft } from '../words/languages.ts'
import { type Standing, standingOf } from '../words/say.ts'
import { type SourceLedger, sourceLine } from '../words/sources.ts'
import type { Words } from '../words/words.ts'
import { cellReader, headText, outcomeText, remarksOn, titleText } from './table-words.ts'

/** How far a tree is reviewed, and whether the words are a draft. */
export function standingLines(words: Words, tree: Tree, today: Date): readonly string[] {
  const overdue = isPast(tree.review.due, today)
  const { edition, draft, overdue: late }: Standing = standingOf({ tree, overdue }, words)
  const translation = isDraft(words.tag) ? words.t('ui:draft-translation') : null
  return [edition, draft, late, translation].filter(line => line !== null)
}

/**
 * A table as rows for a spreadsheet: heads first, then a row for each of its rows with its outcome,
 * the sources it rests on and, on every row so that it travels along, what the table is.
 */
export function spreadsheetRows(
  words: Words,
  tree: Tree,
  table: Table,
  ledger: SourceLedger,
  today: Date
): readonly (readonly string[])[] {
  const heads = [
    ...table.inputs.map(input => headText(words, input)),
    words.t('ui:table.outcome'),
    words.t('ui:table.rests-on'),
    words.t(`${tree.id}:title`)
  ]
  const about = [
    titleText(words, table),
    ...standingLines(words, tree, today),
    ...remarksOn(words, table)
  ].join(' · ')
  const said = cellReader(words)
  const outcomes = table.outputs.map((_, level) => outcomeText(words, tree, table, level))
  const rows = table.rows.map(({ cells, level, because }) => [
    ...table.inputs.map((input, i) => said(input, cells[i] ?? null)),
    must(outcomes[level], 'outcome'),
    because.map(id => citedText(ledger, id)).join('; '),
    about
  ])
  return [heads, ...rows]
}

/** A source on one line; its id where the ledger does not have it. */
export function citedText(ledger: SourceLedger, id: string): string {
  const source = Object.hasOwn(ledger, id) ? ledger[id] : undefined
  return source ? sourceLine({ ...source, id }) : id
}
