import type { Lead } from '../../key/key.ts'
import { at } from '../../tree/must.ts'
import { askKey } from '../../words/ask-key.ts'
import { goesText } from '../key-lines.ts'
import { isMirrored, textWidth, wrapText } from '../text-width.ts'
import type { DecisionBox, DecisionExit, MarkedLines } from './boxes.ts'
import { boxed, Column, type DecisionTerms, type DrawnPart, TYPES } from './items.ts'
import { addLines, addTag } from './marks.ts'

export const BOX_WIDTH = 164
/** Tags stand out over the edge of their box by as much. */
export const OVERHANG = 6
const PAD = 6
const PLATE_WIDTH = 124

/** What a box says of a way on that no line is drawn for. */
export type WhereTo = (exit: DecisionExit) => { readonly page: number | null }

/** The parts of a chart, each set once for as long as it is known where its ways on lead. */
export interface PartSource {
  /** `high`: what would be higher is set in two columns, or in three. */
  box(box: DecisionBox, leaving: readonly DecisionExit[], high: number): DrawnPart
  /** Null where nothing has to be said. */
  plate(exit: DecisionExit): DrawnPart | null
}

export function partSource(where: WhereTo, terms: DecisionTerms): PartSource {
  const boxes = new Map<string, DrawnPart>()
  const plates = new Map<DecisionExit, DrawnPart | null>()
  const cells = new Map<MarkedLines | DecisionExit, DrawnPart>()
  const cell = (of: MarkedLines | DecisionExit): DrawnPart => {
    const part =
      cells.get(of) ??
      ('goes' in of ? exitCell(of, where, terms) : cellOf([of], null, terms)).part(BOX_WIDTH)
    cells.set(of, part)
    return part
  }
  const heads = new Map<string, DrawnPart>()
  const head = (lead: Lead, width: number): DrawnPart => {
    const name = `${lead.number} ${width}`
    const part = heads.get(name) ?? headOf(lead, width, terms).part(width)
    heads.set(name, part)
    return part
  }
  return {
    box(box, leaving, high) {
      const name = [box.lead.number, high, ...leaving.map(exit => box.exits.indexOf(exit))].join(
        ' '
      )
      const part =
        boxes.get(name) ??
        boxPart([...box.marks, ...leaving].map(cell), high, {
          tag: terms.words.tag,
          head: width => head(box.lead, width)
        })
      boxes.set(name, part)
      return part
    },
    plate(exit) {
      const earlier = plates.get(exit)
      const part = earlier === undefined ? platePart(exit, terms) : earlier
      plates.set(exit, part)
      return part
    }
  }
}

interface BoxTerms {
  readonly tag: string
  head(width: number): DrawnPart
}

/** A box with its question, its marks, and the ways on that leave the drawing there. */
function boxPart(cells: readonly DrawnPart[], high: number, terms: BoxTerms): DrawnPart {
  const most = Math.max(1, Math.min(3, cells.length))
  const least = cells.reduce((sum, { height }) => sum + height, 0) / high
  const counts = [1, 2, 3].filter(count => count <= most && (count === most || count > least - 1))
  const parts = counts.map(count => columnsPart(cells, count, terms))
  return parts.find(({ height }) => height <= high) ?? at(parts, parts.length - 1)
}

function cellOf(lines: readonly MarkedLines[], letter: string | null, terms: DecisionTerms) {
  const column = new Column(terms.words.tag, 3)
  addLines(column, lines, { x: PAD, width: BOX_WIDTH - 2 * PAD, letter }, terms)
  return column
}

function exitCell(exit: DecisionExit, where: WhereTo, terms: DecisionTerms) {
  const column = cellOf(exit.lines, exit.letter, terms)
  column.y += 1.5
  addTag(column, tagLines(exit, where, terms), shapeOf(exit), BOX_WIDTH + OVERHANG, terms)
  return column
}

