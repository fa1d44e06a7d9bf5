import { createInterface } from 'node:readline'
import type { Terminal } from './terminal.ts'

/** Reads a person's lines, one at a time. */
export interface LineReader {
  /** The next line, trimmed; null once the input has ended (Ctrl-C, Ctrl-D). */
  next(): Promise<string | null>
  close(): void
}

/** Reads lines from a terminal. Lines that arrive before they are asked for wait their turn. */
export function readLines(terminal: Terminal): LineReader {
  const lines: string[] = []
  const waiting: ((line: string | null) => void)[] = []
  let ended = false
  const reader = createInterface({
    input: terminal.input,
    output: terminal.output,
    terminal: terminal.interactive,
    prompt: '> '
  })
  reader.on('line', line => {
    const next = waiting.shift()
    if (next) next(line)
    else lines.push(line)
  })
  reader.on('close', () => {
    ended = true
    for (const next of waiting.splice(0)) next(null)
  })
  // Without a listener readline would only pause on Ctrl-C, and the process would hang.
  reader.on('SIGINT', () => reader.close())
  return {
    async next() {
      const line = lines.shift() ?? (ended ? null : await prompted())
      return line === null ? null : line.trim()
    },
    close: () => reader.close()
  }

  function prompted(): Promise<string | null> {
    reader.prompt()
    return new Promise(resolve => waiting.push(resolve))
  }
}
