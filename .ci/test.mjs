// Everything that must hold before a change is taken: types, format and lint, tests, trees proved.
// Every step runs, whatever the one before it found.
import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { install, root } from './install.mjs'

const out = join(root, '.ci/out')
const report = join(out, 'vitest.json')
rmSync(out, { recursive: true, force: true })
mkdirSync(out, { recursive: true })

// Built once: the browser tests serve it, and the size of its first screens is measured.
const env = { ...process.env, JARSIDE_BUILT: join(out, 'built') }

const bin = (file, ...args) => [join(root, 'node_modules', file), ...args]
const steps = [
  { name: 'types', run: bin('typescript/bin/tsc', '--noEmit') },
  { name: 'format and lint', run: bin('@biomejs/biome/bin/biome', 'ci', '.') },
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
  { name: 'trees', run: [join(root, 'tools/jarside.mjs'), 'check'] },
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

function perform({ name, run }) {
  console.log(`\n== ${name}`)
  const { status } = spawnSync(process.execPath, run, { cwd: root, env, stdio: ['ignore', 1, 2] })
  const ok = status === 0
  return { name, ...(name === 'tests' ? counted(ok) : { passed: ok ? 1 : 0, failed: ok ? 0 : 1 }) }
}

const { engines } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'))
console.log(`Node.js ${process.version}; releases still maintained: ${engines.node}`)

const installed = install() === 0
const done = installed ? steps.map(perform) : [{ name: 'install', passed: 0, failed: 1 }]
const sum = key => done.reduce((total, step) => total + step[key], 0)
const summary = { passed: sum('passed'), failed: sum('failed'), steps: done }
writeFileSync(join(out, 'summary.json'), `${JSON.stringify(summary, null, 2)}\n`)

console.log('\n== summary')
for (const { name, passed, failed } of done) {
  console.log(`${failed ? 'FAILED' : 'passed'}  ${name} (${passed} passed, ${failed} failed)`)
  if (failed && name === 'tests' && existsSync(report)) console.log(failures().join('\n'))
}
process.exitCode = summary.failed ? 1 : 0
