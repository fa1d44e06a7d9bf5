import { TreeDiagrams } from '../../diagrams/tree-diagrams.ts'
import type { Tree } from '../../tree/tree.ts'
import type { Ledger } from '../property.ts'
import { PROPERTIES } from '../prove.ts'
import { type Fault, faultsOf } from './faults.ts'
import { judge } from './judge.ts'
import { letGoOf } from './let-go-of.ts'

/** How many of the slips that make a tree less cautious its rules and laws find. */
export interface Score {
  readonly tree: string
  /** Slips that make some outcome less cautious. */
  readonly faults: number
  readonly found: number
  /** The names of those that nothing finds. */
  readonly survivors: readonly string[]
}

/** Vertices that faults share before they are made anew. */
const MOST_SHARED = 400_000

/** The name of a fault: what is done, and where. */
export const faultName = ({ kind, at }: Fault): string => `${kind}: ${at}`

/** Makes every fault of a tree, or every nth, and counts what finds those that lower its caution. */
export function scoreOf(tree: Tree, ledger: Ledger | undefined, every = 1): Score {
  const survivors: string[] = []
  let faults = 0
  let whole = new TreeDiagrams(tree)
  letGoOf(
    () => faultsOf(tree),
    (fault, index) => {
      if (index % every !== 0) return
      // Vertices are never given back: what other faults left behind is dropped from time to time.
      if (whole.diagrams.count > MOST_SHARED) whole = new TreeDiagrams(tree)
      const judged = judge(tree, fault, ledger, PROPERTIES, whole)
      if (judged?.effect !== 'less cautious') return
      faults++
      if (judged.foundBy === null) survivors.push(faultName(fault))
    }
  )
  return { tree: tree.id, faults, found: faults - survivors.length, survivors }
}
