import type { Place } from '../findings/place.ts'
import { TRACKS } from '../tree/observation.ts'
import type { Verdict } from '../tree/tree.ts'
import { unknownName } from './linking.ts'
import type { Shaped } from './project.ts'
import type { FindingReport } from './report.ts'
import { listed } from './schemas/common.ts'
import type { AuthoredVerdicts } from './schemas/verdicts.ts'

/** Every verdict, gentlest first on each track; a name on two tracks is reported. */
export function buildVerdicts(
  { value, doc }: Shaped<AuthoredVerdicts>,
  report: FindingReport
): ReadonlyMap<string, Verdict> {
  const verdicts = new Map<string, Verdict>()
  const first = new Map<string, Place>()
  for (const track of TRACKS) {
    for (const [id, { ceiling, signal }] of Object.entries(value[track])) {
      const place = doc.place([track, id])
      const before = first.get(id)
      if (before) {
        const because = [{ label: 'First here', place: before }]
        report.add('duplicate-id', place, { what: 'verdict', id }, because)
      }
      first.set(id, place)
      verdicts.set(id, { id, track, ceiling, signal })
    }
  }
  return verdicts
}

/** Reports sources that the shared verdicts cite and nobody described. */
export function checkSharedSources(
  { value, doc }: Shaped<AuthoredVerdicts>,
  sources: ReadonlySet<string>,
  report: FindingReport
): void {
  for (const track of TRACKS) {
    for (const [id, { advice }] of Object.entries(value[track])) {
      for (const [index, source] of listed(advice.because).entries()) {
        if (sources.has(source)) continue
        const place = doc.place([track, id, 'advice', 'because', index], 'value')
        unknownName(report, 'unknown-source', place, source, sources)
      }
    }
  }
}
