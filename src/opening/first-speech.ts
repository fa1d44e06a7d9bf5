import type { Speech } from '../parts/setting.tsx'
import { isDraft } from '../words/languages.ts'
import { createWords, SOURCE_TAG } from '../words/words.ts'
import type { FirstWords } from './first-question.ts'

/** A first screen in one language, with the English of its cautions under a draft translation. */
export function firstSpeech({ texts, cautions }: FirstWords, tag: string): Speech {
  return {
    // Whether a hint was written at all is asked in English: every language has the same ones.
    words: createWords({ [SOURCE_TAG]: texts, [tag]: texts }, tag),
    second:
      isDraft(tag) && cautions !== null
        ? { words: createWords({ [SOURCE_TAG]: cautions }, SOURCE_TAG), shows: 'cautions' }
        : null,
    dials: true,
    numbered: false
  }
}
