import { type ParseArgsConfig, parseArgs } from 'node:util'
import { nearestNames } from '../findings/nearest-name.ts'
import { BadUse, didYouMean } from './bad-use.ts'
import type { OpenProject } from './read-project.ts'
import type { Terminal } from './terminal.ts'

/** One command of the command line. */
export interface Command {
  readonly name: string
  /** One line for the list of commands. */
  readonly summary: string
  /** Its whole manual page. */
  readonly manual: string
  /** Gives the exit code. */
  run(args: readonly string[], terminal: Terminal, open: OpenProject): Promise<number>
}

type Options = NonNullable<ParseArgsConfig['options']>

/** Reads a command's arguments. @throws BadUse, in our words, where they do not fit its options. */
export function readArguments<T extends Options>(args: readonly string[], options: T) {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true, strict: true })
  } catch (error) {
    throw new BadUse(explain(error, args, options))
  }
}

function explain(error: unknown, args: readonly string[], options: Options): string {
  const names = Object.keys(options).map(name => `--${name}`)
  const strange = args.find(
    arg => arg.startsWith('-') && arg !== '--' && !names.includes(arg.split('=')[0] ?? arg)
  )
  if (strange !== undefined) {
    const near = didYouMean(nearestNames(strange.split('=')[0] ?? strange, names))
    return `There is no option \`${strange}\`.${near} Options: ${names.join(', ')}.`
  }
  const code = error instanceof Error && 'code' in error ? error.code : undefined
  if (code !== 'ERR_PARSE_ARGS_INVALID_OPTION_VALUE') throw error
  const wanting = Object.entries(options)
    .filter(([, { type }]) => type === 'string')
    .map(([name]) => `\`--${name}\``)
  return `An option has no value, or one that it cannot take. These need one: ${wanting.join(', ')}.`
}
