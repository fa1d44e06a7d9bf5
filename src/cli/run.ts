import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { nearestNames } from '../findings/nearest-name.ts'
import { clean } from '../findings/wording.ts'
import { MissingText } from '../words/words.ts'
import { BadUse, didYouMean } from './bad-use.ts'
import { COMMANDS, commandNamed } from './commands.ts'
import { faultText } from './fault-text.ts'
import { loadProject, type OpenProject, PROJECT } from './read-project.ts'
import { say, type Terminal } from './terminal.ts'

async function manual(): Promise<string> {
  const commands = await Promise.all(Object.values(COMMANDS).map(command => command()))
  return `NAME
  jarside - decision trees for questions about a home ferment

USAGE
  jarside <command> [options]

COMMANDS
${commands.map(({ name, summary }) => `  ${name.padEnd(9)}${summary}`).join('\n')}

OPTIONS
  --help     show this page, or after a command that command's page
  --version  show the version

EXIT CODES
  0  answered, or nothing to report
  1  findings, or not finished where finishing was asked for
  2  not used as the manual page says`
}

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
    say(terminal.output, await manual())
    return 0
  }
  if (first === undefined) {
    say(terminal.errors, await manual())
    return 2
  }
  try {
    const command = await commandNamed(first)
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
  const names = Object.keys(COMMANDS)
  const near = didYouMean(nearestNames(given, names))
  return new BadUse(`There is no command \`${given}\`.${near} Commands: ${names.join(', ')}.`)
}

function version(): string {
  const manifest: unknown = JSON.parse(readFileSync(join(PROJECT, 'package.json'), 'utf8'))
  return typeof manifest === 'object' && manifest !== null && 'version' in manifest
    ? String(manifest.version)
    : 'unknown'
}
