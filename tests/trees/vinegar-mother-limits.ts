import type { Answer, Answers } from '../../src/tree/answers.ts'
import { days, meter, narrowStrip, type Row, sharing, wideStrip } from './kombucha-jar-rows.ts'
import { caution, choice, discard, fine, growing, memory, wait } from './told.ts'

const acid = (ph: Answer, day: number): Answers => ({
  'vinegar-ph': ph,
  'vinegar-days': days(day)
})
const undated = (ph: Answer): Answers => ({ 'vinegar-ph': ph, 'vinegar-days': 'unsure' })
const unmeasured = (day: number): Answers => acid('unsure', day)

const once = choice('acid-before')('once')
const twice = choice('acid-before')('twice-or-more')

/** pH 3.5, pH 4.0 and four weeks on both sides, by each instrument. */
export const VINEGAR_LIMITS: readonly Row[] = [
  ...sharing(fine, `${memory}; ${caution}`, [
    ['5.0', 'a meter reads 3.45 on day 28', acid(meter(3.45), 28)],
    ['5.0', 'a meter reads 2.5 on day 28', acid(meter(2.5), 28)],
    ['5.0', 'a narrow strip reads 3.2 on day 28', acid(narrowStrip(3.2), 28)],
    ['5.0', 'a wide strip reads 3.0 on day 28', acid(wideStrip(3), 28)],
    ['5.0', 'a meter reads 3.45 on day 29', acid(meter(3.45), 29)]
  ]),
  ...sharing(growing, `${memory}; ${caution}`, [
    ['5.0', 'a meter reads 3.45 on day 27', acid(meter(3.45), 27)],
    ['5.0', 'a meter reads 2.5 on day 3', acid(meter(2.5), 3)],
    ['5.0', 'a meter reads 3.5 on day 27', acid(meter(3.5), 27)],
    ['5.0', 'a meter reads 3.6 on day 27', acid(meter(3.6), 27)],
    ['5.11', 'a meter reads 4.1 on day 27', acid(meter(4.1), 27)],
    ['5.11', 'a meter reads 4.0 on day 27', acid(meter(4), 27)],
    ['5.0', 'a meter reads 3.2, the days unknown', undated(meter(3.2))]
  ]),
  ...sharing(wait, caution, [
    ['5.0', 'a meter reads 3.5 on day 28', acid(meter(3.5), 28)],
    ['5.0', 'a narrow strip reads 3.3 on day 28', acid(narrowStrip(3.3), 28)],
    ['5.0', 'a wide strip reads 3.1 on day 28', acid(wideStrip(3.1), 28)],
    ['5.0', 'a meter reads 3.6 on day 28', acid(meter(3.6), 28)],
    ['5.0', 'a meter reads 3.9 on day 60', acid(meter(3.9), 60)],
    ['5.11', 'a meter reads 3.95 on day 28', acid(meter(3.95), 28)],
    ['5.11', 'a meter reads 4.0 on day 28', acid(meter(4), 28)],
    ['5.11', 'a meter reads 4.05 on day 28', acid(meter(4.05), 28)],
    ['5.11', 'a narrow strip reads 4.3 on day 28', acid(narrowStrip(4.3), 28)],
    ['5.11', 'a wide strip reads 4.5 on day 28', acid(wideStrip(4.5), 28)],
    ['5.11', 'a meter reads 4.1, the days unknown', undated(meter(4.1))],
    ['5.11', 'a meter reads 4.0, the days unknown', undated(meter(4))]
  ]),
  ...sharing(discard, caution, [
    ['5.11', 'a meter reads 4.1 on day 28', acid(meter(4.1), 28)],
    ['5.11', 'a narrow strip reads 4.4 on day 28', acid(narrowStrip(4.4), 28)],
    ['5.11', 'a wide strip reads 4.6 on day 28', acid(wideStrip(4.6), 28)],
    ['5.11', 'a meter reads 5.0 on day 90', acid(meter(5), 90)],
    ['5.11', 'in doubt around 4.0 twice on day 28', { ...acid(meter(4), 28), ...once }],
    ['5.11', 'a meter reads 4.1 twice, the days unknown', { ...undated(meter(4.1)), ...once }],
    // Two more waits, and no third.
    ['5.11', 'a meter reads 3.7 after two more waits', { ...acid(meter(3.7), 60), ...twice }],
    ['5.11', 'a meter reads 3.5 after two more waits', { ...acid(meter(3.5), 60), ...twice }],
    [
      '5.11',
      'a meter reads 3.7, the days unknown, after two more waits',
      { ...undated(meter(3.7)), ...twice }
    ],
    ['5.0', 'nobody measured by day 60, after two more waits', { ...unmeasured(60), ...twice }]
  ]),
  ...sharing(wait, caution, [
    ['5.11', 'a meter reads 3.7 after one more wait', { ...acid(meter(3.7), 45), ...once }]
  ]),
  ...sharing(growing, caution, [
    ['5.0', 'nobody measured by day 45, after one more wait', { ...unmeasured(45), ...once }],
    ['5.0', 'nobody measured by day 28', unmeasured(28)],
    ['5.0', 'nobody measured by day 5', unmeasured(5)],
    ['5.0', 'nobody measured or counted', undated('unsure')]
  ])
]
