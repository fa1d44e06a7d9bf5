import { isDiscarded, type SpokenAdvice } from '../evaluate/advice.ts'
import type { OfficePack } from '../office/office-pack.ts'
import { type MeasuringPlace, measuringPlace } from '../office/referral.ts'
import type { Outcome } from '../tree/caution.ts'
import type { Does } from '../tree/does.ts'
import type { Tree } from '../tree/tree.ts'

/**
 * Where the office measures what the advice leaves to be measured; null where nothing is, and where nobody
 * is to carry it there: a vessel that may burst or is shut, somebody ill, a batch that is thrown out.
 */
export function bringInFor(
  tree: Tree,
  outcome: Outcome,
  advice: SpokenAdvice,
  office: OfficePack | null,
  today: Date
): MeasuringPlace | null {
  const { person, container, use } = outcome
  if (person !== null || container !== null || use !== 'not-yet' || advice.manner !== 'plain') {
    return null
  }
  if (isDiscarded(tree, outcome)) return null
  const deeds = deedsOf(tree, advice)
  if (deeds.some(isShut) || !deeds.some(measuresAcidity)) return null
  return measuringPlace(office, 'ph', today)
}

const deedsOf = (tree: Tree, { doNow, later, notes }: SpokenAdvice): readonly Does[] => [
  ...[...doNow, ...later].flatMap(step => tree.advice.does[step] ?? []),
  ...notes.flatMap(note => tree.advice.notes[note]?.does ?? [])
]

/** What has to be opened or vented holds gas. */
const isShut = ({ vessel = [] }: Does): boolean =>
  vessel.some(deed => deed === 'open' || deed === 'vent' || deed === 'closed')

/** Where something is mixed in first, that comes before any test. */
const measuresAcidity = ({ measure, top }: Does): boolean =>
  measure === 'acidity' && top !== 'touch'
