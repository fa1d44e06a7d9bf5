import type { Property } from '../property.ts'
import { proveRule } from '../prove-rule.ts'
import { standing } from '../proved.ts'

/** Every rule of the tree holds for every complete set of answers that it speaks of. */
export const rulesHold: Property = {
  id: 'rules-hold',
  kind: 'rule',
  needsWalks: true,
  prove(compiled, places) {
    const cases = compiled.tree.rules.map(rule => proveRule(compiled, rule, places).findings)
    return standing(this.id, this.kind, cases)
  }
}
