import type { Caution } from '../tree/cautions.ts'
import type { TextKey } from './text-key.ts'
import type { Words } from './words.ts'

/** A caution in a tree's words. @throws MissingText when no author wrote it. */
export const cautionText = (words: Words, tree: string, caution: Caution): string =>
  words.t(`${tree}:cautions.${caution}`)

const RULES_OF_THUMB = ['amounts', 'time', 'film-from-a-bottle']

/** What the trade commonly does, for whoever starts again; only what the tree's authors wrote down. */
export function rulesOfThumb(words: Words, tree: string): readonly string[] {
  const keys = RULES_OF_THUMB.map((id): TextKey => `${tree}:rules-of-thumb.${id}`)
  return keys.filter(key => words.has(key)).map(key => words.t(key))
}

/** The label of a choice's answer, of a sign, of `unsure` or of `none`. */
export function answerLabel(words: Words, observation: string, answer: string): string {
  const start: TextKey = `observations:${observation}`
  const candidates: TextKey[] = [
    `${start}.answers.${answer}.label`,
    `${start}.signs.${answer}.label`,
    `${start}.${answer}.label`,
    `${start}.${answer}`
  ]
  return words.t(candidates.find(key => words.has(key)) ?? `${start}.answers.${answer}.label`)
}

/** The sentence under an answer's label, where the authors wrote one. */
export function answerHint(words: Words, observation: string, answer: string): string | undefined {
  const start: TextKey = `observations:${observation}`
  const candidates: TextKey[] = [
    `${start}.answers.${answer}.hint`,
    `${start}.signs.${answer}.hint`,
    `${start}.${answer}.hint`
  ]
  const found = candidates.find(key => words.has(key))
  return found && words.t(found)
}
