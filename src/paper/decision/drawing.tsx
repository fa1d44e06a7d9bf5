import type { JSX } from 'preact'
import { RECEIVER, TILES } from '../../parts/edge.tsx'
import { verdict } from '../../tree/caution.ts'
import type { Track } from '../../tree/observation.ts'
import { type Tree, USES } from '../../tree/tree.ts'
import { useCode } from '../key-codes.ts'
import type { DrawnItem } from './items.ts'
import type { PlacedPanel } from './pages.ts'
import type { PlacedPart, Point } from './panel.ts'

const INK = '#000'
const LINE = '#333'
const HAIR = '#777'

const patternOf = (name: string) => `decision-${name}`

/** Where the squares of 24 of a pattern stand in a swatch, the middle one whole from side to side. */
const TILED = [-22, 2, 26]

/** The patterns of the verdicts as small drawings, once for all pages of a document. */
export function DecisionPatterns() {
  return (
    <defs>
      {Object.entries(TILES).map(([name, tile]) => (
        <symbol key={name} id={patternOf(name)} viewBox="0 0 28 18">
          {TILED.map(x => (
            <g key={x} fill="currentColor" transform={`translate(${x} -3)`}>
              {tile}
            </g>
          ))}
        </symbol>
      ))}
    </defs>
  )
}

/** How a page is drawn: from the right where its language is read so. */
export interface DrawingFrame {
  readonly tree: Tree
  readonly width: number
  readonly mirrored: boolean
}

/** The panels of a page: its lines, then its boxes in the order of their numbers, each with its ways on. */
export function Panels({ panels, frame }: { panels: readonly PlacedPanel[]; frame: DrawingFrame }) {
  return (
    <>
      {panels.map(({ x, y, panel }, index) => (
        <g key={index}>
          {panel.ways.map((way, place) => (
            <WayLines
              key={place}
              lines={way.lines.map(line => line.map(moved(x, y)))}
              frame={frame}
            />
          ))}
          {panel.boxes.map(placed => (
            <g key={placed.box.lead.number}>
              <Outlined as="lead" placed={shifted(placed, x, y)} frame={frame} />
              {panel.ways
                .filter(({ from }) => from === placed.box.lead.number)
                .map(
                  ({ plate }, place) =>
                    plate !== null && (
                      <Outlined key={place} as="way" placed={shifted(plate, x, y)} frame={frame} />
                    )
                )}
            </g>
          ))}
        </g>
      ))}
    </>
  )
}

const moved = (dx: number, dy: number) => (point: Point) => ({
  x: point.x + dx,
  y: point.y + dy
})

const shifted = ({ x, y, part }: PlacedPart, dx: number, dy: number): PlacedPart => ({
  x: x + dx,
  y: y + dy,
  part
})

/** Two decimals are finer than any printer. */
const n = (value: number) => Number(value.toFixed(2))

const across = ({ mirrored, width }: DrawingFrame, x: number) => n(mirrored ? width - x : x)
const left = (frame: DrawingFrame, x: number, wide: number) =>
  across(frame, frame.mirrored ? x + wide : x)

function WayLines({ lines, frame }: { lines: readonly (readonly Point[])[]; frame: DrawingFrame }) {
  const end = lines.at(-1)?.at(-1)
  return (
    <g fill="none" stroke={LINE} stroke-width="1.1" stroke-linejoin="round">
      {lines.map((line, index) => (
        <path
          key={index}
          d={line
            .map(({ x, y }, place) => `${place === 0 ? 'M' : 'L'}${across(frame, x)} ${n(y)}`)
            .join('')}
        />
      ))}
      {end !== undefined && (
        <path d={`M${across(frame, end.x)} ${n(end.y)}l-3.4 -6.4h6.8z`} fill={LINE} stroke="none" />
      )}
    </g>
  )
}

/** A lead, or what leads on from one: the lead is the heavier. */
const OUTLINES = {
  lead: { stroke: INK, 'stroke-width': 1.2 },
  way: { rx: 5, stroke: LINE, 'stroke-width': 0.6 }
} as const

function Outlined({
  as,
  placed: { x, y, part },
  frame
}: {
  as: keyof typeof OUTLINES
  placed: PlacedPart
  frame: DrawingFrame
}) {
  return (
    <g>
      <rect
        x={left(frame, x, part.width)}
        y={n(y)}
        width={n(part.width)}
        height={n(part.height)}
        fill="#fff"
        {...OUTLINES[as]}
      />
      <Items items={part.items} x={x} y={y} frame={frame} />
    </g>
  )
}

/** What stands in a part, from its upper left. */
export function Items({
  items,
  x,
  y,
  frame
}: {
  items: readonly DrawnItem[]
  x: number
  y: number
  frame: DrawingFrame
}) {
  return (
    <>
      {items.map((item, index) => (
        <Item key={index} item={{ ...item, x: item.x + x, y: item.y + y }} frame={frame} />
      ))}
    </>
  )
}

