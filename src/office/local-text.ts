import { asRecord, asText } from './read-json.ts'

/** An office's own text by language tag; one that an office wrote once is in English. */
export type LocalText = Readonly<Record<string, string>>

/** Reads a text, or texts by language tag; undefined when there is none. `wrong`: the tags left out. */
export function readLocalText(authored: unknown): {
  readonly text: LocalText | undefined
  readonly wrong: readonly string[]
} {
  const plain = asText(authored)
  if (plain !== undefined) return { text: { en: plain }, wrong: [] }
  const all = Object.entries(asRecord(authored)).map(
    ([tag, value]) => [tag, asText(value)] as const
  )
  const texts = all.flatMap(([tag, text]) => (text === undefined ? [] : [[tag, text] as const]))
  return {
    text: texts.length === 0 ? undefined : Object.fromEntries(texts),
    wrong: all.flatMap(([tag, text]) => (text === undefined ? [tag] : []))
  }
}

/** The text in a language, if the office wrote one. */
export const textIn = (text: LocalText | null, tag: string): string | undefined =>
  text !== null && Object.hasOwn(text, tag) ? text[tag] : undefined

/** A text in a language, else in English with its tag; null where there is neither. */
export function textOrEnglish(
  text: LocalText | null,
  tag: string
): { readonly tag: string; readonly text: string } | null {
  for (const each of [tag, 'en']) {
    const own = textIn(text, each)
    if (own !== undefined) return { tag: each, text: own }
  }
  return null
}

/** A name in a language, else as it is known in English: a name is better than none. */
export const nameIn = (text: LocalText | null, tag: string): string | undefined =>
  textIn(text, tag) ?? textIn(text, 'en')
