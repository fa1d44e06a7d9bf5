// Everything that must hold before a change is taken: types, format and lint, tests, trees proved.
// Every step runs, whatever the others found.
import { spawn } from 'node:child_process'
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { install, root } from './install.mjs'

const out = join(root, '.ci/out')
const report = join(out, 'vitest.json')
rmSync(out, { recursive: true, force: true })
mkdirSync(out, { recursive: true })

// Built once: the browser tests serve both, and the size of the first screens is measured.
const built = join(out, 'built')
const gallery = join(out, 'gallery')
const env = { ...process.env, JARSIDE_BUILT: built, JARSIDE_GALLERY: gallery }

const bin = (file, ...args) => [join(root, 'node_modules', file), ...args]
/** Each works on one core: they run beside each other, and their lines are printed one after another. */
const short = [
  { name: 'types', run: bin('typescript/bin/tsc', '--noEmit') },
  { name: 'format and lint', run: bin('@biomejs/biome/bin/biome', 'ci', '.') },
  { name: 'trees', run: [join(root, 'tools/jarside.mjs'), 'check'] },
  {
    name: 'pages',
    run: [join(root, 'tools/build.mjs'), '--outDir', built, '--gallery', gallery]
  },
  { name: 'browser', run: ['--import', 'tsx', join(root, 'tools/browser.mjs')] }
]
const long = [
  {
    name: 'tests',
    run: bin(
      'vitest/vitest.mjs',
      'run',
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${report}`
    )
  },
  { name: 'size of first screens', run: [join(root, 'bench/size.mjs')] }
]

/** Every failed test with the first line of what went wrong; a log cut short often keeps its end alone. */
function failures() {
  const { testResults } = JSON.parse(readFileSync(report, 'utf8'))
  return testResults.flatMap(({ name: file, status, message, assertionResults }) => {
    const tests = assertionResults
      .filter(test => test.status === 'failed')
      .map(test => ({ name: test.fullName, message: test.failureMessages[0] ?? '' }))
    const told = tests.length === 0 && status === 'failed' ? [{ name: 'the file', message }] : tests
    return told.map(
      ({ name, message }) => `${relative(root, file)}: ${name}: ${message.split('\n')[0]}`
    )
  })
}

/** Passed and failed tests as vitest counts them; a run that left no report, or failed beside its tests, failed once. */
function counted(ok) {
  try {
    const { numPassedTests, numFailedTests } = JSON.parse(readFileSync(report, 'utf8'))
    if (!ok && numFailedTests === 0) return { passed: numPassedTests, failed: 1 }
    if (ok && numPassedTests + numFailedTests === 0) return { passed: 0, failed: 1 }
    return { passed: numPassedTests, failed: numFailedTests }
  } catch {
    return { passed: 0, failed: 1 }
  }
}

/** Runs a step; what it prints is kept back where another one is printing. */
async function perform({ name, run }, stdio = 'inherit') {
  const child = spawn(process.execPath, run, { cwd: root, env, stdio: ['ignore', stdio, stdio] })
  const lines = []
  for (const stream of [child.stdout, child.stderr]) stream?.on('data', data => lines.push(data))
  if (stdio === 'inherit') console.log(`\n== ${name}`)
  const status = await new Promise(done => {
    child.on('error', error => {
      lines.push(Buffer.from(`${error.message}\n`))
      done(null)
    })
    child.on('close', done)
  })
  if (stdio !== 'inherit') process.stdout.write(`\n== ${name}\n${Buffer.concat(lines)}`)
  const ok = status === 0
  return { name, ...(name === 'tests' ? counted(ok) : { passed: ok ? 1 : 0, failed: ok ? 0 : 1 }) }
}

async function performAll() {
  const done = await Promise.all(short.map(step => perform(step, 'pipe')))
  for (const step of long) done.push(await perform(step))
  return done
}

const { engines } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'))
console.log(`Node.js ${process.version}; releases still maintained: ${engines.node}`)

const installed = install() === 0
const done = installed ? await performAll() : [{ name: 'install', passed: 0, failed: 1 }]
const sum = key => done.reduce((total, step) => total + step[key], 0)
const summary = { passed: sum('passed'), failed: sum('failed'), steps: done }
writeFileSync(join(out, 'summary.json'), `${JSON.stringify(summary, null, 2)}\n`)

console.log('\n== summary')
for (const { name, passed, failed } of done) {
  console.log(`${failed ? 'FAILED' : 'passed'}  ${name} (${passed} passed, ${failed} failed)`)
  if (failed && name === 'tests' && existsSync(report)) console.log(failures().join('\n'))
}
process.exitCode = summary.failed ? 1 : 0
