import { useSpeech } from '../../../parts/setting.tsx'
import { type Sealed, sealedPressure } from '../../../science/gas.ts'
import { Band, ErrorBar } from './band.tsx'
import { axesOf, ChartFrame, Limit } from './frame.tsx'

const DAYS = Array.from({ length: 15 }, (_, day) => day)

/** The pressure in a sealed bottle against the days, with the limit of its kind. */
export function PressureChart({ sealed, says }: { sealed: Sealed; says: string }) {
  const { words } = useSpeech()
  const { limit, ceiling } = sealedPressure(sealed)
  const most = Math.max(8, Math.ceil(Math.max(limit, Math.min(ceiling.high, 20)) + 1))
  const axes = axesOf([0, 14], [0, most])
  const clipped = (days: number) => {
    const { low, mid, high } = sealedPressure({ ...sealed, days }).now
    return { low: Math.min(most, low), mid: Math.min(most, mid), high: Math.min(most, high) }
  }
  const points = DAYS.map(day => ({ at: day, span: clipped(day) }))
  const name = (key: 'day' | 'bar' | 'lowest' | 'middle' | 'highest' | 'table' | 'pressure') =>
    words.t(`ui:workbench.chart.${key}`)
  return (
    <ChartFrame
      title={name('pressure')}
      says={says}
      x={{ name: name('day'), ticks: [0, 1, 2, 3, 4, 7, 10, 14] }}
      y={{ name: name('bar'), ticks: axesTicks(most) }}
      axes={axes}
      table={{
        name: name('table'),
        head: [name('day'), name('lowest'), name('middle'), name('highest')],
        rows: DAYS.map(day => {
          const { low, mid, high } = sealedPressure({ ...sealed, days: day }).now
          return [`${day}`, ...[low, mid, high].map(value => value.toFixed(1))]
        })
      }}
    >
      {/* Where a middle line crossed the limit it would be read as the day until which a bottle holds. */}
      <Band axes={axes} points={points} hasMiddle={false} />
      <Limit axes={axes} at={limit} name={words.t('ui:workbench.chart.limit', { limit })} />
      {sealed.days !== null && sealed.days <= 14 && (
        <ErrorBar axes={axes} at={sealed.days} span={clipped(sealed.days)} />
      )}
    </ChartFrame>
  )
}

function axesTicks(most: number): readonly number[] {
  const step = most > 12 ? 4 : 2
  return Array.from({ length: Math.floor(most / step) + 1 }, (_, index) => index * step)
}
