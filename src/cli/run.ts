import { readFileSync } from 'node:fs'
import { nearestNames } from '../findings/nearest-name.ts'
import { clean } from '../findings/wording.ts'
import { MissingText } from '../words/words.ts'
import { BadUse, didYouMean } from './bad-use.ts'
import { check } from './check.ts'
import { cites } from './cites.ts'
import type { Command } from './command.ts'
import { compareCommand } from './compare.ts'
import { faultText } from './fault-text.ts'
import { figures } from './figures.ts'
import { handout } from './handout.ts'
import { list } from './list.ts'
import { publish } from './publish.ts'
import { loadProject, type OpenProject } from './read-project.ts'
import { reckon } from './reckon.ts'
import { schema } from './schema.ts'
import { table } from './table.ts'
import { say, type Terminal } from './terminal.ts'
import { walkCommand } from './walk.ts'
import { withdraw } from './withdraw.ts'

const COMMANDS: readonly Command[] = [
  walkCommand,
  list,
  check,
  compareCommand,
  publish,
  withdraw,
  cites,
  reckon,
  handout,
  table,
  figures,
  schema
]

const MANUAL = `NAME
  jarside - decision trees for questions about a home ferment

USAGE
  jarside <command> [options]

COMMANDS
${COMMANDS.map(({ name, summary }) => `  ${name.padEnd(9)}${summary}`).join('\n')}

OPTIONS
  --help     show this page, or after a command that command's page
  --version  show the version

EXIT CODES
  0  answered, or nothing to report
  1  findings, or not finished where finishing was asked for
  2  not used as the manual page says`

/** Runs one command line and gives its exit code. Errors go to the terminal's error stream. */
export async function run(
  args: readonly string[],
  terminal: Terminal,
  open: OpenProject = loadProject
): Promise<number> {
  const [first, ...rest] = args
  if (first === '--version') {
    say(terminal.output, version())
    return 0
  }
  if (first === '--help' || first === 'help') {
    say(terminal.output, MANUAL)
    return 0
  }
  if (first === undefined) {
    say(terminal.errors, MANUAL)
    return 2
  }
  try {
    const command = COMMANDS.find(({ name }) => name === first)
    if (!command) throw unknownCommand(first)
    if (rest.includes('--help')) {
      say(terminal.output, command.manual)
      return 0
    }
    return await command.run(rest, terminal, open)
  } catch (error) {
    if (error instanceof MissingText) {
      say(terminal.errors, `${error.message} See: jarside check`)
      return 1
    }
    if (!(error instanceof BadUse) && process.env.JARSIDE_TRACE) throw error
    // It repeats what was typed, or a file's name, which may hold what steers a terminal.
    say(terminal.errors, cleanLines(error instanceof BadUse ? error.message : faultText(error)))
    return 2
  }
}

/** A message may hold a whole finding, of several lines. */
const cleanLines = (text: string) => text.split('\n').map(clean).join('\n')

function unknownCommand(given: string): BadUse {
  const names = COMMANDS.map(({ name }) => name)
  const near = didYouMean(nearestNames(given, names))
  return new BadUse(`There is no command \`${given}\`.${near} Commands: ${names.join(', ')}.`)
}

function version(): string {
  const manifest: unknown = JSON.parse(
    readFileSync(new URL('../../package.json', import.meta.url), 'utf8')
  )
  return typeof manifest === 'object' && manifest !== null && 'version' in manifest
    ? String(manifest.version)
    : 'unknown'
}
