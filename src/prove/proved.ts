import type { Finding } from '../findings/finding.ts'

/** What was established. Only `proved` builds: "not decided" is not "proved". */
export type Standing = 'proved' | 'refuted' | 'not-decided'

/** One property of one tree, and how it stands. */
export interface Proved {
  readonly property: string
  readonly kind: 'rule' | 'law'
  readonly standing: Standing
  /** Why it is not decided. */
  readonly because?: string
  readonly findings: readonly Finding[]
}

export function standing(
  property: string,
  kind: Proved['kind'],
  findings: readonly Finding[]
): Proved {
  return { property, kind, standing: findings.length === 0 ? 'proved' : 'refuted', findings }
}
