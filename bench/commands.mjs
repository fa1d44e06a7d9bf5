import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { root } from '../.ci/install.mjs'
import { median } from './figures.mjs'

const RUNS = 15
const TROUBLED = ['walk', 'kombucha-jar', '--json', '--given', 'surface-texture=dry-fuzzy']
const UNTROUBLED = [
  ...['walk', 'kombucha-jar', '--json', '--strict'],
  ...['people-signs', 'container-signs', 'jar-signs', 'smell-and-liquid', 'drinkers'].flatMap(
    id => [...['--none', id]]
  ),
  ...[
    'surface-texture=wet-film',
    'spots-and-color=plain-color',
    'jar-ph=3.2@meter',
    'day=9'
  ].flatMap(fact => ['--given', fact])
]
const COMMANDS = {
  version: ['--version'],
  list: ['list'],
  cites: ['cites', 'cdc-botulism'],
  walkFinished: UNTROUBLED,
  walkUnfinished: TROUBLED,
  checkOneTree: ['check', '--tree', 'kombucha-jar']
}

/** How long each command takes with a warm cache, in times of a Node.js that does nothing. */
export function measureCommands() {
  const jarside = join(root, 'tools/jarside.mjs')
  const works = { nothing: ['-e', '0'] }
  for (const [name, args] of Object.entries(COMMANDS)) works[name] = [jarside, ...args]
  for (const [name, args] of Object.entries(works)) run(name, args)
  const times = Object.fromEntries(Object.keys(works).map(name => [name, []]))
  // In turns: what else the machine does is then borne by all of them alike.
  for (let turn = 0; turn < RUNS; turn++) {
    for (const [name, args] of Object.entries(works)) times[name].push(run(name, args))
  }
  const nothingMs = median(times.nothing)
  const commands = Object.keys(COMMANDS).map(name => {
    const ms = median(times[name])
    return [name, { ms, timesNothing: Math.round((ms / nothingMs) * 100) / 100 }]
  })
  return { runs: RUNS, nothingMs, commands: Object.fromEntries(commands) }
}

function run(name, args) {
  const start = performance.now()
  const { status, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' })
  const ms = performance.now() - start
  if (status !== 0) throw new Error(`${name} ended with ${status}: ${stderr}`)
  return ms
}
