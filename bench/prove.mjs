// The prover beside others, and how it grows: npm run -s bench -- prove. Progress on stderr.
import { spawn } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { median } from './figures.mjs'

const CASE = fileURLToPath(new URL('./prove-case.ts', import.meta.url))
const RUNS = 3
const SIZES = [100, 300, 1000, 3000, 10000]
const OBSERVATIONS = [20, 100, 200]

/** Each case in a process of its own: about nine minutes. */
export async function measureProofs() {
  const beside = []
  for (const tree of [
    { tree: 'shipped' },
    ...[8, 10, 12].map(questions => ({ tree: 'three', questions }))
  ]) {
    beside.push({
      ...tree,
      prover: await alone({ work: 'prover', ...tree, seconds: 60 }),
      force: await alone({ work: 'force', ...tree, seconds: 20 }),
      generation: await alone({ work: 'generation', ...tree, seconds: 60 }),
      withAnswers: await alone({ work: 'generation', withAnswers: true, ...tree, seconds: 60 })
    })
  }
  const shipped = await alone({ work: 'shipped', tree: 'shipped', seconds: 60 })

  const growth = []
  for (const observations of OBSERVATIONS) {
    const cases = []
    // Fewer questions than so many observations take cannot be generated.
    for (const questions of SIZES.filter(size => size >= 1.5 * observations)) {
      const runs = []
      for (let run = 0; run < RUNS; run++) {
        runs.push(
          await alone({ work: 'large', tree: 'shape', questions, observations, seconds: 60 })
        )
      }
      const ms = median(runs.map(run => run.ms))
      const { reached, rules, standings, stopped } = runs[0]
      cases.push({
        questions,
        ms,
        reachedMs: median(runs.map(run => run.reachedMs)),
        peakMB: Math.max(...runs.map(run => run.peakMB)),
        heapMB: Math.max(...runs.map(run => run.heapMB)),
        reached,
        rules,
        standings,
        ...(stopped && { stopped })
      })
    }
    growth.push({ observations, cases, exponent: slope(cases.map(one => [one.questions, one.ms])) })
  }

  const stops = []
  for (const tree of ['shape', 'hostile']) {
    for (const questions of tree === 'shape' ? [100, 300, 1000, 3000, 10000] : [20, 30, 60, 100]) {
      const size = { tree, questions, observations: questions < 60 ? 10 : 20, seconds: 30 }
      const result = await alone({ work: 'diagrams', ...size })
      const search = tree === 'hostile' ? await alone({ work: 'large', ...size }) : undefined
      stops.push({ ...size, diagrams: result, ...(search && { search }) })
    }
  }

  return { runs: RUNS, shipped, beside, growth, stops }
}

/** One case in a process of its own, ended when its time is up; the last thing that it said counts. */
function alone(wanted) {
  const start = performance.now()
  const child = spawn(
    process.execPath,
    ['--max-old-space-size=3000', '--import', 'tsx', CASE, JSON.stringify(wanted)],
    { stdio: ['ignore', 'pipe', 'ignore'] }
  )
  let said = ''
  child.stdout.on('data', chunk => {
    said += chunk
  })
  const timer = setTimeout(() => child.kill('SIGKILL'), wanted.seconds * 1000 + 5000)
  return new Promise(done => {
    child.on('close', (_, signal) => {
      clearTimeout(timer)
      const last = said.trimEnd().split('\n').at(-1)
      const text =
        last === undefined || last === ''
          ? { stopped: signal === 'SIGKILL' ? `${wanted.seconds} s` : 'memory' }
          : JSON.parse(last)
      const seconds = ((performance.now() - start) / 1000).toFixed(1)
      process.stderr.write(`${JSON.stringify(wanted)} ${seconds} s ${JSON.stringify(text)}\n`)
      done(text)
    })
  })
}

/** The growth exponent: the slope of least squares of time over size, both as logarithms. */
function slope(pairs) {
  const logs = pairs.map(([size, ms]) => [Math.log(size), Math.log(ms)])
  const mean = side => logs.reduce((sum, pair) => sum + pair[side], 0) / logs.length
  const [x, y] = [mean(0), mean(1)]
  const above = logs.reduce((sum, [a, b]) => sum + (a - x) * (b - y), 0)
  const below = logs.reduce((sum, [a]) => sum + (a - x) ** 2, 0)
  return Math.round((above / below) * 1000) / 1000
}
