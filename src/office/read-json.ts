import { PLAIN_TEXT } from './plain-text.ts'

/** Parsed JSON as a record; anything else as an empty one. */
export const asRecord = (value: unknown): Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? { ...value } : {}

/** Parsed JSON as a list; anything else as an empty one. */
export const asList = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : [])

/** Parsed JSON as a text that says something, without markup; else undefined. */
export const asText = (value: unknown): string | undefined =>
  typeof value === 'string' && PLAIN_TEXT.test(value.trim()) ? value.trim() : undefined
