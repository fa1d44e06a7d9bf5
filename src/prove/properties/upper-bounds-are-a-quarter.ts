import { isUpperBound } from '../../tree/upper-bound.ts'
import { found } from '../found.ts'
import type { Property } from '../property.ts'
import { standing } from '../proved.ts'

/**
 * At least a quarter of the rules, and one at any rate, say what must not alarm: else a tree that always
 * alarms would keep all of its rules. Counted by such rules.
 */
export const upperBoundsAreAQuarter: Property = {
  id: 'upper-bounds-are-a-quarter',
  kind: 'shape',
  needsWalks: false,
  prove({ tree: { rules } }, places) {
    const upper = rules.filter(({ claim }) => isUpperBound(claim))
    const least = Math.max(1, Math.ceil(rules.length / 4))
    const clear = upper.map(() => [])
    if (upper.length >= least) return standing(this.id, this.kind, clear)
    const facts = { rules: rules.length, upper: upper.length, least }
    const finding = found('too-few-upper-bounds', places[`rules/${rules[0]?.id}`], facts)
    return standing(this.id, this.kind, [...clear, [finding]])
  }
}
