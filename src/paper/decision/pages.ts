import { must } from '../../tree/must.ts'
import type { DecisionBox, DecisionExit } from './boxes.ts'
import type { DecisionTerms } from './items.ts'
import { type DecisionPanel, panelOf } from './panel.ts'
import { partSource, type WhereTo } from './parts.ts'
import { type DecisionRun, hangsTogether, leastSize, runOf } from './run.ts'

/** Boxes on a page, from the upper left of what the page has room for. */
export interface PlacedPanel {
  readonly x: number
  readonly y: number
  readonly panel: DecisionPanel
}

type Size = Pick<Area, 'width' | 'height'>

interface Area {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

/** Room for the boxes of a page, in points; the first may have less. */
export type RoomOn = (page: number) => { readonly width: number; readonly height: number }

/** Between panels, so that nobody takes them for one. */
const BETWEEN = 14

/** One box more may fit where one less did not: it takes up ways on that had stood in the others. */
const MISSES = 2

/** Boxes of the chart, page by page in the order of their numbers: who hangs together stands together. */
export function decisionPages(
  boxes: readonly DecisionBox[],
  roomOn: RoomOn,
  terms: DecisionTerms
): readonly (readonly PlacedPanel[])[] {
  const runs = runsOf(boxes, terms)
  const pages: (Run & { readonly x: number; readonly y: number })[][] = []
  let next = 0
  while (next < boxes.length) {
    const page: (typeof pages)[number] = []
    const { width, height } = roomOn(pages.length)
    const fill = (area: Area) => {
      const run = next < boxes.length ? runs.longest(next, area) : null
      if (run === null) return
      const panel = runs.panel(run)
      page.push({ ...run, x: area.x, y: area.y })
      next += run.count
      const right = {
        ...area,
        x: area.x + panel.width + BETWEEN,
        width: area.width - panel.width - BETWEEN
      }
      const below = {
        ...area,
        y: area.y + panel.height + BETWEEN,
        height: area.height - panel.height - BETWEEN
      }
      if (panel.width > area.width * 0.6) {
        fill({ ...right, height: panel.height })
        fill(below)
      } else {
        fill({ ...below, width: panel.width })
        fill(right)
      }
    }
    fill({ x: 0, y: 0, width, height })
    // The first may have room for its legend alone.
    if (page.length === 0 && pages.length > 0) {
      throw new RangeError(`Box ${must(boxes[next], 'box').lead.number} is larger than a page.`)
    }
    pages.push(page)
  }
  const pageOf = new Map(
    pages.flatMap((panels, index) =>
      panels.flatMap(({ start, count }) =>
        boxes.slice(start, start + count).map(({ lead }) => [lead.number, index + 1] as const)
      )
    )
  )
  return pages.map((panels, index) => {
    const where: WhereTo = ({ goes }: DecisionExit) => {
      const page = 'to' in goes ? (pageOf.get(goes.to) ?? null) : null
      return { page: page === index + 1 ? null : page }
    }
    const source = partSource(where, terms)
    return panels.map(({ start, count, high, x, y }) => ({
      x,
      y,
      panel: panelOf(runOf(boxes.slice(start, start + count), high, source))
    }))
  })
}

/** Boxes in the order of their numbers that make one panel. */
interface Run {
  readonly start: number
  readonly count: number
  readonly high: number
}

/** How high a box may be before it is set in more columns, in points: one width of them may fit where others do not. */
const HIGHS = [240, 150, 90, 420]

/** Runs of boxes by their numbers, each laid out once. */
function runsOf(boxes: readonly DecisionBox[], terms: DecisionTerms) {
  const source = partSource(NOWHERE, terms)
  const runs = new Map<string, DecisionRun>()
  const laid = new Map<DecisionRun, DecisionPanel>()
  const boxesOf = ({ start, count, high }: Run): DecisionRun => {
    const key = `${start} ${count} ${high}`
    const run = runs.get(key) ?? runOf(boxes.slice(start, start + count), high, source)
    runs.set(key, run)
    return run
  }
  const panel = (run: Run): DecisionPanel => {
    const own = boxesOf(run)
    const ready = laid.get(own) ?? panelOf(own)
    laid.set(own, ready)
    return ready
  }
  const fits = (run: Run, { width, height }: Size): boolean => {
    // Most that do not fit are seen not to before they are laid out.
    const least = leastSize(boxesOf(run))
    if (least.width > width || least.height > height) return false
    const { width: wide, height: tall } = panel(run)
    return wide <= width && tall <= height
  }
  /** The most boxes from one on that fit as one panel; null where not even the first does. */
  const longest = (start: number, size: Size): Run | null => {
    let best: Run | null = null
    for (const high of HIGHS) {
      let misses = 0
      let count: number = best?.count ?? 0
      while (misses < MISSES && start + count < boxes.length) {
        count += 1
        const run: Run = { start, count, high }
        if (!hangsTogether(boxesOf(run))) break
        if (fits(run, size)) best = run
        else misses += 1
      }
    }
    return best
  }
  return { panel, longest }
}

/** While it is not known which page a box is on; its room is the same. */
const NOWHERE: WhereTo = () => ({ page: null })
