import type { Finding } from '../findings/finding.ts'
import type { Proved } from '../prove/proved.ts'

/** How the properties of one tree stand. */
export interface CheckedTree {
  readonly tree: string
  /** Every one of them is proved, and there is at least one. */
  readonly proved: boolean
  readonly groups: readonly Group[]
  readonly findings: readonly Finding[]
}

/** Properties of one kind: all rules together, each law by itself. */
export interface Group {
  readonly name: string
  readonly proved: number
  readonly refuted: number
  readonly notDecided: number
  /** Why properties are not decided, each reason once. */
  readonly because: readonly string[]
}

/** Counts what proving a tree established. */
export function checkedTree(tree: string, properties: readonly Proved[]): CheckedTree {
  const names = [...new Set(properties.map(groupOf))]
  return {
    tree,
    proved: properties.length > 0 && properties.every(({ standing }) => standing === 'proved'),
    groups: names.map(name =>
      grouped(
        name,
        properties.filter(one => groupOf(one) === name)
      )
    ),
    findings: properties.flatMap(({ findings }) => findings)
  }
}

const groupOf = ({ kind, property }: Proved): string => (kind === 'rule' ? 'rules' : property)

function grouped(name: string, properties: readonly Proved[]): Group {
  const count = (standing: Proved['standing']) =>
    properties.filter(property => property.standing === standing).length
  return {
    name,
    proved: count('proved'),
    refuted: count('refuted'),
    notDecided: count('not-decided'),
    because: [...new Set(properties.flatMap(({ because }) => because ?? []))]
  }
}

/** One line for each kind of property of a tree. */
export function checkedLines({ tree, groups }: CheckedTree): string[] {
  if (groups.length === 0) return [`${tree}: nothing to prove, so nothing is proved`]
  return groups.map(({ name, proved, refuted, notDecided, because }) => {
    const parts = [
      `${proved} proved`,
      ...(refuted > 0 ? [`${refuted} refuted`] : []),
      ...(notDecided > 0 ? [`${notDecided} not decided (${because.join('; ')})`] : [])
    ]
    return `${tree}: ${name}: ${parts.join(', ')}`
  })
}
