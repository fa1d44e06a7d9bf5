import type { Finding } from '../../findings/finding.ts'
import type { Places } from '../../findings/place.ts'
import type { Tree } from '../../tree/tree.ts'
import { found } from '../found.ts'
import type { Ledger } from '../property.ts'
import { faultsOf } from './faults.ts'
import { judge } from './judge.ts'
import { faultName } from './score.ts'

/** The listed slips that cannot be made: quickly told, since none of them has to be judged. */
export function unknownFaults(tree: Tree, places: Places): readonly Finding[] {
  const listed = Object.keys(tree.unfoundFaults)
  if (listed.length === 0) return []
  const made = new Set(faultsOf(tree).map(faultName))
  return listed
    .filter(name => !made.has(name))
    .map(name => found('fault-not-made', places[`unfound-faults/${name}`], { fault: name }))
}

/** The listed slips that something finds by now, or that lower no caution any more. */
export function closedFaults(
  tree: Tree,
  places: Places,
  ledger: Ledger | undefined
): readonly Finding[] {
  return faultsOf(tree)
    .filter(fault => Object.hasOwn(tree.unfoundFaults, faultName(fault)))
    .flatMap(fault => {
      const name = faultName(fault)
      const place = places[`unfound-faults/${name}`]
      const judged = judge(tree, fault, ledger)
      if (judged?.effect !== 'less cautious')
        return [found('fault-not-made', place, { fault: name })]
      if (judged.foundBy === null) return []
      return [found('fault-found', place, { fault: name, by: judged.foundBy })]
    })
}
