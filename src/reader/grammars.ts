import { EN } from './english.ts'
import type { Grammar } from './grammar.ts'
import { ES } from './spanish.ts'

/**
 * The languages whose small words are known. Words of any other are offered, never taken: nobody
 * could tell there a "no" from a "yes".
 */
export const GRAMMARS: Readonly<Record<string, Grammar>> = { en: EN, es: ES }
