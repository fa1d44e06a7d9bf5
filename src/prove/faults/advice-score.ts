import { must } from '../../tree/must.ts'
import type { Tree } from '../../tree/tree.ts'
import { whatMustBeSaidIsSaid } from '../properties/what-must-be-said-is-said.ts'
import type { Ledger, Property } from '../property.ts'
import { PROPERTIES, withOpenCases } from '../prove.ts'
import { comesLate } from '../said/order.ts'
import { SaidDiagrams, saidBeside } from '../said/said.ts'
import { ADVICE_KINDS, type AdviceFault, adviceFaultsOf } from './advice-faults.ts'
import { letGoOf } from './let-go-of.ts'

/** How many slips in what a tree says its rules and laws find. */
export interface AdviceScore {
  readonly tree: string
  /** Slips with which some outcome says something else, or in another order. */
  readonly faults: number
  readonly found: number
  readonly byKind: Readonly<Record<string, { readonly faults: number; readonly found: number }>>
  readonly survivors: readonly string[]
}

/** The laws of what is said, and the rules of it: what else there is reads no step. */
const SPOKEN: readonly Property[] = [
  whatMustBeSaidIsSaid,
  ...PROPERTIES.filter(({ id }) =>
    [
      'one-thing-is-done-to-one-thing',
      'kept-food-stays-as-it-is',
      'nobody-goes-near-what-may-burst',
      'what-is-shut-is-chilled-first',
      'the-most-urgent-is-said-first',
      'what-cannot-wait-is-not-put-off',
      'a-wait-names-its-time',
      'every-missing-check-is-named',
      'every-wait-ends',
      'nothing-ruled-out-is-presumed',
      'what-is-found-out-matters'
    ].includes(id)
  )
]

/** Vertices that faults share before they are made anew. */
const MOST_SHARED = 1_000_000

export const adviceFaultName = ({ kind, at }: AdviceFault): string => `${kind}: ${at}`

/** A slip in what a tree says, and the property that finds it. */
interface AdviceJudged {
  readonly foundBy: string | null
}

/** Judges a slip by the properties of what is said; null where nothing is said otherwise. */
export function judgeAdvice(
  tree: Tree,
  fault: AdviceFault,
  ledger: Ledger | undefined,
  whole: SaidDiagrams = new SaidDiagrams(tree)
): AdviceJudged | null {
  const after = saidBeside(fault.tree, whole)
  if (!saysOtherwise(whole, after, fault)) return null
  const found = SPOKEN.find(
    one => withOpenCases(tree, {}, one.prove(after.compiled, {}, ledger)).standing === 'refuted'
  )
  return { foundBy: found?.id ?? null }
}

/** Makes every slip in what a tree says, or every nth, and counts what finds it. */
export function adviceScoreOf(tree: Tree, ledger: Ledger | undefined, every = 1): AdviceScore {
  const byKind = Object.fromEntries(ADVICE_KINDS.map(kind => [kind, { faults: 0, found: 0 }]))
  const survivors: string[] = []
  let whole = new SaidDiagrams(tree)
  letGoOf(
    () => adviceFaultsOf(tree),
    (fault, index) => {
      if (index % every !== 0) return
      if (whole.compiled.diagrams.count > MOST_SHARED) whole = new SaidDiagrams(tree)
      const judged = judgeAdvice(tree, fault, ledger, whole)
      if (judged === null) return
      const of = must(byKind[fault.kind], 'kind of slip')
      of.faults++
      if (judged.foundBy !== null) of.found++
      else survivors.push(adviceFaultName(fault))
    }
  )
  const sum = (key: 'faults' | 'found') => Object.values(byKind).reduce((n, of) => n + of[key], 0)
  return { tree: tree.id, faults: sum('faults'), found: sum('found'), byKind, survivors }
}

/** Whether some outcome says something else, or says a step before another that it followed. */
function saysOtherwise(
  before: SaidDiagrams,
  after: SaidDiagrams,
  { kind, step, before: first }: AdviceFault
): boolean {
  if (kind === 'moved step' && step !== undefined && first !== undefined) {
    const late = (said: SaidDiagrams) =>
      comesLate(
        said,
        said.spots.filter(spot => spot.step === step),
        said.spots.filter(spot => spot.step === first)
      )
    return late(before) !== late(after) || inEmergency(after, step)
  }
  const heard = (said: SaidDiagrams) =>
    new Map(said.sentences.map(({ kind: of, id, said: where }) => [`${of} ${id}`, where]))
  const [was, is] = [heard(before), heard(after)]
  const ids = new Set([...was.keys(), ...is.keys()])
  if ([...ids].some(id => (was.get(id) ?? 0) !== (is.get(id) ?? 0))) return true
  return step !== undefined && inEmergency(after, step)
}

/** Diagrams are about answers without an emergency that ends the walk at once: its steps are said there. */
function inEmergency({ compiled }: SaidDiagrams, step: string): boolean {
  return compiled.tree.advice.verdicts.emergency?.doNow.includes(step) === true
}
