import { useSetting } from '../parts/setting.tsx'
import { groupOf } from '../tree/group.ts'
import type { Range } from '../tree/observation.ts'
import type { Rule, Tree } from '../tree/tree.ts'
import { answerLabel } from '../words/tree-texts.ts'
import { SOURCE_TAG } from '../words/words.ts'
import { framedSheetHtml } from './sheet-frame.tsx'
import type { SheetOf } from './verdict-sheet.tsx'

/** From when and below which pH a batch may be used, once a test shows it. */
export interface PassLine {
  /** The kinds of food that it holds for, as answers; empty where it holds for all. */
  readonly kinds: readonly { readonly observation: string; readonly answer: string }[]
  /** From this day; null at the other end where nothing ends it. */
  readonly day: number
  readonly lastDay: number | null
  /** At most this pH; null at the other end where none is too low. */
  readonly ph: number
  readonly lowestPh: number | null
}

/** The record of one batch, to be filled in by hand; null where a ferment has none. */
export function batchCardHtml(sheet: SheetOf): string | null {
  const { tree, texts, knowHow } = sheet
  const { fields, checks } = groupOf(groupOf(texts[SOURCE_TAG]?.[tree.id]).card)
  const lines = passLines(tree, knowHow.allowed[tree.id] ?? [])
  if (fields === undefined || lines.length === 0) return null
  const [written, ticked] = [fields, checks].map(group => Object.keys(groupOf(group)))
  return framedSheetHtml(sheet, 'card', () => (
    <Card fields={written ?? []} checks={ticked ?? []} lines={lines} />
  ))
}

/** The limits by which the how-to answers let a batch be used, which the tree is proved to share. */
export function passLines(tree: Tree, allowed: readonly Rule[]): readonly PassLine[] {
  const all = allowed.flatMap(({ when }) => {
    const within = (unit: 'day' | 'ph'): Range | undefined =>
      when.flatMap(condition => {
        if (condition.kind !== 'measure' || condition.is === 'unsure') return []
        const observation = tree.observations[condition.observation]
        const fits = observation?.kind === 'measure' && observation.unit === unit
        return fits && 'within' in condition.is ? [condition.is.within] : []
      })[0]
    const days = within('day')
    const acid = within('ph')
    const day = days?.atLeast
    const ph = acid?.atMost
    if (day === undefined || ph === undefined) return []
    const kinds = when.flatMap(condition =>
      condition.kind === 'choice'
        ? condition.among.map(answer => ({ observation: condition.observation, answer }))
        : []
    )
    return [{ kinds, day, lastDay: days?.atMost ?? null, ph, lowestPh: acid?.atLeast ?? null }]
  })
  // Foods that pass alike share a line.
  return all
    .filter((line, index) => all.findIndex(other => isAlike(line, other)) === index)
    .map(line => ({
      ...line,
      kinds: all.filter(other => isAlike(line, other)).flatMap(({ kinds }) => kinds)
    }))
}

const isAlike = (one: PassLine, other: PassLine) =>
  one.day === other.day &&
  one.lastDay === other.lastDay &&
  one.ph === other.ph &&
  one.lowestPh === other.lowestPh

/** The rows for readings that are written by hand. */
const ROWS = 5

function Card({
  fields,
  checks,
  lines
}: {
  fields: readonly string[]
  checks: readonly string[]
  lines: readonly PassLine[]
}) {
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
          <text class="card-name" x={x(day) + 6} y={y(ph) + 17}>
            {letterOf(index)}
          </text>
        </g>
      ))}
    </svg>
  )
}
