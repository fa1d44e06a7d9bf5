import { adviceFor, type SpokenAdvice } from '../evaluate/advice.ts'
import type { Evaluation } from '../evaluate/evaluate.ts'
import type { Walk } from '../evaluate/walk.ts'
import type { OfficePack } from '../office/office-pack.ts'
import { type MeasuringPlace, type Referral, referralFor } from '../office/referral.ts'
import { isPast } from '../office/stale.ts'
import type { Answers } from '../tree/answers.ts'
import type { Outcome } from '../tree/caution.ts'
import { EMERGENCY } from '../tree/emergency.ts'
import type { Tree } from '../tree/tree.ts'
import { bringInFor } from './bring-in.ts'

/** What an outcome of a tree comes to, gathered for whoever tells it. */
export interface Report {
  readonly tree: Tree
  readonly outcome: Outcome
  /** The walk that led there; empty for an outcome by itself. */
  readonly trail: Walk['trail']
  /** Null until the walk is finished: advice on half a walk could reassure too early. */
  readonly advice: SpokenAdvice | null
  readonly referrals: readonly Referral[]
  /** Whether the office's own numbers can be relied on; where not, it is said. */
  readonly office: 'current' | 'stale' | 'missing'
  /** Where what is still to be measured can be brought; null where nothing is to be. */
  readonly bringIn: MeasuringPlace | null
  readonly emergency: boolean
  /** The review date is past: the advice stands, and says so. */
  readonly overdue: boolean
  /** It speaks of such jars in general: nobody looked at one. */
  readonly general: boolean
}

/** A report on one caller's answers. */
export interface WalkReport extends Report {
  readonly evaluation: Evaluation
}

/** The two lines that stand wherever an office cannot be relied on. */
const FIXED = ['emergency', 'poison-help']

/**
 * Gathers all that is said of one caller's answers, on a given day: of a finished walk its outcome, or
 * before that, told `early`, the outcome that nothing still open can change.
 */
export function reportOn(
  evaluation: Evaluation,
  office: OfficePack | null,
  today: Date,
  early = false
): WalkReport {
  const { tree, walk, settled } = evaluation
  const said = walk.finished || early ? settled : null
  return {
    ...gather(tree, said?.outcome ?? walk.outcome, said?.advice ?? null, office, today),
    trail: walk.trail,
    general: false,
    evaluation
  }
}

/**
 * Gathers what is said of an outcome by itself, on a given day: whatever answers led there, or those
 * that are known though not every question was asked. Without answers it is general.
 */
export function reportOf(
  tree: Tree,
  outcome: Outcome,
  office: OfficePack | null,
  today: Date,
  answers: Answers | null = null
): Report {
  const advice = adviceFor(tree, outcome, answers ?? {})
  return { ...gather(tree, outcome, advice, office, today), trail: [], general: answers === null }
}

function gather(
  tree: Tree,
  outcome: Outcome,
  advice: SpokenAdvice | null,
  office: OfficePack | null,
  today: Date
): Omit<Report, 'trail' | 'general'> {
  const named = (advice?.refer ?? []).map(trigger => referralFor(office, trigger, today))
  const standing = officeStanding(office, named, today)
  const missing =
    standing === 'current' ? [] : FIXED.filter(fixed => !named.some(({ to }) => to === fixed))
  return {
    tree,
    outcome,
    advice,
    referrals: [...named, ...missing.map(trigger => referralFor(office, trigger, today))],
    office: standing,
    bringIn:
      advice === null || standing !== 'current'
        ? null
        : bringInFor(tree, outcome, advice, office, today),
    emergency: outcome.person === EMERGENCY,
    overdue: isPast(tree.review.due, today)
  }
}

function officeStanding(
  office: OfficePack | null,
  named: readonly Referral[],
  today: Date
): Report['office'] {
  if (!office || named.some(({ standing }) => standing === 'missing')) return 'missing'
  const stale =
    isPast(office.validUntil, today) || named.some(({ standing }) => standing === 'stale')
  return stale ? 'stale' : 'current'
}