/** The head of a box over its cells in so many columns. */
function columnsPart(
  cells: readonly DrawnPart[],
  count: number,
  { tag, head }: BoxTerms
): DrawnPart {
  const width = count * BOX_WIDTH + (count - 1) * BETWEEN_COLUMNS
  const { items, height } = head(width)
  const column = new Column(tag)
  for (const item of items) column.add(item)
  const top = height + 3
  let bottom = top + 1
  if (cells.length > 0) column.add({ kind: 'rule', x: 0, y: top, width, height: 0 })
  const heights = cells.map(cell => cell.height + 3)
  inColumns(heights, count).forEach((indexes, place) => {
    const x = place * (BOX_WIDTH + BETWEEN_COLUMNS)
    let y = top
    for (const index of indexes) {
      const cell = at(cells, index)
      if (y > top) column.add({ kind: 'rule', x, y, width: BOX_WIDTH, height: 0 })
      for (const item of cell.items) column.add({ ...item, x: item.x + x, y: item.y + y })
      y += cell.height + 3
    }
    bottom = Math.max(bottom, y)
  })
  column.y = bottom + 1
  return column.part(width)
}

/** Beyond what a tag stands out, so that it touches nothing. */
const BETWEEN_COLUMNS = 2 * OVERHANG + 2

/** Cells by their heights in so many columns, in order, the highest as low as can be. */
function inColumns(heights: readonly number[], count: number): readonly (readonly number[])[] {
  const filled = (limit: number) => {
    const columns: number[][] = [[]]
    let y = 0
    heights.forEach((height, index) => {
      if (y + height > limit && y > 0) {
        columns.push([])
        y = 0
      }
      columns.at(-1)?.push(index)
      y += height
    })
    return columns
  }
  const all = heights.reduce((sum, height) => sum + height, 0)
  let limit = all / count
  while (filled(limit).length > count) limit += 1
  return filled(limit)
}

/** The number of a box, where it is come to from, and what it asks. */
function headOf(
  { number, observation, from, lookBack, onlyIfSo }: Lead,
  wide: number,
  terms: DecisionTerms
) {
  const { words, tree } = terms
  const column = new Column(words.tag)
  const digits = textWidth(`${number}`, TYPES.number, words.tag)
  const tab = Math.max(24, digits + 13)
  const about = tree.observations[observation]?.about ?? 'batch'
  column.add({ kind: 'tab', about, x: 0, y: 0, width: tab, height: 17 })
  column.add({
    kind: 'text',
    x: (tab - digits) / 2,
    y: 1.7,
    width: digits,
    ...boxed(`${number}`, TYPES.number),
    white: true
  })
  column.y = 3.5
  if (from.length > 0) {
    const text = words.t('ui:key.from', { leads: from.join(', ') })
    column.text(text, tab + 6, wide - tab - 6 - PAD, TYPES.small)
  }
  column.y = Math.max(column.y, 17) + 3
  const ask = words.t(askKey(words, observation, false))
  const asked = lookBack === null ? ask : words.t('ui:key.look-back', { lead: lookBack, ask })
  column.text(asked, PAD, wide - 2 * PAD, TYPES.ask)
  if (onlyIfSo) column.text(words.t('ui:key.only-if-so'), PAD, wide - 2 * PAD, TYPES.small)
  return column
}

const shapeOf = ({ goes }: DecisionExit) =>
  'to' in goes ? (goes.as === undefined ? 'on' : 'back') : 'end'

/** No chart has a hundred pages: the lines of a tag are broken before its page is known. */
const WIDEST_PAGE = 88

function tagLines(exit: DecisionExit, where: WhereTo, { words }: DecisionTerms): readonly string[] {
  const { goes } = exit
  const width = BOX_WIDTH - 16
  const text =
    'to' in goes
      ? `${isMirrored(words.tag) ? '←' : '→'} ${goesText(words, goes)}`
      : goesText(words, goes)
  if (!('to' in goes)) return wrapText(text, width, TYPES.mark, words.tag)
  const { page } = where(exit)
  const on = (number: number) => words.t('ui:decision-chart.page', { number })
  const isOneLine = textWidth(`${text} · ${on(WIDEST_PAGE)}`, TYPES.mark, words.tag) <= width
  const lines = wrapText(text, width, TYPES.mark, words.tag)
  if (isOneLine) return [page === null ? text : `${text} · ${on(page)}`]
  return [...lines, page === null ? ' ' : on(page)]
}

/** The answers on a line that is drawn; null where nothing has to be said. */
function platePart(exit: DecisionExit, terms: DecisionTerms): DrawnPart | null {
  const column = new Column(terms.words.tag, 2)
  const width = addLines(
    column,
    exit.lines,
    { x: 4, width: PLATE_WIDTH, letter: exit.letter },
    terms
  )
  if (width === 0) return null
  column.y += 3
  return column.part(width + 8)
}
