import { useSetting } from '../parts/setting.tsx'
import type { BatchCard, PassLine } from '../tree/batch-card.ts'
import { answerLabel } from '../words/tree-texts.ts'

/** The rows for readings that are written by hand. */
const ROWS = 5

/** The record of one batch, to be filled in by hand. */
export function BatchRecord({ fields, checks, lines }: BatchCard) {
  const { words, tree } = useSetting()
  return (
    <>
      <dl class="card-fields">
        {fields.map(field => (
          <div key={field}>
            <dt>{words.t(`${tree.id}:card.fields.${field}`)}</dt>
            <dd />
          </div>
        ))}
      </dl>
      <ul class="card-checks">
        {checks.map(check => (
          <li key={check}>{words.t(`${tree.id}:card.checks.${check}`)}</li>
        ))}
      </ul>
      <p>{words.t('ui:card.grid')}</p>
      <Grid lines={lines} />
      <ul class="card-legend">
        {lines.map((line, index) => (
          <li key={letterOf(index)}>
            <strong>{letterOf(index)}</strong> <Limit line={line} />
          </li>
        ))}
      </ul>
      <table class="card-readings">
        <thead>
          <tr>
            {(['day', 'ph', 'instrument', 'seen'] as const).map(column => (
              <th key={column} scope="col">
                {words.t(`ui:card.${column}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {Array.from({ length: ROWS }, (_, row) => (
            <tr key={row}>
              <td />
              <td />
              <td />
              <td />
            </tr>
          ))}
        </tbody>
      </table>
      {words.has(`${tree.id}:use.not-yet-in-general`) && (
        <p>{words.t(`${tree.id}:use.not-yet-in-general`)}</p>
      )}
      <p>
        <strong>{words.t('ui:card.ask')}</strong>
      </p>
    </>
  )
}

/** The letter of a line, on the grid and below it. */
const letterOf = (index: number): string => String.fromCharCode('A'.charCodeAt(0) + index)

function Limit({ line: { kinds, day, lastDay, ph, lowestPh } }: { line: PassLine }) {
  const { words } = useSetting()
  const foods = kinds.map(({ observation, answer }) => answerLabel(words, observation, answer))
  return (
    <>
      {foods.length > 0 && `${foods.join(' · ')}: `}
      {lowestPh === null
        ? words.t('ui:card.limit', { ph })
        : words.t('ui:card.limits', { from: lowestPh, to: ph })}
      {', '}
      {lastDay === null
        ? words.t('ui:card.from-day', { day })
        : words.t('ui:card.days', { from: day, to: lastDay })}
    </>
  )
}

/** Of the drawing, in its own units. */
const WIDTH = 720
const HEIGHT = 190
const LEFT = 40
const BOTTOM = 24

/** Days against pH, with a line for each limit: what passes lies to the right of it and below. */
function Grid({ lines }: { lines: readonly PassLine[] }) {
  const { words } = useSetting()
  const lastDay = Math.max(14, ...lines.map(({ day }) => Math.ceil((day * 1.5) / 7) * 7))
  const lowest = Math.floor(Math.min(...lines.map(({ ph }) => ph))) - 2
  const highest = lowest + 4
  const step = lastDay > 21 ? 7 : 1
  const x = (day: number) => LEFT + (day / lastDay) * (WIDTH - LEFT - 10)
  const y = (ph: number) => 10 + ((highest - ph) / (highest - lowest)) * (HEIGHT - BOTTOM - 10)
  const days = Array.from({ length: Math.floor(lastDay / step) + 1 }, (_, index) => index * step)
  const halves = Array.from({ length: (highest - lowest) * 2 + 1 }, (_, half) => lowest + half / 2)
  return (
    <svg
      class="card-grid"
      // Days run from the left in every language, as on the scales beside them.
      direction="ltr"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={words.t('ui:card.grid')}
    >
      {days.map(day => (
        <g key={day}>
          <line class="card-thin" x1={x(day)} x2={x(day)} y1={y(highest)} y2={y(lowest)} />
          <text x={x(day)} y={HEIGHT - 6} text-anchor="middle">
            {day}
          </text>
        </g>
      ))}
      {halves.map(ph => (
        <g key={ph}>
          <line class="card-thin" x1={x(0)} x2={x(lastDay)} y1={y(ph)} y2={y(ph)} />
          {Number.isInteger(ph) && (
            <text x={LEFT - 6} y={y(ph) + 5} text-anchor="end">
              {ph}
            </text>
          )}
        </g>
      ))}
      {lines.map(({ day, ph, lowestPh }, index) => (
        <g key={`${day} ${ph}`}>
          <path
            class="card-limit"
            d={
              lowestPh === null
                ? `M${x(day)} ${y(lowest)}V${y(ph)}H${x(lastDay)}`
                : `M${x(lastDay)} ${y(lowestPh)}H${x(day)}V${y(ph)}H${x(lastDay)}`
            }
          />
          <text class="card-name" x={x(day) + 6} y={y(ph) - 6}>
            {letterOf(index)}
          </text>
        </g>
      ))}
    </svg>
  )
}
