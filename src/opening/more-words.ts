import { groupOf } from '../tree/group.ts'
import type { Catalogue, Openers, Texts } from './bundle.ts'

/** Texts by language tag. */
type ByTag = Readonly<Record<string, Texts>>

/** Adds the words that one page alone says to those of every screen. */
export function withMoreWords(
  catalogue: Catalogue,
  openers: Openers,
  more: ByTag
): { readonly catalogue: Catalogue; readonly openers: Openers } {
  const screens = Object.entries(openers.screens).map(
    ([tag, open]) =>
      [
        tag,
        async () => {
          const { default: texts } = await open()
          return { default: merged(texts, more[tag]) }
        }
      ] as const
  )
  return {
    catalogue: { ...catalogue, texts: merged(catalogue.texts, more.en) },
    openers: { ...openers, screens: Object.fromEntries(screens) }
  }
}

const merged = (texts: Texts, more: Texts = {}): Texts => ({
  ...texts,
  ...more,
  ui: { ...groupOf(texts.ui), ...groupOf(more.ui) }
})
