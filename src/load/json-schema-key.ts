import type { Authored } from './authored.ts'

/** What a file of JSON says besides `$schema`, which names its schema for editors alone. */
export function withoutSchemaKey(doc: Authored): Authored {
  const { value } = doc
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return doc
  const { $schema, ...rest } = value as Readonly<Record<string, unknown>>
  return typeof $schema === 'string' ? { ...doc, value: rest } : doc
}
