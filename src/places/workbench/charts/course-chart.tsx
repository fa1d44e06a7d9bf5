import { useSpeech } from '../../../parts/setting.tsx'
import { type AcidReading, COURSE_RANGE, courseBand } from '../../../science/course.ts'
import { FINISHED } from '../../../science/mix.ts'
import type { Span } from '../../../science/span.ts'
import { DUE_DAY } from '../../../words/reckoned/course.ts'
import { Band, type BandPoint, ErrorBar } from './band.tsx'
import { axesOf, ChartFrame, Limit, ROOM } from './frame.tsx'

const PH = [2, 6] as const

/** pH against days: the band of what is published, the line of 4.2, day 7, and this batch's readings. */
export function CourseChart({
  start,
  celsius,
  readings,
  says
}: {
  start: Span
  celsius: number
  readings: readonly AcidReading[]
  says: string
}) {
  const { words } = useSpeech()
  const { from, to } = COURSE_RANGE.day
  const last = Math.max(to, ...readings.map(({ day }) => day))
  const axes = axesOf([0, last], PH)
  const first = readings[0]?.day ?? 0
  const points = Array.from({ length: to - from + 1 }, (_, index) => index + from).flatMap(
    (day): readonly BandPoint[] => {
      const band = courseBand(start, celsius, day)
      return band.standing === 'band' ? [{ at: day + first, span: band.ph }] : []
    }
  )
  const name = (
    key: 'day' | 'ph' | 'lowest' | 'middle' | 'highest' | 'table' | 'course' | 'reading'
  ) => words.t(`ui:workbench.chart.${key}`)
  const rows = [
    ...readings.map(({ day, ph }) => [`${day}`, ...cells(ph), name('reading')]),
    ...points.map(({ at, span }) => [`${at}`, ...cells(span), ''])
  ]
  return (
    <ChartFrame
      title={name('course')}
      says={says}
      x={{ name: name('day'), ticks: [0, 2, 4, 7, 10, 14, 21, 28].filter(day => day <= last) }}
      y={{ name: name('ph'), ticks: [2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6] }}
      axes={axes}
      table={{
        name: name('table'),
        head: [name('day'), name('lowest'), name('middle'), name('highest'), ''],
        rows
      }}
    >
      {points.length > 0 && <Band axes={axes} points={points} />}
      <Limit axes={axes} at={FINISHED} name="pH 4.2" />
      <g class="chart-limit chart-limit-dashed">
        <line
          x1={axes.x(DUE_DAY)}
          x2={axes.x(DUE_DAY)}
          y1={ROOM.top}
          y2={ROOM.height - ROOM.bottom}
        />
      </g>
      {readings.map(({ day, ph }, index) => (
        <ErrorBar key={index} axes={axes} at={day} span={ph} />
      ))}
    </ChartFrame>
  )
}

const cells = ({ low, mid, high }: Span): readonly string[] =>
  [low, mid, high].map(value => value.toFixed(2))
