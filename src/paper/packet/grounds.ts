import type { Basis } from '../../tree/tree.ts'
import { groundOf } from '../../words/known.ts'
import { entriesOf, type SourceLedger } from '../../words/sources.ts'

/** What no publication carries: a specialist looks at it first. */
export type WeakGround = Extract<Basis, 'own-caution' | 'memory' | 'common-practice'>

const WEAK: readonly WeakGround[] = ['own-caution', 'memory', 'common-practice']

export const isWeak = (ground: Basis): ground is WeakGround => WEAK.some(weak => weak === ground)

/** The weak grounds among what is cited, each once. */
export function weakAmong(cited: readonly string[], sources: SourceLedger): readonly WeakGround[] {
  const grounds = entriesOf(cited, sources).map(groundOf)
  return WEAK.filter(weak => grounds.includes(weak))
}

/** How the words of this project tell that others hold otherwise; `docs/review-packet.md` says so to authors. */
const OTHERWISE =
  /\b(?:some|other) (?:guides|recipes|experts)\b|\bexperts differ\b|\bsome (?:say|see)\b|\bstricter than\b/i

/** Whether a text itself says that sources differ. */
export const saysOtherwise = (text: string): boolean => OTHERWISE.test(text)
