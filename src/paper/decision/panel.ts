import { Graph, type GraphLabel, layout, type NodeLabel } from '@dagrejs/dagre'
import { must } from '../../tree/must.ts'
import type { DecisionBox, DecisionExit } from './boxes.ts'
import type { DrawnPart } from './items.ts'
import { OVERHANG } from './parts.ts'
import { type Hop, routeHops } from './routes.ts'
import type { DecisionRun } from './run.ts'

/** A part where it stands on the drawing. */
export interface PlacedPart {
  readonly x: number
  readonly y: number
  readonly part: DrawnPart
}

export interface Point {
  readonly x: number
  readonly y: number
}

/** A line from a box to another, through the answers that it stands for. */
export interface DecisionWay {
  readonly from: number
  readonly to: number
  readonly exit: DecisionExit
  readonly plate: PlacedPart | null
  readonly lines: readonly (readonly Point[])[]
}

/** Boxes that hang together, laid out in layers. */
export interface DecisionPanel {
  readonly width: number
  readonly height: number
  readonly boxes: readonly (PlacedPart & { readonly box: DecisionBox })[]
  readonly ways: readonly DecisionWay[]
}

/** Between neighbors in a layer. */
const APART = 14

/** Lays boxes out in layers: who leads to whom from above to below, lines at right angles. */
export function panelOf(run: DecisionRun): DecisionPanel {
  const graph = new Graph<GraphLabel, NodeLabel, { points?: Point[] }>()
  graph.setGraph({ rankdir: 'TB', nodesep: APART, edgesep: 10, ranksep: 20, rankalign: 'top' })
  graph.setDefaultEdgeLabel(() => ({}))
  for (const { lead } of run.boxes) {
    const name = `${lead.number}`
    const { width, height } = must(run.parts.get(name), name)
    graph.setNode(name, { width: width + 2 * OVERHANG, height })
  }
  for (const { name, from, to } of run.drawn) {
    const { width, height } = run.parts.get(name) ?? { width: 8, height: 0 }
    graph.setNode(name, { width, height })
    graph.setEdge(`${from}`, name)
    graph.setEdge(name, `${to}`)
  }
  layout(graph)
  return placed(graph, run)
}

type Layered = Graph<GraphLabel, NodeLabel, { points?: Point[] }>

/** Takes order and distance across from the layout; gives each layer its height and its lines their room. */
function placed(graph: Layered, { boxes, drawn, parts }: DecisionRun): DecisionPanel {
  // A line can run outside of all boxes: it counts for how wide they are together.
  const bends = graph.edges().flatMap(edge => graph.edge(edge).points ?? [])
  const nodes = graph.nodes().map(name => {
    const { x = 0, width } = must(graph.node(name), name)
    return { left: x - width / 2, right: x + width / 2 }
  })
  const left = Math.min(...bends.map(({ x }) => x), ...nodes.map(each => each.left))
  const right = Math.max(...bends.map(({ x }) => x), ...nodes.map(each => each.right))
  const node = (name: string) => {
    const { x = 0, rank = 0, height, width } = must(graph.node(name), name)
    return { x: x - left, rank, height, width }
  }
  const hops: Hop[] = []
  /** From layer to layer: where the line is on each, at its center. */
  const chain = (from: string, to: string, group: string) => {
    const { points = [] } = graph.edge(from, to)
    const xs = [node(from).x, ...points.slice(1, -1).map(({ x }) => x - left), node(to).x]
    return xs.slice(1).map((x, index): Hop => {
      const isLast = index === xs.length - 2
      const hop = {
        layer: node(from).rank + index,
        from: xs[index] ?? x,
        to: x,
        // What comes out of one box runs along one line, and so does what goes into one.
        group:
          group === 'out' && index === 0
            ? `out ${from}`
            : isLast && group === 'in'
              ? `in ${to}`
              : `${from} ${to}`
      }
      hops.push(hop)
      return hop
    })
  }
  const chains = drawn.map(({ name, from, to }) => ({
    out: chain(`${from}`, name, 'out'),
    on: chain(name, `${to}`, 'in')
  }))
  const heights: number[] = []
  for (const name of graph.nodes()) {
    const { rank, height } = node(name)
    heights[rank] = Math.max(heights[rank] ?? 0, height)
  }
  const { tops, trackOf, height } = routeHops(
    hops,
    Array.from(heights, each => each ?? 0)
  )
  const top = (name: string) => tops[node(name).rank] ?? 0
  const line = (start: Point, chained: readonly Hop[], end: Point): readonly Point[] => [
    start,
    ...chained.flatMap(hop => {
      const y = trackOf(hop)
      return y === null
        ? []
        : [
            { x: hop.from, y },
            { x: hop.to, y }
          ]
    }),
    end
  ]
  const ways = drawn.map(({ name, from, to, exit }, index): DecisionWay => {
    const { out, on } = must(chains[index], name)
    const own = `${from}`
    const [source, middle, target] = [node(own), node(name), node(`${to}`)]
    const part = parts.get(name)
    const start = { x: source.x, y: top(own) + source.height }
    const end = { x: target.x, y: top(`${to}`) }
    const upper = { x: middle.x, y: top(name) }
    const lower = { x: middle.x, y: top(name) + middle.height }
    return {
      from,
      to,
      exit,
      plate: part === undefined ? null : { x: middle.x - part.width / 2, y: upper.y, part },
      lines:
        part === undefined
          ? [[...line(start, out, upper), ...line(lower, on, end)]]
          : [line(start, out, upper), line(lower, on, end)]
    }
  })
  return {
    width: right - left,
    height,
    boxes: boxes.map(box => {
      const name = `${box.lead.number}`
      const part = must(parts.get(name), name)
      return { box, part, x: node(name).x - part.width / 2, y: top(name) }
    }),
    ways
  }
}
