import type { LanguageFacts } from '../language.ts'
import { ARABIC } from './arabic.ts'
import { CHINESE } from './chinese.ts'
import { SPANISH } from './spanish.ts'
import { VIETNAMESE } from './vietnamese.ts'

const KNOWN: Readonly<Record<string, LanguageFacts>> = Object.fromEntries(
  [SPANISH, CHINESE, VIETNAMESE, ARABIC].map(facts => [facts.tag, facts])
)

/** What is known of a language; null where only the rules that need no knowledge apply. */
export const languageFacts = (tag: string): LanguageFacts | null => KNOWN[tag] ?? null
