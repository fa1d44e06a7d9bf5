import { GRAMMARS } from './grammars.ts'

/** What is left of a part without the words that take something back. */
export interface Correction {
  readonly text: string
  readonly corrects: boolean
}

const all = (of: 'corrections' | 'refusals'): string =>
  Object.values(GRAMMARS)
    .flatMap(grammar => grammar[of])
    .join('|')

/** "No wait", "sorry", "I mean"; and a "no" before somebody goes on: "no it smells like vinegar". */
const TAKES_BACK = new RegExp(`^(?:(?:${all('corrections')})(?![\\p{L}\\d])[\\s,:]*)+`, 'iu')
const REFUSES = new RegExp(`^no[\\s,]+(?=(?:${all('refusals')})(?![\\p{L}\\d]))`, 'iu')

/** Takes from the beginning of a part the words with which its speaker corrects what was said before. */
export function correctionIn(part: string): Correction {
  const first = part.trim().replace(/[’‘]/g, "'")
  const after = first.replace(TAKES_BACK, '').replace(REFUSES, '')
  const text = after.replace(TAKES_BACK, '')
  // A "no" by itself answers whatever was asked; what follows it corrects.
  if (/^no$/i.test(text)) return { text: '', corrects: true }
  return { text, corrects: text !== first }
}
