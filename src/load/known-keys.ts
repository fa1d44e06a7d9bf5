import { z } from 'zod'
import type { Keys } from './authored.ts'

/** The keys that a schema knows in the group at that place, for "did you mean". */
export function knownKeys(schema: unknown, keys: Keys): readonly string[] {
  const groups = keys.reduce<unknown[]>((open, key) => open.flatMap(s => inside(s, key)), [schema])
  return groups
    .flatMap(alternatives)
    .flatMap(s => (s instanceof z.ZodObject ? Object.keys(s.shape) : []))
}

/** The values that can tell the alternatives of a group from each other. */
export function knownKinds(schema: unknown, keys: Keys, key: string): readonly string[] {
  const groups = keys.reduce<unknown[]>((open, k) => open.flatMap(s => inside(s, k)), [schema])
  return groups.flatMap(alternatives).flatMap(s => {
    const kind: unknown = s instanceof z.ZodObject ? s.shape[key] : undefined
    return kind instanceof z.ZodLiteral ? [...kind.values].map(String) : []
  })
}

function inside(schema: unknown, key: string | number): unknown[] {
  return alternatives(schema).flatMap((s): unknown[] => {
    if (s instanceof z.ZodObject) return key in s.shape ? [s.shape[key]] : []
    if (s instanceof z.ZodRecord) return [s.valueType]
    if (s instanceof z.ZodArray) return [s.element]
    return []
  })
}

function alternatives(schema: unknown): unknown[] {
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodNullable) {
    return alternatives(schema.unwrap())
  }
  if (schema instanceof z.ZodLazy) return alternatives(schema.unwrap())
  if (schema instanceof z.ZodUnion) return schema.options.flatMap(alternatives)
  return [schema]
}
