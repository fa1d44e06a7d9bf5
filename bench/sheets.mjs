import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { root } from '../.ci/install.mjs'
import { builtCommand } from '../tools/command.mjs'
import { median, quantile } from './figures.mjs'

const RUNS = 5
const ONE = ['kombucha-jar', '--verdict', 'likely-mold', '--lang', 'es']
const ALL = ['--all', '--lang', 'en', '--lang', 'es']
const GOAL = { one: 2, all: 60 }

/** How long `jarside handout` takes from its start until the PDFs are written: one sheet, and all of all trees. */
export async function measureSheets() {
  const command = await builtCommand()
  const folder = mkdtempSync(join(tmpdir(), 'jarside-sheets-'))
  try {
    const print = (name, args) => {
      const started = performance.now()
      // What takes a second page is printed all the same, and ends with 1.
      const { status, stdout, stderr } = spawnSync(
        process.execPath,
        [command, 'handout', ...args, '--out', join(folder, name)],
        { cwd: root, encoding: 'utf8' }
      )
      if (status !== 0 && !stderr.startsWith('More than one side')) throw new Error(stderr)
      const seconds = Math.round((performance.now() - started) / 10) / 100
      return { seconds, sheets: stdout.trim().split('\n').length }
    }
    // The first fills what the command keeps of the files that it read.
    print('warm', ONE)
    const ones = Array.from({ length: RUNS }, (_, run) => print(`one-${run}`, ONE).seconds)
    const all = print('all', ALL)
    return {
      runs: RUNS,
      oneSeconds: median(ones),
      oneSecondsLeastAndMost: [quantile(ones, 0), quantile(ones, 1)],
      allSheets: all.sheets,
      allSeconds: all.seconds,
      goal: GOAL
    }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
