import type { Signal } from '../tree/tree.ts'

/** How a form of plain lines sets off parts of a text. */
export interface Emphasis {
  strong(text: string): string
  faint(text: string): string
  signal(signal: Signal, text: string): string
}

/** Plain text: every part as it is. */
export const PLAIN: Emphasis = {
  strong: text => text,
  faint: text => text,
  signal: (_, text) => text
}
