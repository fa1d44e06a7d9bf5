import { createReadStream, existsSync, statSync } from 'node:fs'
import { join } from 'node:path'
import type { Readable } from 'node:stream'
import { hideSmall, rowsOf, type ShownReport, showAll } from '../contacts/hide-small.ts'
import { LOG_TABLES } from '../contacts/log-report.ts'
import { PackedLog } from '../contacts/packed-log.ts'
import { readLine } from '../contacts/read-entry.ts'
import { type NameOf, reportCsv } from '../contacts/report-rows.ts'
import { contactKeyName } from '../words/contact-words.ts'
import { createWords, SOURCE_TAG, type Words } from '../words/words.ts'
import { BadUse } from './bad-use.ts'
import { type Command, readArguments } from './command.ts'
import { eachLine } from './each-line.ts'
import { TALLY_MANUAL } from './tally-manual.ts'
import { tallySpan } from './tally-span.ts'
import { say } from './terminal.ts'
import { writeWhole } from './write-file.ts'

/** How many of the lines that cannot be read are shown. */
const SHOWN = 5

/** `jarside tally`: one report over the logs of several desks. */
export const tally: Command = {
  name: 'tally',
  summary: 'add up the contact logs of several desks',
  manual: TALLY_MANUAL,
  async run(args, terminal, open) {
    const { values, positionals } = readArguments(args, {
      quarter: { type: 'string' },
      'fiscal-year': { type: 'string' },
      year: { type: 'string' },
      from: { type: 'string' },
      to: { type: 'string' },
      csv: { type: 'boolean', default: false },
      json: { type: 'boolean', default: false },
      'every-number': { type: 'boolean', default: false },
      bad: { type: 'string' },
      in: { type: 'string' },
      help: { type: 'boolean' }
    })
    const span = tallySpan(values)
    if (values.csv && values.json) throw new BadUse('Choose one of `--csv` and `--json`.')
    if (positionals.length === 0) {
      throw new BadUse('Name at least one file of JSON Lines, or `-` for the input.')
    }
    for (const file of positionals) mustBeFile(file)
    const log = new PackedLog()
    const bad: BadLine[] = []
    let lines = 0
    for (const file of positionals) {
      const source = file === '-' ? terminal.input : createReadStream(file)
      lines += await addLines(source, file, log, bad)
    }
    const report = log.report(span)
    const shown = values['every-number'] ? showAll(report) : hideSmall(report)
    const heard = { lines, bad: bad.length, entries: log.entries, editions: log.edited }
    if (values.json) say(terminal.output, JSON.stringify({ ...shown, heard }, null, 2))
    else {
      const { loaded, office } = await open(values.in)
      const words = createWords(loaded.words, SOURCE_TAG)
      const counties = office?.log?.counties ?? []
      const nameOf: NameOf = (table, key) => contactKeyName(words, counties, table, key)
      if (values.csv) terminal.output.write(reportCsv(shown, nameOf))
      else say(terminal.output, ...reportText(shown, words, nameOf))
    }
    say(
      terminal.errors,
      `${lines} lines, ${log.entries} entries, ${log.edited} more versions of them.`
    )
    if (bad.length === 0) return 0
    const first = bad.slice(0, SHOWN).map(({ file, line, why }) => `  ${file}:${line}: ${why}.`)
    const rest = bad.length > SHOWN ? [`  and ${bad.length - SHOWN} more`] : []
    say(
      terminal.errors,
      `${bad.length} lines cannot be read and are not counted:`,
      ...first,
      ...rest
    )
    if (values.bad === undefined) {
      say(terminal.errors, 'To mend them: --bad <file> writes them all to a file.')
    } else {
      writeWhole(values.bad, `${bad.map(({ text }) => text).join('\n')}\n`)
    }
    return 1
  }
}

/** A line that cannot be read, as it stands. */
interface BadLine {
  readonly file: string
  readonly line: number
  readonly text: string
  readonly why: string
}

/** Adds every line of a file; gives how many there are. An empty line is none. */
async function addLines(
  source: Readable,
  file: string,
  log: PackedLog,
  bad: BadLine[]
): Promise<number> {
  let count = 0
  await eachLine(source, (text, line) => {
    if (text.trim() === '') return
    count += 1
    const read = readLine(text)
    if ('entry' in read) log.add(read.entry)
    else bad.push({ file, line, text, why: read.fault })
  })
  return count
}

function mustBeFile(file: string): void {
  if (file === '-' || (existsSync(file) && !statSync(file).isDirectory())) return
  throw new BadUse(
    `There is no file \`${file}\`. Name files of JSON Lines: ${join('logs', 'desk-1.jsonl')}.`
  )
}

function reportText(report: ShownReport, words: Words, nameOf: NameOf): readonly string[] {
  const shown = (count: number | null) =>
    count === null ? words.t('ui:contacts.hidden') : count.toLocaleString('en-US')
  const figure = (name: string, count: number | null) => `${shown(count).padStart(12)}  ${name}`
  const hours = `${(report.volunteerMinutes / 60).toFixed(1).padStart(12)}  ${words.t('ui:contacts.figures.hours')}`
  return [
    words.t('ui:contacts.span.days', { from: report.from, until: report.until }),
    figure(words.t('ui:contacts.figures.contacts'), report.contacts),
    figure(words.t('ui:contacts.figures.records'), report.records),
    figure(words.t('ui:contacts.figures.minutes'), report.minutes),
    hours,
    ...LOG_TABLES.flatMap(table => [
      '',
      words.t(`ui:contacts.tables.${table}`),
      ...rowsOf(report.tables[table]).map(([key, count]) => figure(nameOf(table, key), count))
    ])
  ]
}
