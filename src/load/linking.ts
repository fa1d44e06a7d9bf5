import type { FindingCode } from '../findings/catalogue.ts'
import type { Finding } from '../findings/finding.ts'
import type { Place } from '../findings/place.ts'
import type { Observation } from '../tree/observation.ts'
import type { Verdict } from '../tree/tree.ts'
import type { FindingReport } from './report.ts'

/** What the names in one tree may refer to, and where findings about them go. */
export interface Linking {
  readonly report: FindingReport
  readonly observations: ReadonlyMap<string, Observation>
  /** Gentlest first on each track. */
  readonly verdicts: ReadonlyMap<string, Verdict>
  readonly sources: ReadonlySet<string>
  readonly notes: ReadonlySet<string>
  /** Filled while linking: what is left of `notes` is never added. */
  readonly notesAdded: Set<string>
}

/** Of what a piece says each tree that takes it in needs only a part. */
export const inPiece = ({ file }: Place): boolean => file.startsWith('shared/pieces/')

/** Reports a name that refers to nothing, with those that were likely meant. */
export function unknownName(
  report: FindingReport,
  code: FindingCode,
  place: Place,
  name: string,
  names: Iterable<string>,
  because: Finding['because'] = []
): void {
  report.add(code, place, { name, near: report.near(name, names) }, because)
}

/** The sources among what is cited; what is no source is reported. */
export function linkSources(
  linking: Linking,
  cited: readonly string[],
  placeOf: (index: number) => Place,
  because: Finding['because'] = []
): readonly string[] {
  cited.forEach((source, index) => {
    if (!linking.sources.has(source)) {
      unknownName(
        linking.report,
        'unknown-source',
        placeOf(index),
        source,
        linking.sources,
        because
      )
    }
  })
  return cited
}
