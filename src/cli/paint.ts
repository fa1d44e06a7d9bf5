import type { Signal } from '../tree/tree.ts'
import type { Emphasis } from '../words/emphasis.ts'

/** How a terminal sets off parts of a text; without color every one returns its text unchanged. */
export type Paint = Emphasis

// The standard's red, orange, yellow and blue. No green: it says something that this tool never says.
const CODES: Readonly<Record<Signal, string>> = {
  danger: '1;97;41',
  warning: '1;30;48;5;208',
  caution: '1;30;43',
  notice: '1;97;44',
  none: '1'
}

/** Paint for a terminal with color, or without. The words carry the meaning either way. */
export function createPaint(colors: boolean): Paint {
  const wrap = (codes: string, text: string) => (colors ? `\u001b[${codes}m${text}\u001b[0m` : text)
  return {
    strong: text => wrap('1', text),
    faint: text => wrap('2', text),
    signal: (signal, text) => wrap(CODES[signal], ` ${text} `).trim()
  }
}
