import type { FindingCode } from '../findings/catalogue.ts'
import type { Facts, Finding } from '../findings/finding.ts'
import type { Place } from '../findings/place.ts'

/** Collects the findings of a stage, so that an author sees all of them at once. */
export interface Report {
  readonly findings: Finding[]
  add(code: FindingCode, place: Place | null, facts: Facts, because?: Finding['because']): void
}

/** An empty report. */
export function openReport(): Report {
  const findings: Finding[] = []
  return {
    findings,
    add(code, place, facts, because = []) {
      findings.push({ code, place, because, facts })
    }
  }
}
