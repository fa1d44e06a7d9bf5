import type { ReadyGlossary } from './glossary.ts'
import type { LanguageFacts } from './language.ts'
import type { TextFault, TextPair } from './pair.ts'

/** Words in brackets or quotes beside a translation: the English term that a reader meets on labels. */
const GLOSS = /\([^()]*\)|“[^”]*”|\{\{[^}]*\}\}/g

const wordsIn = (text: string): readonly string[] =>
  text.replace(/\{\{[^}]*\}\}/g, ' ').match(/(?<![\p{L}\d])\p{L}[\p{L}’']*(?![\p{L}\d])/gu) ?? []

/** What was left in English: a word that gives English away, or one that stands in both texts and is no name. */
export function fragmentFaults(
  { english, target }: TextPair,
  source: LanguageFacts,
  glossary: ReadyGlossary
): readonly TextFault[] {
  const outside = wordsIn(target.replace(GLOSS, ' '))
  const english1 = new Set(wordsIn(english).map(word => word.toLowerCase()))
  const left = outside.filter(word => {
    const small = word.toLowerCase()
    if (glossary.alike.has(small)) return false
    return source.givesAway.has(small) || (small.length > 2 && english1.has(small))
  })
  // In brackets two common words of English that follow each other are a sentence, not a term.
  const inside = (target.match(GLOSS) ?? []).flatMap(gloss =>
    english.includes(gloss)
      ? wordsIn(gloss).filter(word => !glossary.alike.has(word.toLowerCase()))
      : []
  )
  const found = [...new Set([...left, ...inside])]
  return found.length > 0 ? [{ rule: 'left-in-english', lacks: [], adds: found }] : []
}
