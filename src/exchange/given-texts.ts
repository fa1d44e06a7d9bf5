import type { TranslatedText } from '../load/reviewed-texts.ts'
import { textsIn } from '../load/texts.ts'
import { translatedKeys } from '../load/translated-keys.ts'
import { textHash } from '../translation/ledger.ts'
import { kindOf } from '../words/kinds.ts'
import { countWords, mostWords } from '../words/lengths.ts'
import { SOURCE_TAG } from '../words/words.ts'
import type { ExchangeText } from './exchange-text.ts'

/** What is known of the texts of a project. */
export interface TextsToGive {
  /** The English words by the stem of their file. */
  readonly english: Readonly<Record<string, unknown>>
  /** What stands translated in the language; none where nobody has begun. */
  readonly translated: readonly TranslatedText[]
  /** Notes for translators, by the id of the text. */
  readonly notes: Readonly<Record<string, string>>
}

/** Every text that a language must have, in the order of the English, with what stands there now. */
export async function textsToGive(
  { english, translated, notes }: TextsToGive,
  tag: string
): Promise<readonly ExchangeText[]> {
  const byId = new Map(translated.map(text => [text.id, text]))
  const all = Object.entries(english).flatMap(([stem, group]) => {
    const source = textsIn(group)
    return [...translatedKeys(tag, source.keys())].map(([key, original]) => {
      const id = `${stem}:${key}`
      const text = byId.get(id)
      return {
        id,
        kind: kindOf(stem, original),
        note: notes[`${stem}:${original}`] ?? null,
        most: roomFor(stem, original, source.get(original) ?? '', tag),
        english: source.get(original) ?? '',
        target: text?.target ?? null,
        state: text?.state ?? ('missing' as const)
      }
    })
  })
  return Promise.all(all.map(async text => ({ ...text, from: await textHash(text.target ?? '') })))
}

/** The most words of a translation; none where the English itself is longer, which somebody decided. */
function roomFor(stem: string, key: string, english: string, tag: string): number | null {
  const inEnglish = mostWords(stem, key, SOURCE_TAG)
  return inEnglish === null || countWords(english) > inEnglish ? null : mostWords(stem, key, tag)
}
