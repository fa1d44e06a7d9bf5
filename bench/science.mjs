import { mix, starterReading } from '../src/science/mix.ts'
import { exactly } from '../src/science/span.ts'
import { reckonCourse } from '../src/words/reckoned/course.ts'
import { median, timed } from './figures.mjs'

const RUNS = 200

/** What one interval of a fresh mix takes (243 corners), and all that a chart of it has to work out. */
export async function measureScience() {
  const starter = { ph: starterReading(3, 'meter') }
  const SHARES = [2, 3, 4, 6, 8, 10, 12, 15, 18, 22, 26, 30, 35, 40]
  const [one, chart, course] = [[], [], []]
  for (let run = 0; run < RUNS; run++) {
    one.push((await timed(() => mix(starter, 0.125))).ms)
    chart.push((await timed(() => SHARES.map(percent => mix(starter, percent / 100)))).ms)
    course.push((await timed(() => reckonCourse(exactly(4.5), 24, 8))).ms)
  }
  return {
    runs: RUNS,
    mixMs: median(one),
    mixChartMs: median(chart),
    courseMs: median(course)
  }
}
