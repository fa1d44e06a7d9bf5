import type { FollowUp } from '../tree/follow-ups.ts'
import type { LookAlike } from '../tree/look-alikes.ts'
import type { Authored, Keys } from './authored.ts'
import { doesOf } from './does-of.ts'
import { unknownName } from './linking.ts'
import type { AuthoredProject } from './project.ts'
import type { FindingReport } from './report.ts'
import { listed } from './schemas/common.ts'

/** What stands beside the trees: look-alikes and follow-ups, with every name in them checked. */
export interface Companions {
  readonly lookAlikes: readonly LookAlike[]
  /** By tree id. */
  readonly followUps: Readonly<Record<string, readonly FollowUp[]>>
}

type Code = 'unknown-source' | 'unknown-observation' | 'unknown-verdict' | 'unknown-tree'

/** Reads look-alikes and follow-ups, and reports names that refer to nothing. */
export function companionsOf(project: AuthoredProject, report: FindingReport): Companions {
  const { observations, verdicts, sources, steps, trees, lookAlikes, followUps } = project
  const sourceIds = Object.keys(sources?.value ?? {})
  const observationIds = Object.keys(observations?.value ?? {})
  const { person = {}, container = {}, batch = {} } = verdicts?.value ?? {}
  const verdictIds = Object.keys({ ...person, ...container, ...batch })
  const treeIds = [...trees.keys()]
  const check = (
    doc: Authored,
    place: Keys,
    names: readonly string[],
    code: Code,
    all: readonly string[]
  ) => {
    for (const [index, name] of names.entries()) {
      if (all.includes(name)) continue
      unknownName(report, code, doc.place([...place, index], 'value'), name, all)
    }
  }
  const pairs = Object.entries(lookAlikes?.value ?? {}).map(([id, pair]): LookAlike => {
    const because = listed(pair.because)
    if (lookAlikes) {
      check(lookAlikes.doc, [id, 'asked'], pair.asked, 'unknown-observation', observationIds)
      check(lookAlikes.doc, [id, 'because'], because, 'unknown-source', sourceIds)
      check(lookAlikes.doc, [id, 'trees'], pair.trees ?? [], 'unknown-tree', treeIds)
    }
    const seen = ({ above, side }: typeof pair.one) => ({ above, side: side ?? null })
    const { differs, asked, trees: among = treeIds } = pair
    return {
      id,
      one: seen(pair.one),
      other: seen(pair.other),
      differs,
      asked,
      trees: among,
      because
    }
  })
  const asked = Object.entries(followUps?.value ?? {}).map(([id, one]) => {
    const because = listed(one.because)
    const except = one['except-trees'] ?? []
    if (followUps) {
      check(followUps.doc, [id, 'after'], one.after, 'unknown-verdict', verdictIds)
      check(followUps.doc, [id, 'because'], because, 'unknown-source', sourceIds)
      check(followUps.doc, [id, 'trees'], one.trees ?? [], 'unknown-tree', treeIds)
      check(followUps.doc, [id, 'except-trees'], except, 'unknown-tree', treeIds)
    }
    const about = (one.trees ?? treeIds).filter(tree => !except.includes(tree))
    const does = doesOf(steps?.value['follow-ups']?.[id])
    return { about, followUp: { id, after: one.after, does, because } }
  })
  const ofTree = (tree: string) =>
    asked.filter(({ about }) => about.includes(tree)).map(({ followUp }) => followUp)
  return {
    lookAlikes: pairs,
    followUps: Object.fromEntries(treeIds.map(tree => [tree, ofTree(tree)]))
  }
}
