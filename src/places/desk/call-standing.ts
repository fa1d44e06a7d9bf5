import { type Claims, claimsOf } from '../../evaluate/claims.ts'
import type { AtLeast, Possible } from '../../evaluate/possible.ts'
import { type ToldOutcome, tellOf } from '../../parts/said-twice.ts'
import type { Setting } from '../../parts/setting.tsx'
import type { WalkInHand } from '../../parts/use-walk.ts'
import { type Report, reportOf } from '../../report/report.ts'
import { isAskedFromMemory, isLeft, level, NOTHING_YET } from '../../tree/caution.ts'
import { EMERGENCY } from '../../tree/emergency.ts'
import type { Tree } from '../../tree/tree.ts'

/** Where a call stands: what is certain of it, and what is to be said at once. */
export interface CallStanding {
  readonly possible: Possible
  readonly claims: Claims
  /** Nothing still open could change what is said. */
  readonly canStop: boolean
  /** The outcome, after the last question or told early; null while something is asked. */
  readonly told: ToldOutcome | null
  /** The emergency that stands alone on the sheet. */
  readonly emergency: ToldOutcome | null
  /** The verdicts that interrupt the call. */
  readonly urgent: readonly string[]
  /** Nobody goes back to the container. */
  readonly left: boolean
  /** Nobody handles it to answer. */
  readonly fromMemory: boolean
  /** Mold is certain: nobody leans over it, or smells it, only because something gentler was told too. */
  readonly moldy: boolean
}

export function standingOf(setting: Setting, walk: WalkInHand): CallStanding {
  const { tree } = setting
  const { evaluation, changing } = walk
  const { possible, settled } = evaluation
  const { atLeast } = possible
  const outcome = changing ? null : walk.told
  // Told facts can make an emergency certain before the walk has come to the question that raises it.
  const certain = !changing && atLeast.person === EMERGENCY
  return {
    possible,
    claims: claimsOf(evaluation),
    canStop: settled !== null,
    told: outcome,
    emergency: certain ? (outcome ?? tellOf(setting, emergencyOf(setting))) : null,
    urgent: outcome === null ? urgentOf(tree, atLeast) : [],
    left: isLeft(tree, atLeast.container),
    fromMemory: isAskedFromMemory(tree, atLeast.container),
    moldy: level(tree, 'batch', atLeast.batch) >= level(tree, 'batch', 'likely-mold')
  }
}

/** The verdicts that interrupt a call as soon as they are certain, most urgent first. */
export function urgentOf(tree: Tree, { person, container }: AtLeast): readonly string[] {
  const help = level(tree, 'person', person) >= level(tree, 'person', 'poison-help')
  const ids = [help ? person : null, isLeft(tree, container) ? container : null]
  const { urgency } = tree.advice
  return ids.filter(id => id !== null).sort((a, b) => urgency.indexOf(a) - urgency.indexOf(b))
}

const emergencyOf = ({ tree, office, today }: Setting): Report =>
  reportOf(tree, { ...NOTHING_YET, person: EMERGENCY, use: 'never' }, office, today, {})
