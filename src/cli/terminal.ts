import type { Readable, Writable } from 'node:stream'
import { wrap } from './wrap.ts'

/** What a command reads from and writes to; the tests give their own streams and their own day. */
export interface Terminal {
  readonly input: Readable
  readonly output: Writable
  readonly errors: Writable
  /** A person sits at both ends: only then may a command ask anything. */
  readonly interactive: boolean
  readonly colors: boolean
  /** Where a line of prose is broken between words; null where the reader is a program or a file. */
  readonly columns: number | null
  readonly today: Date
}

/** The terminal of this very process. Color only where somebody looks and nobody objects (NO_COLOR). */
export function processTerminal(): Terminal {
  const { stdin, stdout, stderr, env } = process
  const objected = (env.NO_COLOR ?? '') !== '' || env.TERM === 'dumb'
  return {
    input: stdin,
    output: stdout,
    errors: stderr,
    interactive: stdin.isTTY === true && stdout.isTTY === true,
    colors: stdout.isTTY === true && !objected,
    columns: stdout.isTTY === true ? Math.max(40, Math.min(stdout.columns, 100)) : null,
    today: new Date()
  }
}

/** Writes lines of prose to the terminal's output, broken where its width asks for it. */
export function print(terminal: Terminal, ...lines: readonly string[]): void {
  say(terminal.output, ...lines.map(line => wrap(line, terminal.columns)))
}

/** Writes lines to a stream, each ended. */
export function say(stream: Writable, ...lines: readonly string[]): void {
  stream.write(`${lines.join('\n')}\n`)
}
