import type { Diagrams } from '../../diagrams/diagram.ts'
import type { Open } from '../../diagrams/reach.ts'
import type { TreeDiagrams } from '../../diagrams/tree-diagrams.ts'
import { verdictsOf } from '../../tree/caution.ts'
import { lensName } from '../../tree/lens.ts'
import { must } from '../../tree/must.ts'
import { type Claim, type Rule, type Tree, USES } from '../../tree/tree.ts'
import { breachOf, claimText } from '../claim.ts'
import { found } from '../found.ts'
import { boxesOf } from '../open.ts'
import type { Property } from '../property.ts'
import { standing } from '../proved.ts'

/**
 * No two rules, those of the pieces among them, make the same claim of the same sets of answers, however
 * each is written. Counted by rules.
 */
export const rulesAreSaidOnce: Property = {
  id: 'rules-are-said-once',
  kind: 'shape',
  needsWalks: false,
  prove(compiled, places) {
    const { rules } = compiled.tree
    const claims = rules.map(({ claim }) => whatItForbids(compiled.tree, claim))
    const said = new Map<string, string>()
    const cases = rules.map((rule, index) => {
      const claim = must(claims[index], 'claim')
      if (claims.indexOf(claim) === claims.lastIndexOf(claim)) return []
      // Equal sets of answers are the same vertex; a rule that speaks of none is found as such.
      const where = whereItSpeaks(compiled, rule)
      if (where === 0) return []
      const first = said.get(`${where} ${claim}`)
      if (first === undefined) {
        said.set(`${where} ${claim}`, rule.id)
        return []
      }
      const facts = { rule: rule.id, first, claim: claimText(rule.claim) }
      return [found('rule-said-twice', places[`rules/${rule.id}`], facts)]
    })
    return standing(this.id, this.kind, cases)
  }
}

/** The levels that break a claim: `use-is: never` and `use-at-most: never` forbid the same. */
function whatItForbids(tree: Tree, claim: Claim): string {
  const { lens, breaks } = breachOf(tree, claim)
  const levels =
    typeof lens === 'object' ? 2 : lens === 'use' ? USES.length : verdictsOf(tree, lens).length + 1
  return `${lensName(lens)} ${Array.from({ length: levels }, (_, level) => breaks(level))}`
}

/** The sets of answers that a rule speaks of: 1 there, 0 elsewhere. */
const whereItSpeaks = (compiled: TreeDiagrams, rule: Rule): number =>
  boxesOf(compiled, rule).reduce(
    (sum, box) => compiled.diagrams.join(sum, diagramOf(compiled.diagrams, box)),
    compiled.diagrams.constant(0)
  )

const diagramOf = (diagrams: Diagrams, box: Open): number =>
  box.reduceRight(
    (below, open, variable) =>
      diagrams.select(
        variable,
        open.map(is => (is ? below : 0))
      ),
    diagrams.constant(1)
  )
