import type { Finding } from '../findings/finding.ts'
import type { Proved } from '../prove/proved.ts'

/** How the properties of one tree stand. */
export interface CheckedTree {
  readonly tree: string
  /** Every one of them is proved, and there is at least one. */
  readonly proved: boolean
  readonly properties: readonly CheckedProperty[]
  readonly findings: readonly Finding[]
}

/** One property without its findings, which stand together with those of loading. */
export type CheckedProperty = Omit<Proved, 'findings'>

/** Gathers what proving a tree established. */
export function checkedTree(tree: string, all: readonly Proved[]): CheckedTree {
  return {
    tree,
    proved: all.length > 0 && all.every(({ standing }) => standing === 'proved'),
    properties: all.map(({ findings: _, ...property }) => property),
    findings: all.flatMap(({ findings }) => findings)
  }
}

/** One line for each property of a tree. */
export function checkedLines({ tree, properties }: CheckedTree): string[] {
  if (properties.length === 0) return [`${tree}: nothing to prove, so nothing is proved`]
  return properties.map(property => `${tree}: ${property.property}: ${countsText(property)}`)
}

function countsText({ standing, counts, because }: CheckedProperty): string {
  if (standing === 'not-decided') return `not decided (${because ?? 'no reason is known'})`
  const { proved, refuted, open = 0 } = counts
  return [
    `${proved} proved`,
    ...(refuted > 0 ? [`${refuted} refuted`] : []),
    ...(open > 0 ? [`${open} open`] : [])
  ].join(', ')
}
