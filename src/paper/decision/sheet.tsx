import { renderToString } from 'preact-render-to-string'
import { addressOf } from '../../addresses/route.ts'
import { keyOf } from '../../key/key.ts'
import { speechIn } from '../../opening/speech.ts'
import { Qr } from '../../parts/qr.tsx'
import type { Words } from '../../words/words.ts'
import { remarksOf } from '../key-codes.ts'
import { escaped, type Paper, paperPage } from '../paper-page.ts'
import { isMirrored } from '../text-width.ts'
import type { SheetOf } from '../verdict-sheet.tsx'
import { decisionBoxes } from './boxes.ts'
import { DecisionPatterns, type DrawingFrame, Items, Panels } from './drawing.tsx'
import {
  CODE,
  type FrameTerms,
  footPart,
  headPart,
  legendPart,
  remarkParts,
  titleOf
} from './frame.ts'
import { Column, lineHeight, TYPES } from './items.ts'
import { decisionPages, type PlacedPanel } from './pages.ts'
import type { PlacedPart } from './panel.ts'

/** In points: ANSI/ASME Y14.1 and ISO 216, upright. */
export const PAPER_POINTS: Readonly<Record<Paper, { width: number; height: number }>> = {
  letter: { width: 612, height: 792 },
  a4: { width: 595.28, height: 841.89 },
  tabloid: { width: 792, height: 1224 },
  a3: { width: 841.89, height: 1190.55 }
}

/** On a wall it is read from further away. */
const SCALES: Readonly<Record<Paper, number>> = { letter: 1, a4: 1, tabloid: 1.2, a3: 1.2 }

/** What a printer may leave white, with a little to hold it by. */
const MARGIN = 27

/** One page of a chart, in points before it is scaled to its paper. */
export interface DecisionPage {
  readonly panels: readonly PlacedPanel[]
  readonly parts: readonly PlacedPart[]
  readonly number: number
  readonly of: number
}

/** A chart in one language, laid out. */
export interface DecisionChart {
  readonly terms: FrameTerms
  readonly pages: readonly DecisionPage[]
  readonly scale: number
  /** Of a page, before it is scaled. */
  readonly size: { readonly width: number; readonly height: number }
}

/** Lays out the key of a tree as a chart in one language. */
export function decisionChart(sheet: SheetOf, words: Words): DecisionChart {
  const { tree, paper, office, sources, today, home } = sheet
  const scale = SCALES[paper]
  const points = PAPER_POINTS[paper]
  const size = { width: points.width / scale, height: points.height / scale }
  const margin = MARGIN / scale
  const width = size.width - 2 * margin
  const key = keyOf(tree)
  const terms: FrameTerms = {
    tree,
    words,
    remarks: remarksOf(key.leads),
    office,
    sources,
    today,
    width,
    address: home + addressOf(tree.id, words.tag)
  }
  const legend = legendPart(terms)
  // Their heights do not depend on how many pages there are: no number has more digits than this.
  const heads = [1, 2].map(number => headPart({ number, of: 88 }, terms).height)
  const feet = [1, 2].map(number => footPart(number, terms).height)
  const roomOn = (page: number) => {
    const around =
      page === 0
        ? (heads[0] ?? 0) + (feet[0] ?? 0) + legend.height
        : (heads[1] ?? 0) + (feet[1] ?? 0)
    return { width, height: size.height - 2 * margin - around }
  }
  const drawn = decisionPages(decisionBoxes(words, key), roomOn, terms)
  const written = remarkPages(terms, roomOn(1))
  const of = drawn.length + written.length
  const pages = [...drawn.map(panels => ({ panels, parts: [] })), ...written].map(
    ({ panels, parts }, index): DecisionPage => {
      const number = index + 1
      const head = headPart({ number, of }, terms)
      const foot = footPart(number, terms)
      const top = margin + head.height + (number === 1 ? legend.height : 0)
      return {
        number,
        of,
        panels: panels.map(({ x, y, panel }) => ({ x: x + margin, y: y + top, panel })),
        parts: [
          { x: margin, y: margin, part: head },
          ...(number === 1 ? [{ x: margin, y: margin + head.height, part: legend }] : []),
          ...parts.map(({ x, y, part }) => ({ x: x + margin, y: y + top, part })),
          { x: margin, y: size.height - margin - foot.height, part: foot }
        ]
      }
    }
  )
  return { terms, pages, scale, size }
}

type Loose = Pick<DecisionPage, 'panels' | 'parts'>

/** What the leads have to say besides, once each, in three columns behind the boxes. */
function remarkPages(terms: FrameTerms, room: { width: number; height: number }): readonly Loose[] {
  if (terms.remarks.length === 0) return []
  const gap = 14
  const wide = (room.width - 2 * gap) / 3
  const title = new Column(terms.words.tag)
  title.text(terms.words.t('ui:key.remarks'), 0, wide, TYPES.number)
  const top = lineHeight(TYPES.number) + 6
  const pages: { panels: readonly PlacedPanel[]; parts: PlacedPart[] }[] = []
  let place = 3
  let y = room.height
  for (const part of remarkParts(terms, wide)) {
    if (y + part.height > room.height) {
      place += 1
      y = top
    }
    if (place > 2) {
      pages.push({ panels: [], parts: [{ x: 0, y: 0, part: title.part(wide) }] })
      place = 0
    }
    pages.at(-1)?.parts.push({ x: place * (wide + gap), y, part })
    y += part.height
  }
  return pages
}

