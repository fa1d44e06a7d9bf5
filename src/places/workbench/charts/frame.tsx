import { scaleLinear } from 'd3-scale'
import type { ComponentChildren } from 'preact'

/** The room of every chart, in its own units; it grows with the page. */
export const ROOM = { width: 640, height: 340, left: 52, right: 20, top: 16, bottom: 44 } as const

export interface Axes {
  readonly x: (value: number) => number
  readonly y: (value: number) => number
}

/** Both axes of a chart: what reaches from left to right, and from bottom to top. */
export function axesOf(x: readonly [number, number], y: readonly [number, number]): Axes {
  const { width, height, left, right, top, bottom } = ROOM
  return {
    x: scaleLinear(x, [left, width - right]),
    y: scaleLinear(y, [height - bottom, top])
  }
}

/**
 * A chart with its sentence underneath and, for whoever cannot see it, the same numbers as a table. Shapes
 * differ by stroke and pattern, not by color alone, so that it prints in black and white.
 */
export function ChartFrame({
  title,
  says,
  x,
  y,
  axes,
  table,
  children
}: {
  title: string
  /** One sentence: what the chart shows. */
  says: string
  x: { readonly name: string; readonly ticks: readonly number[] }
  y: { readonly name: string; readonly ticks: readonly number[] }
  axes: Axes
  table: {
    readonly name: string
    readonly head: readonly string[]
    readonly rows: readonly (readonly string[])[]
  }
  children: ComponentChildren
}) {
  const { width, height, left, right, top, bottom } = ROOM
  return (
    <figure class="chart">
      <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-label={`${title}. ${says}`}>
        {y.ticks.map(tick => (
          <g key={`y${tick}`} class="chart-tick">
            <line x1={left} x2={width - right} y1={axes.y(tick)} y2={axes.y(tick)} />
            <text x={left - 8} y={axes.y(tick)} text-anchor="end" dominant-baseline="middle">
              {tick}
            </text>
          </g>
        ))}
        {x.ticks.map(tick => (
          <text
            key={`x${tick}`}
            class="chart-tick"
            x={axes.x(tick)}
            y={height - bottom + 18}
            text-anchor="middle"
          >
            {tick}
          </text>
        ))}
        <text class="chart-name" x={(left + width - right) / 2} y={height - 6} text-anchor="middle">
          {x.name}
        </text>
        <text class="chart-name" x={left - 42} y={top + 2} dominant-baseline="hanging">
          {y.name}
        </text>
        {children}
      </svg>
      <figcaption>{says}</figcaption>
      <details class="chart-table">
        <summary>{table.name}</summary>
        <table>
          <thead>
            <tr>
              {table.head.map(name => (
                <th key={name} scope="col">
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {table.rows.map(([first, ...rest], index) => (
              <tr key={index}>
                <th scope="row">{first}</th>
                {rest.map((cell, column) => (
                  <td key={column}>{cell}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </figure>
  )
}

/** A line across the chart at a limit, with its name. */
export function Limit({
  axes,
  at,
  name,
  isDashed = false
}: {
  axes: Axes
  at: number
  name: string
  isDashed?: boolean
}) {
  const { width, left, right } = ROOM
  const y = axes.y(at)
  return (
    <g class={isDashed ? 'chart-limit chart-limit-dashed' : 'chart-limit'}>
      <line x1={left} x2={width - right} y1={y} y2={y} />
      <text x={width - right - 4} y={y - 6} text-anchor="end">
        {name}
      </text>
    </g>
  )
}
