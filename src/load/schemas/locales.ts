import { z } from 'zod'
import { id, text } from './common.ts'

// Plural forms hang on a key by an underscore: `day_one`.
const key = z
  .string()
  .max(64)
  .regex(/^[a-z0-9]+(?:[-_][a-z0-9]+)*$/, 'a name of small letters, digits, hyphens or underscores')

const choice = z.strictObject({ label: text, hint: text.optional() })

const observation = z.strictObject({
  ask: text.optional(),
  how: text.optional(),
  why: text.optional(),
  answers: z.record(key, choice).optional(),
  signs: z.record(key, choice).optional(),
  none: text.optional(),
  unsure: z.union([text, choice]).optional(),
  instruments: z.record(key, text).optional(),
  unit: text.optional()
})

const verdict = z.strictObject({
  name: text.optional(),
  message: text.optional(),
  'message-as-directed': text.optional(),
  'message-not-yet': text.optional(),
  'message-never': text.optional(),
  'message-while-ill': text.optional(),
  'use-as-directed': text.optional(),
  'use-not-yet': text.optional(),
  'use-never': text.optional(),
  why: text.optional()
})

type Texts = string | { readonly [key: string]: Texts }
const texts: z.ZodType<Texts> = z.lazy(() => z.union([text, z.record(key, texts)]))

/** The words of one tree in one language. */
export const treeWordsSchema = z.strictObject({
  title: text.optional(),
  about: text.optional(),
  use: z.record(key, text).optional(),
  verdicts: z.record(id, verdict).optional(),
  cautions: z.record(id, text).optional(),
  'rules-of-thumb': z.record(id, text).optional()
})

/** The words of one language, by file. What is left out is found by comparing with the trees. */
export const LOCALE_SCHEMAS = {
  observations: z.record(id, observation),
  verdicts: z.record(id, verdict),
  steps: z.record(id, text),
  notes: z.record(id, text),
  ui: z.record(key, texts)
} as const
