import type { z } from 'zod'
import type { Authored, Keys } from './authored.ts'
import { type Issue, tellIssue } from './issue.ts'
import { kindOf, kindWords, valueAt } from './kind-words.ts'
import { knownKinds } from './known-keys.ts'
import type { FindingReport } from './report.ts'

/** What a file says, in the shape its format has. Null when a finding was reported. */
export function shaped<T>(doc: Authored, schema: z.ZodType<T>, report: FindingReport): T | null {
  const read = schema.safeParse(doc.value)
  if (read.success) return read.data
  for (const issue of read.error.issues) tell(issue, [], doc, schema, report)
  return null
}

function tell(
  issue: Issue,
  above: Keys,
  doc: Authored,
  schema: unknown,
  report: FindingReport
): void {
  const keys: Keys = [...above, ...issue.path.map(key => (typeof key === 'symbol' ? '' : key))]
  if (issue.code !== 'invalid_union') tellIssue(issue, keys, doc, schema, report)
  else if (issue.errors.length === 0) {
    const values = knownKinds(schema, keys.slice(0, -1), String(keys.at(-1)))
    tellIssue({ ...issue, code: 'invalid_value', values: [...values] }, keys, doc, schema, report)
  } else tellUnion(issue.errors, keys, doc, schema, report)
}

/** Of several shapes that a part may have, the one that its author was writing is told of. */
function tellUnion(
  shapes: readonly (readonly Issue[])[],
  keys: Keys,
  doc: Authored,
  schema: unknown,
  report: FindingReport
): void {
  const isOtherKind = ({ code, path }: Issue) => code === 'invalid_type' && path.length === 0
  const meant = shapes
    .filter(issues => !issues.some(isOtherKind))
    .sort((a, b) => a.length - b.length)[0]
  for (const inner of meant ?? []) tell(inner, keys, doc, schema, report)
  if (meant) return
  const wants = shapes.flatMap(([first]) =>
    first?.code === 'invalid_type' ? [kindWords(first.expected)] : []
  )
  report.add('wrong-kind', doc.place(keys, 'value'), {
    key: String(keys.at(-1) ?? doc.file),
    has: kindOf(valueAt(doc.value, keys)),
    wants: [...new Set(wants)].join(' or ')
  })
}
