import { TooManyVertices } from '../diagrams/diagram.ts'
import { diagramsOf, type TreeDiagrams } from '../diagrams/tree-diagrams.ts'
import type { Places } from '../findings/place.ts'
import type { Tree } from '../tree/tree.ts'
import { found } from './found.ts'
import { aSecondAnswerNeverReassures } from './properties/a-second-answer-never-reassures.ts'
import { aWaitNamesItsTime } from './properties/a-wait-names-its-time.ts'
import { adviceIsDueForReview } from './properties/advice-is-due-for-review.ts'
import { anUnsureDangerSignIsNotGentle } from './properties/an-unsure-danger-sign-is-not-gentle.ts'
import { answersAreListedByCaution } from './properties/answers-are-listed-by-caution.ts'
import { answersReachAnOutcome } from './properties/answers-reach-an-outcome.ts'
import { dangerRulesSayWhatTheyRestOn } from './properties/danger-rules-say-what-they-rest-on.ts'
import { dangerSignsAreCovered } from './properties/danger-signs-are-covered.ts'
import { everyMissingCheckIsNamed } from './properties/every-missing-check-is-named.ts'
import { everyWaitEnds } from './properties/every-wait-ends.ts'
import { keptFoodStaysAsItIs } from './properties/kept-food-stays-as-it-is.ts'
import { noCircle } from './properties/no-circle.ts'
import { noDeadEnd } from './properties/no-dead-end.ts'
import { noIdleQuestion } from './properties/no-idle-question.ts'
import { noIdleSign } from './properties/no-idle-sign.ts'
import { nobodyGoesNearWhatMayBurst } from './properties/nobody-goes-near-what-may-burst.ts'
import { notKnowingNeverReassures } from './properties/not-knowing-never-reassures.ts'
import { nothingRuledOutIsPresumed } from './properties/nothing-ruled-out-is-presumed.ts'
import { oneThingIsDoneToOneThing } from './properties/one-thing-is-done-to-one-thing.ts'
import { questionsAreReached } from './properties/questions-are-reached.ts'
import { rangesLeaveNoGap } from './properties/ranges-leave-no-gap.ts'
import { rulesAreSaidOnce } from './properties/rules-are-said-once.ts'
import { rulesHold } from './properties/rules-hold.ts'
import { sourcesArePresent } from './properties/sources-are-present.ts'
import { theMostUrgentIsSaidFirst } from './properties/the-most-urgent-is-said-first.ts'
import { theReasonIsSaid } from './properties/the-reason-is-said.ts'
import { upperBoundsAreAQuarter } from './properties/upper-bounds-are-a-quarter.ts'
import { verdictsAreGiven } from './properties/verdicts-are-given.ts'
import { whatCannotWaitIsNotPutOff } from './properties/what-cannot-wait-is-not-put-off.ts'
import { whatIsFoundOutMatters } from './properties/what-is-found-out-matters.ts'
import { whatIsShutIsChilledFirst } from './properties/what-is-shut-is-chilled-first.ts'
import { whatMustBeSaidIsSaid } from './properties/what-must-be-said-is-said.ts'
import type { Ledger, Property } from './property.ts'
import { type Proved, undecided } from './proved.ts'

/** What must be so of every tree, in the order in which an author wants to read it. */
export const PROPERTIES: readonly Property[] = [
  noDeadEnd,
  noCircle,
  rangesLeaveNoGap,
  questionsAreReached,
  answersReachAnOutcome,
  verdictsAreGiven,
  rulesHold,
  dangerSignsAreCovered,
  notKnowingNeverReassures,
  anUnsureDangerSignIsNotGentle,
  noIdleQuestion,
  noIdleSign,
  upperBoundsAreAQuarter,
  rulesAreSaidOnce,
  sourcesArePresent,
  dangerRulesSayWhatTheyRestOn,
  adviceIsDueForReview,
  answersAreListedByCaution,
  aSecondAnswerNeverReassures,
  oneThingIsDoneToOneThing,
  keptFoodStaysAsItIs,
  nobodyGoesNearWhatMayBurst,
  whatIsShutIsChilledFirst,
  theMostUrgentIsSaidFirst,
  whatCannotWaitIsNotPutOff,
  theReasonIsSaid,
  aWaitNamesItsTime,
  everyMissingCheckIsNamed,
  everyWaitEnds,
  nothingRuledOutIsPresumed,
  whatIsFoundOutMatters,
  whatMustBeSaidIsSaid
]

/**
 * How every property of a tree stands, over its whole answer space. Without the project's sources what
 * rests on them is not decided.
 */
export function prove(tree: Tree, places: Places = {}, ledger?: Ledger): readonly Proved[] {
  return proveWith(diagramsOf(tree), places, ledger)
}

/** The same, by diagrams that were made already. */
export function proveWith(
  compiled: TreeDiagrams,
  places: Places = {},
  ledger?: Ledger,
  properties = PROPERTIES
): readonly Proved[] {
  const ends = [noDeadEnd, noCircle].every(
    property => property.prove(compiled, places, ledger).standing === 'proved'
  )
  return properties.map(property => {
    if (property.needsWalks && !ends) {
      return undecided(property.id, property.kind, 'a walk does not come to an end')
    }
    try {
      return withOpenCases(compiled.tree, places, property.prove(compiled, places, ledger))
    } catch (error) {
      if (!(error instanceof TooManyVertices)) throw error
      return undecided(property.id, property.kind, error.message)
    }
  })
}

/** Leaves out what the tree lists as open; what it lists and is not is found. */
export function withOpenCases({ openCases }: Tree, places: Places, proved: Proved): Proved {
  const listed = openCases[proved.property] ?? {}
  const shown = new Set(proved.findings.map(({ facts }) => String(facts.case)))
  const findings = [
    ...proved.findings.filter(({ facts }) => !Object.hasOwn(listed, String(facts.case))),
    ...Object.keys(listed)
      .filter(each => !shown.has(each))
      .map(each =>
        found('open-case-closed', places[`open-cases/${proved.property}`], {
          law: proved.property,
          case: each
        })
      )
  ]
  const open =
    proved.findings.length - findings.filter(({ code }) => code !== 'open-case-closed').length
  if (open === 0 && findings.length === proved.findings.length) return proved
  return {
    ...proved,
    standing: findings.length === 0 ? 'proved' : 'refuted',
    counts: { ...proved.counts, refuted: findings.length, ...(open > 0 && { open }) },
    findings
  }
}

/** How many complete sets of answers the proofs are about. They count sets of answers, not callers. */
export function answerSets(tree: Tree): bigint {
  return diagramsOf(tree).variables.reduce((n, { values }) => n * BigInt(values.length), 1n)
}
