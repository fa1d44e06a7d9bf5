import { adviceFor, type SpokenAdvice } from '../tree/advice.ts'
import type { Answers } from '../tree/answers.ts'
import { EMERGENCY } from '../tree/emergency.ts'
import { type Possible, possible } from '../tree/possible.ts'
import type { Tree } from '../tree/tree.ts'
import { type Walk, walk } from '../tree/walk.ts'
import type { OfficePack } from './office-pack.ts'
import { type Referral, referralFor } from './referral.ts'
import { isExpired } from './stale.ts'

/** What a set of answers comes to in a tree, gathered for whoever prints it. */
export interface Report {
  readonly tree: Tree
  readonly answers: Answers
  readonly walk: Walk
  readonly possible: Possible
  /** Null until the walk is finished: advice on half a walk could reassure too early. */
  readonly advice: SpokenAdvice | null
  readonly referrals: readonly Referral[]
  /** Whether the office's own numbers can be relied on; where not, it is said. */
  readonly office: 'current' | 'stale' | 'missing'
  readonly emergency: boolean
  /** The review date is past: the advice stands, and says so. */
  readonly overdue: boolean
}

/** The two lines that stand wherever an office cannot be relied on. */
const FIXED = ['emergency', 'poison-help']

/** Walks the answers and gathers all that is said of them, on a given day. */
export function reportOn(
  tree: Tree,
  answers: Answers,
  office: OfficePack | null,
  today: Date
): Report {
  const walked = walk(tree, answers)
  const advice = walked.finished ? adviceFor(tree, walked.outcome, answers) : null
  const named = (advice?.refer ?? []).map(trigger => referralFor(office, trigger, today))
  const standing = officeStanding(office, named, today)
  const missing =
    standing === 'current' ? [] : FIXED.filter(fixed => !named.some(({ to }) => to === fixed))
  return {
    tree,
    answers,
    walk: walked,
    possible: possible(tree, answers),
    advice,
    referrals: [...named, ...missing.map(trigger => referralFor(office, trigger, today))],
    office: standing,
    emergency: walked.outcome.person === EMERGENCY,
    overdue: isPast(tree.review.due, today)
  }
}

function officeStanding(
  office: OfficePack | null,
  named: readonly Referral[],
  today: Date
): Report['office'] {
  if (!office || named.some(({ standing }) => standing === 'missing')) return 'missing'
  const stale = isExpired(office, today) || named.some(({ standing }) => standing === 'stale')
  return stale ? 'stale' : 'current'
}

/** Whether a day written YYYY-MM-DD is over. An unreadable one is: nobody can vouch for it. */
function isPast(day: string, today: Date): boolean {
  return !(today.getTime() < Date.parse(day) + 86_400_000)
}
