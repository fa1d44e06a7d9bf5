import { isGroup } from '../tree/group.ts'
import type { Keys } from './authored.ts'

/** The kinds of observation as findings speak of them. */
export const KIND_WORDS = {
  choice: 'a choice of one answer',
  signs: 'a screen of signs',
  measure: 'a measure'
} as const

const KINDS: Readonly<Record<string, string>> = {
  string: 'a text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  tuple: 'a list',
  object: 'a group of keys',
  record: 'a group of keys',
  null: 'null'
}

/** A kind of value as authors know it. */
export const kindWords = (kind: string): string => KINDS[kind] ?? 'another kind of value'

/** What kind of value an author wrote. */
export function kindOf(value: unknown): string {
  if (value === null || value === undefined) return 'nothing'
  if (Array.isArray(value)) return 'a list'
  if (typeof value === 'number') return Number.isInteger(value) ? 'a whole number' : 'a number'
  return kindWords(typeof value)
}

/** What stands at that place of a value, or undefined. */
export function valueAt(value: unknown, keys: Keys): unknown {
  return keys.reduce<unknown>((inner, key) => {
    return isGroup(inner) && Object.hasOwn(inner, key) ? inner[`${key}`] : undefined
  }, value)
}
