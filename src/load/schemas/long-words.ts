import { z } from 'zod'
import { text } from './common.ts'

/** `shared/long-words.yaml`: English words of three syllables and more that advice needs, each with the reason. */
export const longWordsSchema = z.record(
  z.string().regex(/^\p{Ll}[\p{Ll}’-]*$/u, 'a word in small letters, in the singular'),
  text.describe('Why no shorter word does.')
)
export type AuthoredLongWords = z.infer<typeof longWordsSchema>
