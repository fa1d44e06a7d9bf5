import type { FindingCode } from '../findings/catalogue.ts'
import type { Facts, Finding } from '../findings/finding.ts'
import { nearestNames } from '../findings/nearest-name.ts'
import type { Place } from '../findings/place.ts'

const MEANT = 50

/** Collects the findings of a stage, so that an author sees all of them at once. */
export interface FindingReport {
  readonly findings: Finding[]
  add(code: FindingCode, place: Place | null, facts: Facts, because?: Finding['because']): void
  /** The known names that were likely meant. */
  near(name: string, names: Iterable<string>): readonly string[]
}

/** An empty report. */
export function openReport(): FindingReport {
  const findings: Finding[] = []
  return {
    findings,
    add(code, place, facts, because = []) {
      findings.push({ code, place, because, facts })
    },
    // Of thousands of wrong names few are shown: looking for what all of them meant takes minutes.
    near: (name, names) => (findings.length < MEANT ? nearestNames(name, names) : [])
  }
}
