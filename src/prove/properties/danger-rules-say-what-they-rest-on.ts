import type { Rule, Tree } from '../../tree/tree.ts'
import { dangersOf } from '../danger.ts'
import { found } from '../found.ts'
import type { Ledger, LedgerSource, Property } from '../property.ts'
import { standing, undecided } from '../proved.ts'
import { NO_LEDGER } from './sources-are-present.ts'

/**
 * A rule about a danger sign, or one that has a batch discarded or never used, says in its basis when
 * none of its sources was read in the original: such a rule is not `published`, and one that rests only
 * on copies, on what others told or on memory is `relayed` or `memory`. Counted by such rules.
 */
export const dangerRulesSayWhatTheyRestOn: Property = {
  id: 'danger-rules-say-what-they-rest-on',
  kind: 'shape',
  needsWalks: false,
  prove({ tree }, places, ledger) {
    if (ledger === undefined) return undecided(this.id, this.kind, NO_LEDGER)
    const cases = tree.rules
      .filter(rule => isOfDanger(tree, rule))
      .map(rule => {
        const least = basisNeeded(rule, ledger)
        if (least === null || least.includes(rule.basis)) return []
        const facts = { rule: rule.id, basis: rule.basis, sources: rule.because, least }
        return [found('rests-on-too-little', places[`rules/${rule.id}`], facts)]
      })
    return standing(this.id, this.kind, cases)
  }
}

function isOfDanger(tree: Tree, { when, claim }: Rule): boolean {
  const speaksOfOne = dangersOf(tree).some(({ observation, answer }) =>
    when.some(
      one =>
        one.kind !== 'measure' &&
        one.observation === observation &&
        (one.kind === 'choice'
          ? one.among.includes(answer)
          : one.sign === answer && one.among.some(value => value !== 'no'))
    )
  )
  if (speaksOfOne || claim.kind === 'note') return speaksOfOne
  if (claim.kind === 'at-least') {
    return tree.verdicts.some(({ id, ceiling }) => id === claim.verdict && ceiling === 'never')
  }
  return (claim.kind === 'use-at-most' || claim.kind === 'use-is') && claim.use === 'never'
}

/** The bases that say what the sources are, when none of them was read in the original. */
function basisNeeded({ because }: Rule, ledger: Ledger): readonly Rule['basis'][] | null {
  const sources = because.flatMap(id => ledger[id] ?? [])
  if (sources.length === 0 || sources.some(isRead)) return null
  if (sources.some(standsForItself)) return ['common-practice', 'own-caution', 'relayed', 'memory']
  return sources.every(isMemory) ? ['memory'] : ['relayed', 'memory']
}

/** Common practice and our own caution are no publications: they say of themselves what they are. */
const standsForItself = ({ kind }: LedgerSource): boolean =>
  kind === 'common-practice' || kind === 'own-caution'

const isMemory = ({ kind, checked }: LedgerSource): boolean =>
  kind === 'from-memory' || checked.how === 'memory'

const isRead = ({ kind, copy, checked }: LedgerSource): boolean =>
  (kind === 'publication' || kind === 'regulation') && copy === 'original' && checked.how === 'read'
