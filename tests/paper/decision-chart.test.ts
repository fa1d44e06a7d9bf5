import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { validateXML } from 'xmllint-wasm'
import { keyOf } from '../../src/key/key.ts'
import type { DrawnItem } from '../../src/paper/decision/items.ts'
import type { Point } from '../../src/paper/decision/panel.ts'
import {
  type DecisionChart,
  type DecisionPage,
  decisionChart,
  decisionFiles,
  PAPER_POINTS
} from '../../src/paper/decision/sheet.tsx'
import { goesText } from '../../src/paper/key-lines.ts'
import { PAPERS, type Paper } from '../../src/paper/paper-page.ts'
import type { SheetOf } from '../../src/paper/verdict-sheet.tsx'
import type { Tree } from '../../src/tree/tree.ts'
import { createWords } from '../../src/words/words.ts'
import { openShipped } from '../helpers/shipped.ts'

const { loaded, office } = await openShipped()
const { trees, words: texts, sources, pictures, lookAlikes, knowHow } = loaded

const sheetFor = (tree: Tree, language: string, paper: Paper): SheetOf => ({
  tree,
  language,
  texts,
  sources,
  office,
  home: 'https://jarside.larkspur.example/',
  today: new Date('2026-11-25T12:00:00Z'),
  paper,
  print: 'standard',
  pictures,
  lookAlikes,
  knowHow,
  drawings: {},
  style: ''
})

const chartOf = (tree: Tree, language: string, paper: Paper): DecisionChart =>
  decisionChart(sheetFor(tree, language, paper), createWords(texts, language))

const treeNamed = (id: string): Tree => {
  const tree = trees.find(each => each.id === id)
  if (tree === undefined) throw new Error(`no tree ${id}`)
  return tree
}

