import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { builtCommand } from '../tools/command.mjs'
import { writeLog } from './contacts/write-log.mjs'

const RECORDS = 1_000_000
const DESKS = 4
const GOAL = { seconds: 10, megabytes: 300 }

/** Says at its end how much memory the process ever held, and how long it had a processor. */
const WATCHED = `data:text/javascript,${encodeURIComponent(`process.on('exit', () => {
  const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage()
  process.stderr.write('held ' + maxRSS + ' ran ' + (userCPUTime + systemCPUTime))
})`)}`

/** `jarside tally` over a million made-up records of four desks: its time and its memory. */
export async function measureTally() {
  const folder = mkdtempSync(join(tmpdir(), 'jarside-tally-'))
  try {
    const files = []
    for (let desk = 0; desk < DESKS; desk++) {
      const file = join(folder, `desk-${desk + 1}.jsonl`)
      await writeLog(file, (desk * RECORDS) / DESKS, ((desk + 1) * RECORDS) / DESKS)
      files.push(file)
    }
    const command = await builtCommand()
    const started = performance.now()
    const args = ['--import', WATCHED, command, 'tally', '--json', '--every-number', ...files]
    const { status, stdout, stderr } = spawnSync(process.execPath, args, {
      encoding: 'utf8',
      maxBuffer: 1e8
    })
    if (status !== 0) throw new Error(stderr)
    const { contacts, heard } = JSON.parse(stdout)
    return {
      records: heard.lines,
      entries: heard.entries,
      contacts,
      fileMegabytes: Math.round(
        files.reduce((sum, file) => sum + statSync(file).size, 0) / 1_000_000
      ),
      seconds: Math.round((performance.now() - started) / 10) / 100,
      processorSeconds: Math.round(Number(/ran (\d+)/.exec(stderr)?.[1]) / 10_000) / 100,
      megabytes: Math.round((Number(/held (\d+)/.exec(stderr)?.[1]) * 1024) / 1_000_000),
      goal: GOAL
    }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
