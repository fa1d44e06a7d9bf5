import { useMemo } from 'preact/hooks'
import { useSpeech } from '../../../parts/setting.tsx'
import { ACIDIFIED, FINISHED, mix, type Starter } from '../../../science/mix.ts'
import { Band, ErrorBar } from './band.tsx'
import { axesOf, ChartFrame, Limit } from './frame.tsx'

/** Few enough to be drawn within a frame while a slider moves. */
const SHARES = [2, 3, 4, 6, 8, 10, 12, 15, 18, 22, 26, 30, 35, 40]
const PH = [2.5, 7] as const

/** The pH of the fresh mix against the share of starter, with the lines of 4.6 and 4.2. */
export function MixChart({
  starter,
  share,
  says
}: {
  starter: Starter
  share: number
  says: string
}) {
  const { words } = useSpeech()
  const axes = axesOf([0, 40], PH)
  // A slider moves the share alone: the band stays.
  const points = useMemo(
    () => SHARES.map(percent => ({ at: percent, span: mix(starter, percent / 100).ph })),
    [JSON.stringify(starter)]
  )
  const here = { at: Math.min(40, 100 * share), span: mix(starter, share).ph }
  const name = (key: 'share' | 'ph' | 'lowest' | 'middle' | 'highest' | 'table' | 'mix') =>
    words.t(`ui:workbench.chart.${key}`)
  return (
    <ChartFrame
      title={name('mix')}
      says={says}
      x={{ name: name('share'), ticks: [0, 10, 20, 30, 40] }}
      y={{ name: name('ph'), ticks: [3, 3.5, 4, 4.5, 5, 5.5, 6, 6.5, 7] }}
      axes={axes}
      table={{
        name: name('table'),
        head: [name('share'), name('lowest'), name('middle'), name('highest')],
        rows: points.map(({ at, span }) => [
          `${at}`,
          ...[span.low, span.mid, span.high].map(value => value.toFixed(2))
        ])
      }}
    >
      <Band axes={axes} points={points} />
      <Limit axes={axes} at={ACIDIFIED} name="pH 4.6" />
      <Limit axes={axes} at={FINISHED} name="pH 4.2" isDashed />
      <ErrorBar axes={axes} at={here.at} span={here.span} />
    </ChartFrame>
  )
}