interface Rect {
  readonly name: string
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

const overlap = (one: Rect, other: Rect, slack = 0.1): boolean =>
  one.x + one.width > other.x + slack &&
  other.x + other.width > one.x + slack &&
  one.y + one.height > other.y + slack &&
  other.y + other.height > one.y + slack

const pairsThat = (rects: readonly Rect[], isSo: (one: Rect, other: Rect) => boolean) =>
  rects.flatMap((one, index) =>
    rects
      .slice(index + 1)
      .flatMap(other => (isSo(one, other) ? [`${one.name} / ${other.name}`] : []))
  )

/** A part with all that stands out of it. */
function rectOf(
  name: string,
  x: number,
  y: number,
  part: { width: number; height: number; items: readonly DrawnItem[] }
): Rect {
  const left = Math.min(0, ...part.items.map(item => item.x))
  const right = Math.max(part.width, ...part.items.map(item => item.x + item.width))
  const bottom = Math.max(part.height, ...part.items.map(item => item.y + item.height))
  return { name, x: x + left, y, width: right - left, height: bottom }
}

const boxesOn = ({ panels }: DecisionPage) =>
  panels.flatMap(({ x, y, panel }) =>
    panel.boxes.map(each => ({ ...each, x: each.x + x, y: each.y + y }))
  )
const waysOn = ({ panels }: DecisionPage) =>
  panels.flatMap(({ x, y, panel }) =>
    panel.ways.map(way => ({
      ...way,
      plate: way.plate && { ...way.plate, x: way.plate.x + x, y: way.plate.y + y },
      lines: way.lines.map(line => line.map(point => ({ x: point.x + x, y: point.y + y })))
    }))
  )

/** Everything of a page that text stands in. */
const rectsOn = (page: DecisionPage): readonly Rect[] => [
  ...page.parts.map(({ x, y, part }, index) => rectOf(`part ${index}`, x, y, part)),
  ...boxesOn(page).map(({ x, y, part, box }) => rectOf(`box ${box.lead.number}`, x, y, part)),
  ...waysOn(page).flatMap(({ from, to, plate }) =>
    plate === null ? [] : [rectOf(`answer ${from}-${to}`, plate.x, plate.y, plate.part)]
  )
]

const partsOn = (page: DecisionPage) => [
  ...page.parts,
  ...boxesOn(page),
  ...waysOn(page).flatMap(({ plate }) => (plate === null ? [] : [plate]))
]

const segmentsOf = (line: readonly Point[]) =>
  line.slice(1).map((end, index) => ({ start: line[index] ?? end, end }))

/** Every line of a page as thin rectangles. */
const strokesOn = (page: DecisionPage) =>
  waysOn(page).flatMap(({ from, to, lines }, place) =>
    lines.flatMap((line, half) =>
      segmentsOf(line).map(({ start, end }) => ({
        name: `${from}-${to}`,
        from,
        to,
        way: `${place}`,
        half,
        x: Math.min(start.x, end.x),
        y: Math.min(start.y, end.y),
        width: Math.abs(start.x - end.x),
        height: Math.abs(start.y - end.y)
      }))
    )
  )

/** Where two lines run on one another, and not only across. */
function runTogether(one: Rect, other: Rect): boolean {
  const isFlat = (rect: Rect) => rect.height < 0.01
  if (isFlat(one) !== isFlat(other)) return false
  const [along, start, side] = isFlat(one)
    ? (['width', 'x', 'y'] as const)
    : (['height', 'y', 'x'] as const)
  if (Math.abs(one[side] - other[side]) > 1.5) return false
  const shared =
    Math.min(one[start] + one[along], other[start] + other[along]) -
    Math.max(one[start], other[start])
  return shared > 0.5
}

const charts = new Map(trees.map(tree => [tree.id, chartOf(tree, 'en', 'letter')]))

describe.each(trees.map(tree => [tree.id, tree] as const))('the chart of %s', (id, tree) => {
  const chart = charts.get(id) ?? chartOf(tree, 'en', 'letter')
  const { words, remarks } = chart.terms
  const key = keyOf(tree)
  const boxes = chart.pages.flatMap(page => boxesOn(page).map(each => ({ ...each, page })))

  test('has every lead of the key on it once, in order', () => {
    expect(boxes.map(({ box }) => box.lead.number)).toEqual(key.leads.map(({ number }) => number))
    for (const { box, part } of boxes) {
      const said = part.items.flatMap(item => (item.kind === 'text' ? [item.text] : []))
      expect(said[0]).toBe(`${box.lead.number}`)
    }
  })

  test('has each way on, and all that is taken on it, of every lead', () => {
    for (const { box } of boxes) {
      const { lead, marks, exits } = box
      const isBeside = (turn: { when: { kind: string }; goes: object }) =>
        'stop' in turn.goes && turn.when.kind === 'sign'
      const onward = lead.turns.filter(turn => !isBeside(turn))
      const said = (list: readonly unknown[]) =>
        [...new Set(list.map(each => JSON.stringify(each)))].sort()
      expect(said(exits.map(({ goes }) => goes))).toEqual(said(onward.map(({ goes }) => goes)))
      const ended = (sheets: readonly string[], goes: object) =>
        'end' in goes && typeof goes.end === 'string' && !sheets.includes(goes.end)
          ? [...sheets, goes.end]
          : sheets
      expect(
        said(
          exits.flatMap(({ goes, lines }) =>
            lines.flatMap(({ takes, labels }) =>
              labels.map(({ notes }) => ({ goes, ...takes, notes }))
            )
          )
        )
      ).toEqual(
        said(
          onward.map(({ goes, takes: { sheets, use, notes } }) => ({
            goes,
            sheets: ended(sheets, goes),
            use,
            notes
          }))
        )
      )
      expect(
        said(marks.flatMap(({ takes, labels }) => labels.map(({ notes }) => ({ ...takes, notes }))))
      ).toEqual(
        said(
          lead.rows
            .map(({ takes }) => takes)
            .map(({ sheets, use, notes }) => ({ sheets, use, notes }))
        )
      )
      expect(marks.filter(({ stops }) => stops).length > 0).toBe(lead.turns.some(isBeside))
    }
  })

  test('leads along every line to a box of its page, and by every tag to the page of its box', () => {
    const pageOf = new Map(boxes.map(({ box, page }) => [box.lead.number, page.number]))
    for (const { box, page, part } of boxes) {
      const drawn = waysOn(page).filter(({ from }) => from === box.lead.number)
      for (const { to, lines } of drawn) {
        const target = boxesOn(page).find(each => each.box.lead.number === to)
        const end = lines.at(-1)?.at(-1)
        expect(end?.y).toBeCloseTo(target?.y ?? Number.NaN)
        expect(end?.x).toBeCloseTo((target?.x ?? Number.NaN) + (target?.part.width ?? 0) / 2)
      }
      const white = part.items.flatMap(item =>
        item.kind === 'text' && item.white ? [item.text.trim()] : []
      )
      const tags = white.slice(1).join(' ').replace(/ +/g, ' ')
      const leaving = box.exits.filter(exit => !drawn.some(way => way.exit === exit))
      expect(drawn.length + leaving.length).toBe(box.exits.length)
      for (const { goes } of leaving) {
        const text = goesText(words, goes)
        const target = 'to' in goes ? pageOf.get(goes.to) : page.number
        expect(target).toBeDefined()
        const on = words.t('ui:decision-chart.page', { number: target ?? 0 })
        const parted = 'to' in goes && goes.as !== undefined ? ' ' : ' · '
        const whole = target === page.number ? text : `${text}${parted}${on}`
        expect([whole, tags.replaceAll(' · ', parted).includes(whole)]).toEqual([whole, true])
      }
    }
  })

  test('names with every number of a remark a remark that it has', () => {
    const noted = key.leads.flatMap(({ rows, turns }) =>
      [...rows, ...turns].flatMap(({ takes }) => takes.notes)
    )
    expect(new Set(remarks)).toEqual(new Set(noted))
    const last = chart.pages.flatMap(({ parts }) => parts).flatMap(({ part }) => part.items)
    const said = new Set(last.flatMap(item => (item.kind === 'text' ? [item.text] : [])))
    for (const index of remarks.keys()) expect(said).toContain(`${index + 1}`)
  })
})

const LOOKED_AT = [
  ...trees.map(({ id }) => [id, 'en', 'letter'] as const),
  ['kombucha-jar', 'es', 'letter'] as const,
  ['outside-this-tool', 'es', 'a4'] as const,
  ['sourdough-starter', 'es', 'tabloid'] as const,
  ['outside-this-tool', 'en', 'a3'] as const,
  ['outside-this-tool', 'ar', 'letter'] as const,
  ['outside-this-tool', 'vi', 'letter'] as const,
  ['outside-this-tool', 'zh', 'letter'] as const
]

describe.each(LOOKED_AT)('the drawing of %s in %s on %s', (id, language, paper) => {
  const english = language === 'en' && paper === 'letter' ? charts.get(id) : undefined
  const chart = english ?? chartOf(treeNamed(id), language, paper)
  const { pages, size, scale } = chart

  test('lays no box, answer or other text on another', () => {
    for (const page of pages) {
      expect([page.number, ...pairsThat(rectsOn(page), overlap)]).toEqual([page.number])
      for (const { part } of partsOn(page)) {
        const set = part.items.flatMap(({ kind, ...rect }) =>
          kind === 'text' || kind === 'swatch'
            ? [{ ...rect, name: 'text' in rect ? rect.text : kind }]
            : []
        )
        // Lines may touch: what is measured is from one to the next.
        expect(pairsThat(set, (one, other) => overlap(one, other, 0.3))).toEqual([])
      }
    }
  })

  test('keeps every text within what it stands in, and everything within the page', () => {
    for (const page of pages) {
      for (const { part } of partsOn(page)) {
        const out = part.items.filter(
          ({ kind, x, y, width, height }) =>
            x < -0.01 ||
            y < -0.01 ||
            y + height > part.height + 0.5 ||
            (kind === 'text' && x + width > part.width + 4)
        )
        expect(out).toEqual([])
      }
      const strokes = strokesOn(page)
      for (const { name, x, y, width, height } of [...rectsOn(page), ...strokes]) {
        const isWithin =
          x >= 18 / scale &&
          y >= 18 / scale &&
          x + width <= size.width - 18 / scale &&
          y + height <= size.height - 18 / scale
        expect([page.number, name, isWithin]).toEqual([page.number, name, true])
      }
    }
  })

  test('draws no line across a text, and none along another that goes elsewhere', () => {
    for (const page of pages) {
      const rects = rectsOn(page)
      const strokes = strokesOn(page)
      const crossing = strokes.flatMap(stroke =>
        rects
          .filter(rect => overlap(stroke, rect, 0.2))
          .map(({ name }) => `${stroke.name} on ${name}`)
      )
      expect([page.number, ...crossing]).toEqual([page.number])
      const along = strokes.flatMap((one, index) =>
        strokes
          .slice(index + 1)
          .filter(
            other =>
              one.way !== other.way &&
              one.from !== other.from &&
              one.to !== other.to &&
              runTogether(one, other)
          )
          .map(other => `${one.name} along ${other.name}`)
      )
      expect([page.number, ...along]).toEqual([page.number])
    }
  })

  test('is set in 9 points or more', () => {
    const sizes = pages.flatMap(page =>
      partsOn(page).flatMap(({ part }) =>
        part.items.flatMap(item => (item.kind === 'text' ? [item.type.size * scale] : []))
      )
    )
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(9)
  })
})

test('a number that is dialed keeps its own order in a language that runs from the right', () => {
  const { pages } = chartOf(treeNamed('outside-this-tool'), 'ar', 'letter')
  for (const page of pages) {
    const lines = partsOn(page).flatMap(({ part }) =>
      part.items.flatMap(item => (item.kind === 'text' ? [item.text] : []))
    )
    const numbers = lines.filter(line => line.includes('1-800-222-1222'))
    expect(numbers.length).toBeGreaterThan(0)
    for (const line of numbers) expect(line).toContain('\u20661-800-222-1222\u2069')
    // What is opened on a line is closed on it.
    for (const line of lines) {
      expect(line.match(/[\u2066-\u2068]/g)?.length).toBe(line.match(/\u2069/g)?.length)
    }
  }
})

describe('the files of a chart', () => {
  const tree = treeNamed('outside-this-tool')
  const schema = readFileSync(join(import.meta.dirname, 'drawing.rng'), 'utf8')
  const faultsIn = async (svg: string) => {
    const { errors } = await validateXML({
      xml: [{ fileName: 'chart.svg', contents: svg }],
      schema: [{ fileName: 'drawing.rng', contents: schema }],
      extension: 'relaxng'
    })
    return errors.map(({ message }) => message)
  }

  const files = PAPERS.map(paper => [paper, decisionFiles(sheetFor(tree, 'en', paper))] as const)

  test('are the same bytes from the same input', () => {
    expect([files[0]?.[0], decisionFiles(sheetFor(tree, 'en', 'letter'))]).toEqual(files[0])
  })

  test('are a valid SVG with a title and a description for each page', async () => {
    const { svg, html } = decisionFiles(sheetFor(tree, 'es', 'letter'))
    expect(await faultsIn(svg)).toEqual([])
    expect(await faultsIn(svg.replace('<rect ', '<rect colour="red" '))).not.toEqual([])
    const pages = html.match(/class="decision-page"/g)?.length ?? 0
    expect(pages).toBeGreaterThan(2)
    expect(svg.match(/<title id="decision-/g)?.length).toBe(pages)
    expect(svg.match(/<desc id="decision-/g)?.length).toBe(pages)
  })

  test.each(files)('have pages of %s', (paper, { html }) => {
    const { width, height } = PAPER_POINTS[paper]
    const pages = html.match(/class="decision-page" width="[\d.]+pt" height="[\d.]+pt"/g) ?? []
    expect(new Set(pages)).toEqual(
      new Set([`class="decision-page" width="${width}pt" height="${height}pt"`])
    )
  })
})
