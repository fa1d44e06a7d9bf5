import type { Answers } from '../tree/answers.ts'
import type { FindingCode } from './catalogue.ts'
import type { Facts } from './facts.ts'
import type { Place } from './place.ts'

/** Something an author must know, as plain data: renderers word it. */
export interface Finding {
  readonly code: FindingCode
  /** Null where no file holds it: the file itself is missing. */
  readonly place: Place | null
  /** Other places that explain this one. */
  readonly because: readonly { readonly label: string; readonly place: Place }[]
  readonly facts: Facts
  /** The shortest walk that shows it; absent when the point is that no walk exists. */
  readonly witness?: Witness
  /** The complete set of answers behind the witness, for a program to walk again. */
  readonly answers?: Answers
}

export type { Facts }

/** A walk that shows a finding, one answer after the other. */
export type Witness = readonly { readonly observation: string; readonly answer: string }[]

/** Findings by place, those without a place first; what is said twice is said once. */
export function sortFindings(findings: readonly Finding[]): readonly Finding[] {
  const once = new Map(findings.map(finding => [identity(finding), finding] as const))
  return [...once.values()].sort(
    (a, b) =>
      compare(a.place?.file ?? '', b.place?.file ?? '') ||
      (a.place?.line ?? 0) - (b.place?.line ?? 0) ||
      (a.place?.column ?? 0) - (b.place?.column ?? 0) ||
      compare(a.code, b.code)
  )
}

// Two trees that copy in one faulty piece find the same fault: `because` is left out of the identity.
const identity = ({ code, place, facts, witness }: Finding): string =>
  JSON.stringify([code, place, facts, witness])

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)
