import type { Among, Cell, Input, Table, Within } from '../tables/table.ts'
import { must } from '../tree/must.ts'
import type { Range } from '../tree/observation.ts'
import type { Tree } from '../tree/tree.ts'
import type { TextKey } from '../words/text-key.ts'
import { answerLabel } from '../words/tree-texts.ts'
import { verdictText } from '../words/verdict-text.ts'
import type { Words } from '../words/words.ts'

/** What is asked, in a word or two where the authors wrote them. */
export function observationText(words: Words, observation: string): string {
  const short: TextKey = `ui:short.${observation}`
  return words.has(short) ? words.t(short) : observation
}

/** What an input is of its observation: a sign, an end of a measure; null for a choice. */
export function partText(words: Words, input: Input): string | null {
  switch (input.kind) {
    case 'choice':
      return null
    case 'sign':
      return answerLabel(words, input.observation, String(input.sign))
    case 'told':
      return words.t('ui:table.told')
    case 'number':
      return words.t(`ui:table.${input.end}`)
  }
}

/** The head of an input's column by itself. */
export function headText(words: Words, input: Input): string {
  return [observationText(words, input.observation), partText(words, input)]
    .filter(part => part !== null)
    .join(': ')
}

/** Words cells and keeps what it said: the same few cells stand in thousands of rows. */
export function cellReader(words: Words): (input: Input, cell: Cell) => string {
  const said = new Map<Input, Map<Cell, string>>()
  return (input, cell) => {
    const ofInput = said.get(input) ?? new Map<Cell, string>()
    said.set(input, ofInput)
    const text = ofInput.get(cell) ?? cellText(words, input, cell)
    ofInput.set(cell, text)
    return text
  }
}

/** A cell as somebody reads it: answers by their labels, limits in words. */
export function cellText(words: Words, input: Input, cell: Cell): string {
  if (cell === null) return words.t('ui:table.any')
  if ('within' in cell) return rangeText(words, cell.within)
  if (input.kind === 'number') return words.t('ui:table.any')
  const { values, observation, kind } = input
  const { among } = cell
  const label = (answer: string) =>
    kind === 'choice'
      ? answerLabel(words, observation, answer)
      : words.t(`ui:table.${answer as 'yes' | 'no' | 'unsure' | 'measured'}`)
  const listed = (answers: readonly string[]) =>
    answers.map(label).reduce((some, other) => words.t('ui:table.or', { some, other }))
  const others = values.filter(answer => !among.includes(answer))
  const most = among.length > 2 && others.length > 0 && others.length < among.length
  return most ? words.t('ui:table.all-but', { answers: listed(others) }) : listed(among)
}

/** A part of a measure's line; callers' paper says it in every language, a reviewer's table in two. */
export function rangeText(
  words: Words,
  { atLeast, over, under, atMost }: Range,
  group: 'table' | 'key.range' = 'table'
): string {
  const from =
    atLeast !== undefined
      ? words.t(`ui:${group}.at-least`, { value: atLeast })
      : over !== undefined && words.t(`ui:${group}.over`, { value: over })
  const to =
    atMost !== undefined
      ? words.t(`ui:${group}.at-most`, { value: atMost })
      : under !== undefined && words.t(`ui:${group}.under`, { value: under })
  if (from && to) return words.t(`ui:${group}.between`, { from, to })
  return from || to || words.t('ui:table.any')
}

/** What a row comes to. */
export function outcomeText(words: Words, tree: Tree, { lens, outputs }: Table, level: number) {
  if (typeof lens === 'object') return words.t(`ui:table.${level === 1 ? 'said' : 'not-said'}`)
  const output = must(outputs[level], 'output')
  if (lens === 'use') return words.t(`${tree.id}:use.${output}`)
  return level === 0 ? words.t('ui:table.nothing') : verdictText(words, tree.id, output, 'name')
}

/** What a table is about. */
export function titleText(words: Words, { lens, part }: Table): string {
  const table =
    typeof lens === 'object'
      ? words.t('ui:table.note', { note: words.t(`notes:${lens.note}`) })
      : words.t(`ui:table.${lens}`)
  if (part === null) return table
  return words.t('ui:table.part', { table, number: part.number, parts: part.of })
}

/** What a table speaks of and what it leaves out. */
export function remarksOn(words: Words, { lens, part }: Table): readonly string[] {
  const emergencies = lens === 'person' ? 'with-emergencies' : 'without-emergencies'
  return [
    ...(part === null ? [] : [whereText(words, part.where), words.t('ui:table.together')]),
    words.t(`ui:table.${emergencies}`)
  ]
}

function whereText(
  words: Words,
  where: readonly { readonly input: Input; readonly cell: Among | Within }[]
): string {
  if (where.length === 0) return words.t('ui:table.emergencies')
  const all = where.map(
    ({ input, cell }) => `${headText(words, input)}: ${cellText(words, input, cell)}`
  )
  return words.t('ui:table.where', { where: all.join('; ') })
}