function Item({ item, frame }: { item: DrawnItem; frame: DrawingFrame }): JSX.Element {
  const { x, y, width, height } = item
  const box = { x: left(frame, x, width), y: n(y), width: n(width), height: n(height) }
  switch (item.kind) {
    case 'text':
      return (
        <text
          x={across(frame, x)}
          y={n(y + item.type.size * 0.93)}
          font-size={item.type.size}
          font-weight={item.type.bold ? 700 : 400}
          fill={item.white ? '#fff' : INK}
          lang={item.lang}
        >
          {item.text}
        </text>
      )
    case 'rule':
      return (
        <path d={`M${box.x} ${box.y}h${box.width}`} stroke={HAIR} stroke-width="0.5" fill="none" />
      )
    case 'bar':
      return <rect {...box} fill={INK} />
    case 'tab':
      return <path d={tabShape(item.about, box)} fill={INK} />
    case 'tag':
      return <path d={tagShape(item.shape, box, frame.mirrored)} fill={INK} />
    case 'swatch':
      return <Swatch of={item.of} box={box} frame={frame} />
  }
}

interface Bounds {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

/** Round for a person, cut for a container, square for a batch. */
function tabShape(about: Track, { x, y, width, height }: Bounds): string {
  const r = height / 2
  if (about === 'person') {
    return `M${n(x + r)} ${y}h${n(width - 2 * r)}a${r} ${r} 0 0 1 0 ${height}h${n(2 * r - width)}a${r} ${r} 0 0 1 0 ${-height}z`
  }
  if (about === 'container') {
    return `M${n(x + 5)} ${y}h${n(width - 10)}l5 ${r}l-5 ${r}h${n(10 - width)}l-5 ${-r}z`
  }
  return `M${x} ${y}h${width}v${height}h${-width}z`
}

/** An arrow that leaves the box, one that turns back, or a stop. */
function tagShape(
  shape: 'on' | 'back' | 'end',
  { x, y, width, height }: Bounds,
  mirrored: boolean
) {
  const half = height / 2
  const tip = Math.min(6, half)
  const isLeft = (shape === 'back') !== mirrored
  if (shape === 'end') {
    return `M${n(x + 3)} ${y}h${n(width - 6)}q3 0 3 3v${n(height - 6)}q0 3 -3 3h${n(6 - width)}q-3 0 -3 -3v${n(6 - height)}q0 -3 3 -3z`
  }
  return isLeft
    ? `M${n(x + tip - 4)} ${y}h${n(width - tip + 4)}v${n(height)}h${n(tip - 4 - width)}l${-tip} ${n(-half)}z`
    : `M${x} ${y}h${n(width - tip)}l${tip} ${n(half)}l${-tip} ${n(half)}h${n(tip - width)}z`
}

function Swatch({ of, box, frame }: { of: string; box: Bounds; frame: DrawingFrame }) {
  const use = USES.find(each => useCode(each) === of)
  if (use !== undefined) return <UseSwatch never={use === 'never'} box={box} />
  const { track } = verdict(frame.tree, of)
  const isPerson = track === 'person'
  const tile = track === 'container' ? 'container' : of
  return (
    <g>
      <rect {...box} fill={isPerson ? INK : '#fff'} />
      {!isPerson && Object.hasOwn(TILES, tile) && <use href={`#${patternOf(tile)}`} {...box} />}
      <rect {...box} fill="none" stroke={INK} stroke-width="0.8" />
      {isPerson && (
        <path
          d={RECEIVER}
          fill="#fff"
          transform={`translate(${n(box.x + box.width / 2 - 4.2)} ${n(box.y + 0.4)}) scale(0.35)`}
        />
      )}
    </g>
  )
}

/** A glass: crossed out where nothing may be had, with a bar where not yet. */
function UseSwatch({ never, box }: { never: boolean; box: Bounds }) {
  const x = n(box.x + box.width / 2)
  const { y, height } = box
  return (
    <g fill="none" stroke={INK} stroke-width="0.9">
      <rect {...box} fill="#fff" stroke-width="0.8" />
      <path d={`M${n(x - 2.6)} ${n(y + 1.6)}l0.8 ${n(height - 3.2)}h3.6l0.8 ${n(3.2 - height)}z`} />
      {never ? (
        <path d={`M${n(x - 5)} ${n(y + 1)}L${n(x + 5)} ${n(y + height - 1)}`} stroke-width="1.3" />
      ) : (
        <path d={`M${n(x - 5)} ${n(y + height / 2)}h10`} stroke-width="1.3" />
      )}
    </g>
  )
}
