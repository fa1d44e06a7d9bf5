import type { Place } from '../findings/place.ts'
import type { Recheck } from '../tree/tree.ts'
import type { DraftNote } from './expand.ts'
import { type Linking, unknownName } from './linking.ts'
import type { Shaped } from './project.ts'
import type { AuthoredTree } from './schemas/tree.ts'

/** A recheck on a day of the ferment needs the observation that counts those days, and one that does. */
export function checkCountedDays(
  { report, observations }: Linking,
  { value: tree, doc }: Shaped<AuthoredTree>,
  asked: ReadonlySet<string>,
  notes: ReadonlyMap<string, DraftNote>
): void {
  const counts = tree['counts-days']
  if (counts !== undefined) {
    const observation = observations.get(counts)
    const place = doc.place(['counts-days'], 'value')
    if (observation === undefined) {
      unknownName(report, 'unknown-observation', place, counts, observations.keys())
    } else if (observation.kind !== 'measure' || observation.unit !== 'day' || !asked.has(counts)) {
      report.add('counts-no-days', place, { observation: counts })
    }
    return
  }
  const unfit = (recheck: Recheck | undefined, place: Place) => {
    if (recheck === undefined || !('day' in recheck)) return
    report.add('day-not-counted', place, { day: recheck.day })
  }
  for (const { body, place } of notes.values()) unfit(body.recheck, place(['recheck']))
  for (const [verdict, { recheck }] of Object.entries(tree.advice ?? {})) {
    unfit(recheck, doc.place(['advice', verdict, 'recheck']))
  }
}
