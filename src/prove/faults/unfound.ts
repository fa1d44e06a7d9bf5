import type { Finding } from '../../findings/finding.ts'
import type { Places } from '../../findings/place.ts'
import type { Tree } from '../../tree/tree.ts'
import { found } from '../found.ts'
import type { Ledger } from '../property.ts'
import { adviceFaultsOf } from './advice-faults.ts'
import { adviceFaultName, judgeAdvice } from './advice-score.ts'
import { faultsOf } from './faults.ts'
import { judge } from './judge.ts'
import { faultName } from './score.ts'

/** The listed slips that cannot be made: quickly told, since none of them has to be judged. */
export function unknownFaults(tree: Tree, places: Places): readonly Finding[] {
  const listed = Object.keys(tree.unfoundFaults)
  if (listed.length === 0) return []
  const slips = namesOfFaults(tree)
  return listed
    .filter(name => !slips.has(name))
    .map(name => found('fault-not-made', places[`unfound-faults/${name}`], { fault: name }))
}

/** Every slip by its name, in what a tree asks and in what it says. */
export const namesOfFaults = (tree: Tree): ReadonlySet<string> =>
  new Set([...faultsOf(tree).map(faultName), ...adviceFaultsOf(tree).map(adviceFaultName)])

/** The listed slips that something finds by now, or that change nothing any more. */
export function closedFaults(
  tree: Tree,
  places: Places,
  ledger: Ledger | undefined
): readonly Finding[] {
  const listed = (name: string) => Object.hasOwn(tree.unfoundFaults, name)
  const asked = faultsOf(tree)
    .filter(fault => listed(faultName(fault)))
    .map(fault => {
      const judged = judge(tree, fault, ledger)
      const counts = judged?.effect === 'less cautious'
      return { name: faultName(fault), foundBy: counts ? judged.foundBy : undefined }
    })
  const said = adviceFaultsOf(tree)
    .filter(fault => listed(adviceFaultName(fault)))
    .map(fault => ({
      name: adviceFaultName(fault),
      foundBy: judgeAdvice(tree, fault, ledger)?.foundBy
    }))
  return [...asked, ...said].flatMap(({ name, foundBy }) => {
    const place = places[`unfound-faults/${name}`]
    if (foundBy === undefined) return [found('fault-not-made', place, { fault: name })]
    if (foundBy === null) return []
    return [found('fault-found', place, { fault: name, by: foundBy })]
  })
}
