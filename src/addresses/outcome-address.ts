import { couldBe, couldBeTogether } from '../evaluate/could-be.ts'
import { freestUse } from '../evaluate/freest-use.ts'
import { outcomeToKeep } from '../evaluate/keep.ts'
import type { Report } from '../report/report.ts'
import type { Answers } from '../tree/answers.ts'
import type { Outcome } from '../tree/caution.ts'
import { lessFree, NOTHING_YET, useLevel } from '../tree/caution.ts'
import { type Tree, USES } from '../tree/tree.ts'
import { spoken } from '../tree/urgency.ts'
import { addressOf } from './route.ts'

/** An outcome by itself, as an address names it. */
export interface NamedOutcome {
  readonly outcome: Outcome
  /**
   * `whole`: all that one jar came to. `general`: what is said of such jars. `other-edition`: the
   * address was made with another edition, so that its notes mean nothing any more.
   */
  readonly standing: 'whole' | 'general' | 'other-edition'
}

const FINGERPRINT_LENGTH = 6

/** The verdicts of an outcome as they stand in an address: `pressure-hazard+normal-growth`. */
const verdictsOf = (tree: Tree, outcome: Outcome) => spoken(tree, outcome).join('+')

/**
 * What an outcome of one jar comes to, as a fragment: verdicts, use, notes by their number in the tree.
 * Only what follows from container and batch is in it: `outcomeToKeep` has made the outcome.
 */
export function writeOutcome(tree: Tree, outcome: Outcome, language: string): string {
  const names = notesOf(tree)
  const numbers = outcome.notes.map(note => names.indexOf(note)).sort((a, b) => a - b)
  const parts = [
    `${addressOf(tree.id, language)}@${tree.fingerprint.slice(0, FINGERPRINT_LENGTH)}`,
    verdictsOf(tree, outcome),
    outcome.use,
    ...(numbers.length > 0 ? [numbers.join('.')] : [])
  ]
  return parts.join('/')
}

/** The general sheet of an outcome's verdicts, short enough to be typed. */
export const writeGeneral = (tree: Tree, outcome: Outcome, language: string): string =>
  `${addressOf(tree.id, language)}/${verdictsOf(tree, outcome)}`

/**
 * The outcome of a finished walk that may leave the device; null when the jar alone says less than was
 * said: somebody needs help, or what was told of people leaves less to be drunk.
 */
export function outcomeToShare(
  tree: Tree,
  { answers, report }: { readonly answers: Answers; readonly report: Report | null }
): Outcome | null {
  if (report === null || report.outcome.person !== null) return null
  const kept = outcomeToKeep(tree, answers)
  const { container, batch, use } = report.outcome
  const same = kept.container === container && kept.batch === batch
  if (!same || useLevel(kept.use) < useLevel(use)) return null
  // With nobody's answers more may have been asked of the jar than was: then it comes to nothing whole.
  return couldBe(tree, kept) ? kept : null
}

/**
 * Reads `likely-mold`, `likely-mold/never`, `normal-growth/not-yet/3.17`. Null when no walk of the tree
 * gives that outcome: its verdicts together and, where it names one jar, its use and exactly its notes.
 */
export function readOutcome(
  tree: Tree,
  text: string,
  fingerprint: string | null
): NamedOutcome | null {
  const [names = '', use, numbers] = text.split('/')
  const general = generalOutcome(tree, names.split('+'))
  if (general === null) return null
  const named = USES.find(each => each === use)
  // A person is in no address of one jar: such a sheet is general.
  const bare = named === undefined || fingerprint === null || general.person !== null
  if (bare) return { outcome: general, standing: 'general' }
  if (fingerprint !== tree.fingerprint.slice(0, FINGERPRINT_LENGTH)) {
    return { outcome: general, standing: 'other-edition' }
  }
  const all = notesOf(tree)
  const notes = (numbers?.split('.') ?? []).flatMap(number =>
    /^\d+$/.test(number) ? (all[Number(number)] ?? []) : []
  )
  if (notes.length !== (numbers?.split('.') ?? []).length) return null
  const outcome = { ...general, use: named, notes }
  return couldBe(tree, outcome) ? { outcome, standing: 'whole' } : null
}

/**
 * What is said of such jars in general: no jar was looked at, so nothing is freed, and where a person
 * needs help nothing is drunk. Null unless every verdict is known, each track has at most one, and one
 * walk can give them all.
 */
export function generalOutcome(tree: Tree, verdicts: readonly string[]): Outcome | null {
  let outcome: Outcome = { ...NOTHING_YET, use: 'not-yet' }
  for (const id of verdicts) {
    const found = tree.verdicts.find(candidate => candidate.id === id)
    if (found === undefined || outcome[found.track] !== null) return null
    // What no such jar is ever used for is not promised by its general sheet either.
    const use = found.track === 'person' ? 'never' : freestUse(tree, id)
    outcome = { ...outcome, [found.track]: id, use: lessFree(outcome.use, use) }
  }
  return verdicts.length === 0 || !couldBeTogether(tree, verdicts) ? null : outcome
}

/** The notes of a tree in an order that its fingerprint fixes. */
const notesOf = (tree: Tree): readonly string[] => Object.keys(tree.advice.notes).sort()
