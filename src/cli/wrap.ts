import { stripVTControlCharacters } from 'node:util'

/** What a line begins with before its words: an indent, a number of a list, a dash. */
const LEAD = /^\s*(?:(?:\d+\.?|[-u])\s+)?/

/** Breaks a line between words at a width, its later parts under the first word. */
export function wrap(line: string, width: number | null): string {
  if (width === null || shownLength(line) <= width) return line
  const [lead = ''] = LEAD.exec(line) ?? []
  const [first = '', ...words] = line.slice(lead.length).split(' ')
  const lines: string[] = []
  let now = lead + first
  for (const word of words) {
    if (shownLength(now) + 1 + shownLength(word) <= width) {
      now = `${now} ${word}`
    } else {
      lines.push(now)
      now = ' '.repeat(lead.length) + word
    }
  }
  return [...lines, now].join('\n')
}

const shownLength = (text: string): number => stripVTControlCharacters(text).length
