import {
  calendarYear,
  type DaySpan,
  fiscalYear,
  fiscalYearAt,
  quarterAt,
  quarterOf
} from '../../contacts/day-span.ts'
import { isDay } from '../../office/plain-text.ts'
import { LogField } from '../../parts/log-fields.tsx'
import { useSpeech } from '../../parts/setting.tsx'
import { dayText } from '../../words/contact-words.ts'

const KINDS = ['quarter', 'fiscal-year', 'calendar-year', 'any'] as const
type SpanKind = (typeof KINDS)[number]

/** A time as the address of the page holds it. */
export type SpanChoice = Readonly<Record<'kind' | 'year' | 'quarter' | 'from' | 'until', string>>

const kindOf = ({ kind }: SpanChoice): SpanKind => KINDS.find(one => one === kind) ?? 'quarter'

/** The time that an address names, else the quarter of a day. */
export function startChoice(linked: URLSearchParams, today: string): SpanChoice {
  const { year, quarter } = quarterAt(today)
  const number = (name: string, pattern: RegExp, standing: number) => {
    const given = linked.get(name) ?? ''
    return pattern.test(given) ? given : String(standing)
  }
  const day = (name: string, standing: string) => {
    const given = linked.get(name) ?? ''
    return isDay(given) ? given : standing
  }
  const quarterSpan = quarterOf(year, quarter)
  return {
    kind: linked.get('kind') ?? 'quarter',
    year: number('year', /^20\d\d$/, year),
    quarter: number('quarter', /^[1-4]$/, quarter),
    from: day('from', quarterSpan.from),
    until: day('until', quarterSpan.until)
  }
}

/** The days of a choice. */
export function spanOf(choice: SpanChoice): DaySpan {
  const year = Number(choice.year)
  switch (kindOf(choice)) {
    case 'quarter':
      return quarterOf(year, Number(choice.quarter))
    case 'fiscal-year':
      return fiscalYear(year)
    case 'calendar-year':
      return calendarYear(year)
    case 'any':
      return { from: choice.from, until: choice.until }
  }
}

/** Another kind of time, about the same days. */
function asKind(choice: SpanChoice, kind: SpanKind, today: string): SpanChoice {
  const { from, until } = spanOf(choice)
  // Of a time that holds today, today's quarter.
  const about = from <= today && today <= until ? today : from
  const { year, quarter } = quarterAt(about)
  return {
    kind,
    year: String(kind === 'fiscal-year' ? fiscalYearAt(about) : year),
    quarter: String(quarter),
    from,
    until
  }
}

function moved(choice: SpanChoice, by: -1 | 1): SpanChoice {
  const year = Number(choice.year)
  if (kindOf(choice) !== 'quarter') return { ...choice, year: String(year + by) }
  const quarter = year * 4 + Number(choice.quarter) - 1 + by
  return { ...choice, year: String(Math.floor(quarter / 4)), quarter: String((quarter % 4) + 1) }
}

/** Which days are reported on. */
export function SpanPicker({
  choice,
  today,
  onChange
}: {
  choice: SpanChoice
  today: string
  onChange: (choice: SpanChoice) => void
}) {
  const { words } = useSpeech()
  const kind = kindOf(choice)
  const span = spanOf(choice)
  const named = (one: SpanKind) =>
    one === 'any'
      ? words.t('ui:contacts.span.any')
      : words.t(`ui:contacts.span.${one}`, asKind(choice, one, today))
  return (
    <section class="span-picker" aria-label={words.t('ui:contacts.span.label')}>
      <div class="span-kinds">
        {KINDS.map(one => (
          <button
            key={one}
            type="button"
            class="span-kind"
            data-span={one}
            aria-pressed={one === kind}
            onClick={() => onChange(asKind(choice, one, today))}
          >
            {one === kind && kind !== 'any'
              ? words.t(`ui:contacts.span.${kind}`, choice)
              : named(one)}
          </button>
        ))}
      </div>
      {kind === 'any' ? (
        <div class="span-days">
          {(['from', 'until'] as const).map(end => (
            <LogField key={end} label={words.t(`ui:contacts.span.${end}`)}>
              <input
                type="date"
                name={end}
                value={choice[end]}
                onChange={event => {
                  const day = event.currentTarget.value
                  if (isDay(day)) onChange({ ...choice, [end]: day })
                }}
              />
            </LogField>
          ))}
          {span.from > span.until && <p role="alert">{words.t('ui:contacts.wrong-span')}</p>}
        </div>
      ) : (
        <div class="span-moves">
          <button
            type="button"
            class="quiet"
            data-span-move="earlier"
            onClick={() => onChange(moved(choice, -1))}
          >
            {words.t('ui:contacts.span.earlier')}
          </button>
          <p role="status">
            {words.t('ui:contacts.span.days', {
              from: dayText(words, span.from),
              until: dayText(words, span.until)
            })}
          </p>
          <button
            type="button"
            class="quiet"
            data-span-move="later"
            onClick={() => onChange(moved(choice, 1))}
          >
            {words.t('ui:contacts.span.later')}
          </button>
        </div>
      )}
    </section>
  )
}
