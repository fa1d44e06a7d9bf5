import type { z } from 'zod'
import type { Authored, Keys } from './authored.ts'
import { kindOf, kindWords, valueAt } from './kind-words.ts'
import { knownKeys } from './known-keys.ts'
import type { FindingReport } from './report.ts'

/** One thing that a schema has against a value. */
export type Issue = z.core.$ZodIssue

/** Reports one such thing in an author's words. */
export function tellIssue(
  issue: Exclude<Issue, { code: 'invalid_union' }>,
  keys: Keys,
  doc: Authored,
  schema: unknown,
  report: FindingReport
): void {
  const last = keys.at(-1)
  // An entry of a list is named by the list.
  const key = String((typeof last === 'number' ? keys.at(-2) : last) ?? doc.file)
  const value = valueAt(doc.value, keys)
  const place = doc.place(keys, 'value')
  const addMissing = (wants: string): void => {
    const group = String(keys.at(-2) ?? doc.file)
    report.add('missing-key', doc.place(keys.slice(0, -1)), { key, group, wants })
  }
  switch (issue.code) {
    case 'unrecognized_keys': {
      const allowed = knownKeys(schema, keys)
      for (const name of issue.keys) {
        const facts = { key: name, near: report.near(name, allowed), known: allowed }
        report.add('unknown-key', doc.place([...keys, name]), facts)
      }
      break
    }
    case 'invalid_value': {
      const among = issue.values.map(String)
      const near = report.near(String(value), among)
      if (value === undefined) addMissing(`one of ${among.join(', ')}`)
      else report.add('wrong-value', place, { key, value: sample(value), among, near })
      break
    }
    case 'invalid_type': {
      const wants = kindWords(issue.expected)
      if (value === undefined) addMissing(wants)
      else report.add('wrong-kind', place, { key, has: kindOf(value), wants })
      break
    }
    case 'invalid_key': {
      const wants = issue.issues[0]?.message ?? 'a name'
      report.add('wrong-form', doc.place(keys), { value: String(last), wants })
      break
    }
    case 'invalid_format':
    case 'custom':
      report.add('wrong-form', place, { value: sample(value), wants: issue.message })
      break
    case 'too_small':
    case 'too_big':
      report.add('out-of-bounds', place, { key, wants: boundOf(issue) })
      break
    default:
      report.add('wrong-kind', place, { key, has: kindOf(value), wants: 'another value' })
  }
}

/** What a text or a list is counted in. */
const COUNTED: Readonly<Record<string, string>> = { string: ' letters', array: ' entries' }

function boundOf(issue: Extract<Issue, { code: 'too_small' | 'too_big' }>): string {
  const bound = issue.code === 'too_small' ? issue.minimum : issue.maximum
  const least = issue.inclusive ? 'at least' : 'more than'
  const unit = COUNTED[issue.origin] ?? ''
  return `${issue.code === 'too_small' ? least : 'at most'} ${bound}${unit}`
}

function sample(value: unknown): string {
  return typeof value === 'object' && value !== null ? kindOf(value) : String(value)
}
