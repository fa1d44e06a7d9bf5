import type { Speech } from '../parts/setting.tsx'
import { isDraft } from '../words/languages.ts'
import { createWords, SOURCE_TAG } from '../words/words.ts'
import type { Texts } from './bundle.ts'

/** Texts by language tag: English always, and the language of the screen. */
export type TextsByTag = Readonly<Record<string, Texts>>

/** A screen in one language; under a draft translation's cautions stands the English. */
export function speechIn(texts: TextsByTag, tag: string): Speech {
  const english = createWords(texts, SOURCE_TAG)
  return {
    words: tag === SOURCE_TAG ? english : createWords(texts, tag),
    second: isDraft(tag) ? { words: english, shows: 'cautions' } : null,
    dials: true,
    numbered: false
  }
}

/** Joins the texts of two parts, language by language; a language that either lacks is left out. */
export function joined(some: TextsByTag, others: TextsByTag): TextsByTag {
  return Object.fromEntries(
    Object.entries(some).flatMap(([tag, texts]) => {
      const more = others[tag]
      return more === undefined ? [] : [[tag, { ...texts, ...more }] as const]
    })
  )
}
