import { footNumbers } from '../words/foot-numbers.ts'
import { withPhone } from '../words/outcome-lines.ts'
import type { Making } from './making.ts'

/** The two numbers that stand at the foot of every screen. */
export function footText({ words, office }: Making): string {
  return footNumbers(words, office?.country)
    .map(({ name, phone }) => withPhone(name, phone))
    .join(' · ')
}
