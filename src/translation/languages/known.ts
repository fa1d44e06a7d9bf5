import type { LanguageFacts } from '../language.ts'
import { SPANISH } from './spanish.ts'

const KNOWN: Readonly<Record<string, LanguageFacts>> = { es: SPANISH }

/** What is known of a language; null where only the rules that need no knowledge apply. */
export const languageFacts = (tag: string): LanguageFacts | null => KNOWN[tag] ?? null
