import { groupOf } from '../tree/group.ts'
import { SOURCE_TAG } from './words.ts'

/** A language that a screen can be shown in. */
export interface Language {
  /** A BCP 47 tag, as the folder in `locales` is named. */
  readonly tag: string
  /** In its own words, because whoever needs it reads no other. */
  readonly name: string
}

/** The languages that there are words of, English first, the others by their own names. */
export function languagesOf(words: Readonly<Record<string, unknown>>): readonly Language[] {
  const all = Object.entries(words).map(([tag, texts]) => ({ tag, name: ownName(texts) ?? tag }))
  const order = (tag: string) => (tag === SOURCE_TAG ? 0 : 1)
  return all.sort((a, b) => order(a.tag) - order(b.tag) || (a.name < b.name ? -1 : 1))
}

/** Whether a language's words are a translation that no specialist has signed: English stands beside it. */
export const isDraft = (tag: string): boolean => tag !== SOURCE_TAG

/** Of the languages offered the one that a reader asks for first; English when none is. */
export function preferred(languages: readonly Language[], asked: readonly string[]): string {
  const plain = asked.map(tag => tag.toLowerCase().split('-')[0])
  return plain.find(tag => languages.some(language => language.tag === tag)) ?? SOURCE_TAG
}

function ownName(texts: unknown): string | undefined {
  const { language } = groupOf(groupOf(texts).ui)
  return typeof language === 'string' ? language : undefined
}
