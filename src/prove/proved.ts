import type { Finding } from '../findings/finding.ts'

/** What was established. Only `proved` builds: "not decided" is not "proved". */
export type ProofState = 'proved' | 'refuted' | 'not-decided'

/** What a property is about: a rule of the tree, a law of every tree, or how the tree is made. */
export type PropertyKind = 'rule' | 'law' | 'shape'

/** One property of one tree, and how it stands. */
export interface Proved {
  readonly property: string
  readonly kind: PropertyKind
  readonly standing: ProofState
  readonly counts: Counts
  /** Why it is not decided. */
  readonly because?: string
  readonly findings: readonly Finding[]
}

/** In how many cases it was proved or refuted: rules, questions, danger signs, whatever it speaks of. */
export interface Counts {
  readonly proved: number
  readonly refuted: number
  /** Known not to hold yet, and listed with the reason. */
  readonly open?: number
}

/** How a property stands by its cases, each with what was found against it: nothing, where it is proved. */
export function standing(
  property: string,
  kind: PropertyKind,
  cases: readonly (readonly Finding[])[]
): Proved {
  const findings = cases.flat()
  const refuted = cases.filter(found => found.length > 0).length
  return {
    property,
    kind,
    standing: refuted === 0 ? 'proved' : 'refuted',
    counts: { proved: cases.length - refuted, refuted },
    findings
  }
}

/** A property of which neither could be shown, and why. */
export function undecided(property: string, kind: PropertyKind, because: string): Proved {
  return {
    property,
    kind,
    standing: 'not-decided',
    counts: { proved: 0, refuted: 0 },
    because,
    findings: []
  }
}
