import type { TextFault, TextPair } from './pair.ts'
import { unlike } from './pair.ts'

/** The names in a text's `{{…}}`, in the order in which they stand. */
export const gapsIn = (text: string): readonly string[] =>
  [...text.matchAll(/\{\{\s*([^\s},]+)[^}]*\}\}/g)].map(([, name = '']) => name)

/** Braces that open or close no gap. */
const strayBraces = (text: string): readonly string[] =>
  text.replace(/\{\{\s*[^\s{},]+[^{}]*\}\}/g, '').match(/[{}]/g) ?? []

/** Every gap as often as the English has it, in its order, and no half of one. */
export function gapFaults({ english, target }: TextPair): readonly TextFault[] {
  const ours = gapsIn(english)
  const theirs = gapsIn(target)
  const other = unlike(
    'gaps',
    [...ours, ...strayBraces(english)],
    [...theirs, ...strayBraces(target)]
  )
  if (other) return [other]
  if (ours.join(' ') === theirs.join(' ')) return []
  return [{ rule: 'gaps', lacks: [ours.join(', ')], adds: [theirs.join(', ')] }]
}