/** The typefaces of every language; Vietnamese has its letters whole in one of its own alone. */
const FACES =
  "'Atkinson Hyperlegible Next', 'Noto Sans Arabic', 'Noto Sans SC Cut', 'Segoe UI', system-ui, sans-serif"
const FACES_OF: Readonly<Record<string, string>> = {
  vi: "'Noto Sans', 'Noto Sans Vietnamese', system-ui, sans-serif"
}

/** What a drawing says of itself to whoever does not see it. */
const aboutIn = (words: Words) => `${words.t('ui:key.how.begin')} ${words.t('ui:key.how.take')}`

function PageDrawing({ chart, page }: { chart: DecisionChart; page: DecisionPage }) {
  const { terms, size, scale } = chart
  const { words, tree, address } = terms
  const frame: DrawingFrame = { tree, width: size.width, mirrored: isMirrored(words.tag) }
  const id = `decision-${words.tag}-${page.number}`
  const code = frame.mirrored ? MARGIN / scale : size.width - MARGIN / scale - CODE
  return (
    <svg
      xmlns="http://www.w3.org/2000/svg"
      class="decision-page"
      width={`${Number((size.width * scale).toFixed(2))}pt`}
      height={`${Number((size.height * scale).toFixed(2))}pt`}
      viewBox={`0 0 ${Number(size.width.toFixed(2))} ${Number(size.height.toFixed(2))}`}
      aria-labelledby={`${id}-title ${id}-about`}
      lang={words.tag}
      direction={frame.mirrored ? 'rtl' : 'ltr'}
      font-family={FACES_OF[words.tag] ?? FACES}
    >
      <title id={`${id}-title`}>
        {`${titleOf(terms)} · ${words.t('ui:decision-chart.page-of', { number: page.number, of: page.of })}`}
      </title>
      <desc id={`${id}-about`}>{aboutIn(words)}</desc>
      {page.number === 1 && (
        <svg x={code} y={MARGIN / scale} width={CODE} height={CODE}>
          <title>{words.t('ui:sheet.scan')}</title>
          <Qr text={address} label={words.t('ui:sheet.scan')} />
        </svg>
      )}
      {page.parts.map(({ x, y, part }, index) => (
        <Items key={index} items={part.items} x={x} y={y} frame={frame} />
      ))}
      <Panels panels={page.panels} frame={frame} />
    </svg>
  )
}

/** A chart as files: a page for a printer, and one drawing of all its pages, one below another. */
export interface DecisionFiles {
  readonly html: string
  readonly svg: string
}

/** The chart of a tree in its language and, where that is a draft, in English behind it. */
export function decisionFiles(sheet: SheetOf): DecisionFiles {
  const { words, second } = speechIn(sheet.texts, sheet.language)
  const languages = second === null ? [words] : [words, second.words]
  const charts = languages.map(each => decisionChart(sheet, each))
  const drawings = charts.flatMap(chart =>
    chart.pages.map(page => ({
      chart,
      html: renderToString(<PageDrawing chart={chart} page={page} />)
    }))
  )
  const title = `${words.t('ui:decision-chart.title')} · ${words.t(`${sheet.tree.id}:title`)}`
  const patterns = renderToString(<DecisionPatterns />)
  const body = `<svg class="decision-patterns" aria-hidden="true">${patterns}</svg>${drawings.map(({ html }) => html).join('')}`
  return {
    html: paperPage({ ...sheet, title, language: sheet.language, body }),
    svg: svgFile(sheet, { title, about: aboutIn(words) }, [
      patterns,
      ...drawings.map(({ html }) => html)
    ])
  }
}

const GAP = 18

function svgFile(
  { style, paper, language }: SheetOf,
  { title, about }: { title: string; about: string },
  [patterns = '', ...drawings]: readonly string[]
): string {
  const { width, height } = PAPER_POINTS[paper]
  const all = drawings.length * (height + GAP) - GAP
  const faces = (style.match(/@font-face \{[^}]*\}/g) ?? []).filter(
    face => !face.includes('"Literata')
  )
  const pages = drawings.map(
    (drawing, index) =>
      `<g transform="translate(0 ${index * (height + GAP)})">${inPoints(drawing)}</g>`
  )
  return `<?xml version="1.0" encoding="UTF-8"?>
<svg xmlns="http://www.w3.org/2000/svg" width="${width}pt" height="${all}pt" viewBox="0 0 ${width} ${all}" lang="${language}">
<title>${escaped(title)}</title>
<desc>${escaped(about)}</desc>
<style>${faces.join('\n')}</style>
<rect width="${width}" height="${all}" fill="#fff"/>
${patterns}
${pages.join('\n')}
</svg>
`
}

/** Inside a drawing that counts in points, a page has its size without the unit. */
const inPoints = (drawing: string) => drawing.replace(/ (width|height)="([\d.]+)pt"/g, ' $1="$2"')
