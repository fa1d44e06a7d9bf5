import type { FindingCode } from '../findings/catalogue.ts'
import type { Facts, Finding } from '../findings/finding.ts'
import type { Place } from '../findings/place.ts'
import type { Answers } from '../tree/answers.ts'
import type { Tree } from '../tree/tree.ts'
import { witnessOf } from './witness.ts'

/** A finding of the prover's. */
export function found(code: FindingCode, place: Place | undefined, facts: Facts): Finding {
  return { code, place: place ?? null, because: [], facts }
}

/** A finding with the set of answers that shows it. */
export function shownBy(tree: Tree, answers: Answers, finding: Finding): Finding {
  return { ...finding, witness: witnessOf(tree, answers), answers }
}
