import { checkDeeds } from './check-deeds.ts'
import type { LinkedTree } from './link-tree.ts'
import { unknownName } from './linking.ts'
import type { AuthoredProject } from './project.ts'
import type { FindingReport } from './report.ts'

/** Reports what of the shared files no tree has a use for, and what the office pack leaves open. */
export function checkWhole(
  project: AuthoredProject,
  linked: readonly LinkedTree[],
  report: FindingReport
): void {
  const { observations, pieces, trees, rules, rows, sharedRules, sharedRows } = project
  const asked = new Set(linked.flatMap(({ tree }) => Object.keys(tree.observations)))
  for (const observation of Object.keys(observations?.value ?? {})) {
    if (asked.has(observation) || !observations) continue
    report.add('observation-unused', observations.doc.place([observation]), { observation })
  }
  const taken = new Set([...trees.values()].flatMap(({ value }) => Object.keys(value.pieces ?? {})))
  for (const [piece, { doc }] of pieces) {
    if (!taken.has(piece)) report.add('piece-unused', doc.place(['id'], 'value'), { piece })
  }
  for (const [kind, files] of [['rules', rules] as const, ['rows', rows] as const]) {
    for (const [stem, { doc }] of files) {
      if (trees.has(stem)) continue
      const file = `trees/${stem}/tree.yaml`
      report.add('missing-file', doc.place([kind]), { file, holds: `the tree of these ${kind}` })
    }
  }
  for (const [kind, files, shared] of [
    ['rules', rules, sharedRules] as const,
    ['rows', rows, sharedRows] as const
  ]) {
    const named = new Set([...files.values()].flatMap(({ value }) => value.with ?? []))
    for (const [name, { doc }] of shared) {
      if (!named.has(name)) report.add('piece-unused', doc.place([kind]), { piece: name })
    }
  }
  checkDeeds(project, linked, report)
}

/** Reports referrals of the office pack to numbers that it does not have. */
export function checkOffice({ office }: AuthoredProject, report: FindingReport): void {
  if (!office) return
  const { value, doc } = office
  const numbers = value.numbers.map(({ id }) => id)
  for (const [index, id] of numbers.entries()) {
    if (numbers.indexOf(id) === index) continue
    const facts = { what: 'phone number', id }
    report.add('duplicate-id', doc.place(['numbers', index, 'id'], 'value'), facts)
  }
  for (const [index, { number }] of value.referrals.entries()) {
    if (number === undefined || numbers.includes(number)) continue
    const place = doc.place(['referrals', index, 'number'], 'value')
    unknownName(report, 'unknown-number', place, number, numbers)
  }
}
