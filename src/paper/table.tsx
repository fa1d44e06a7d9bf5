import { renderToString } from 'preact-render-to-string'
import type { Input, Table } from '../tables/table.ts'
import type { Tree } from '../tree/tree.ts'
import { directionOf } from '../words/direction.ts'
import { footNumbers } from '../words/foot-numbers.ts'
import type { SourceLedger } from '../words/sources.ts'
import type { Words } from '../words/words.ts'
import { citedText, standingLines } from './table-rows.ts'
import { TABLE_STYLE } from './table-style.ts'
import {
  cellReader,
  observationText,
  outcomeText,
  partText,
  remarksOn,
  titleText
} from './table-words.ts'

/** What a page of decision tables is made of. */
export interface TablesPage {
  readonly tree: Tree
  readonly tables: readonly Table[]
  readonly words: Words
  readonly sources: SourceLedger
  /** Of the office, for the numbers at the foot. */
  readonly country: string | undefined
  readonly today: Date
}

/** Decision tables as one whole HTML page that needs no other file, for reading and for printing. */
export function tablesHtml(page: TablesPage): string {
  const { words, tree } = page
  const title = words.t(`${tree.id}:title`)
  return `<!doctype html>
<html lang="${words.tag}" dir="${directionOf(words.tag)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
${renderToString(<title>{title}</title>)}
<style>${TABLE_STYLE}</style>
</head>
<body>${renderToString(<Page {...page} />)}</body>
</html>
`
}

function Page({ tree, tables, words, sources, country, today }: TablesPage) {
  const cited = [...new Set(tables.flatMap(({ rows }) => rows.flatMap(row => row.because)))]
  return (
    <main>
      <h1>{words.t(`${tree.id}:title`)}</h1>
      <p class="standing">{standingLines(words, tree, today).join(' · ')}</p>
      <p>{words.t('ui:table.one-row')}</p>
      <p>{words.t('ui:table.measures')}</p>
      <p>{words.t('ui:table.effective')}</p>
      {tables.map((table, i) => (
        <TableSection key={i} {...{ tree, table, words, cited }} at={i + 1} />
      ))}
      <h2>{words.t('ui:sources')}</h2>
      <ol>
        {cited.map((id, i) => (
          <li key={id} id={`source-${i + 1}`}>
            {citedText(sources, id)}
          </li>
        ))}
      </ol>
      <footer>
        <p>{words.t('ui:education')}</p>
        {footNumbers(words, country).map(({ name, phone }) => (
          <p key={name}>
            <strong>{name}:</strong> {phone}
          </p>
        ))}
      </footer>
    </main>
  )
}

function TableSection({
  tree,
  table,
  words,
  cited,
  at
}: {
  tree: Tree
  table: Table
  words: Words
  cited: readonly string[]
  at: number
}) {
  const { inputs, rows } = table
  const heading = `table-${at}`
  const said = cellReader(words)
  const outcomes = table.outputs.map((_, level) => outcomeText(words, tree, table, level))
  return (
    <section aria-labelledby={heading}>
      <h2 id={heading}>{titleText(words, table)}</h2>
      {remarksOn(words, table).map(remark => (
        <p key={remark}>{remark}</p>
      ))}
      <table aria-labelledby={heading}>
        <thead>
          <tr>
            <th scope="col" rowSpan={2}>
              {words.t('ui:table.row')}
            </th>
            {groupsOf(inputs).map(({ observation, width }) => (
              <th key={observation} scope="colgroup" colSpan={width}>
                {observationText(words, observation)}
              </th>
            ))}
            <th scope="col" rowSpan={2}>
              {words.t('ui:table.outcome')}
            </th>
            <th scope="col" rowSpan={2}>
              {words.t('ui:table.rests-on')}
            </th>
          </tr>
          <tr>
            {inputs.map((input, i) => (
              <th key={i} scope="col" class="part">
                {partText(words, input) ?? observationText(words, input.observation)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ cells, level, because }, i) => (
            <tr key={i}>
              <th scope="row">{i + 1}</th>
              {inputs.map((input, column) => (
                <td key={column} class={cells[column] === null ? 'any' : undefined}>
                  {said(input, cells[column] ?? null)}
                </td>
              ))}
              <td class="outcome">{outcomes[level]}</td>
              <td>{because.map(id => cited.indexOf(id) + 1).join(', ')}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}

/** Neighbouring inputs of one observation stand under one head. */
function groupsOf(inputs: readonly Input[]) {
  const groups: { observation: string; width: number }[] = []
  for (const { observation } of inputs) {
    const last = groups.at(-1)
    if (last?.observation === observation) last.width++
    else groups.push({ observation, width: 1 })
  }
  return groups
}
