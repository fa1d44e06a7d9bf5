import type { z } from 'zod'
import { isGroup } from '../tree/group.ts'
import type { Authored, AuthoredFile } from './authored.ts'
import type { Shaped } from './project.ts'
import { readYaml } from './read-yaml.ts'
import type { FindingReport } from './report.ts'
import { shaped } from './shape.ts'

interface Kept {
  readonly text: string
  readonly shaped: Shaped<unknown>
}

/** By format and path, the last text of which nothing was found, and what was read from it. */
const kept = new WeakMap<z.ZodType, Map<string, Kept>>()

/**
 * A file in the shape of its format; null when a finding was reported. `ofJson`: it may name its schema.
 *
 * Reading is most of what loading takes, and one process may load a project more than once: to compare a
 * file with it, to build page and embed. So what has not changed is not read again; each file is kept once.
 */
export function shapedFile<T>(
  file: AuthoredFile,
  format: z.ZodType<T>,
  ofJson: boolean,
  report: FindingReport
): Shaped<T> | null {
  const before = kept.get(format)?.get(file.path)
  // INVARIANT: what is kept for a format was put into its shape by that format.
  if (before?.text === file.text) return before.shaped as Shaped<T>
  const found = report.findings.length
  const read = readYaml(file, report)
  if (!read) return null
  const doc = ofJson ? withoutSchemaKey(read) : read
  const value = shaped(doc, format, report)
  if (value === null) return null
  const result = { value, doc }
  if (report.findings.length === found) keep(file, format, result)
  return result
}

function keep(file: AuthoredFile, format: z.ZodType, shaped: Shaped<unknown>): void {
  const ofFormat = kept.get(format) ?? new Map<string, Kept>()
  kept.set(format, ofFormat.set(file.path, { text: file.text, shaped }))
}

/** What a file of JSON says besides `$schema`, which names its schema for editors alone. */
function withoutSchemaKey(doc: Authored): Authored {
  const { value } = doc
  if (!isGroup(value) || Array.isArray(value)) return doc
  const { $schema, ...rest } = value
  return typeof $schema === 'string' ? { ...doc, value: rest } : doc
}
