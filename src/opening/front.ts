import type { TreeChoice } from '../parts/choose.tsx'
import type { Language } from '../words/languages.ts'
import type { FirstWords } from './first-question.ts'
import type { TextsByTag } from './speech.ts'

/** What a page's own script holds: of no tree anything, so that it stays as small however many there are. */
export interface FrontBundle {
  readonly languages: readonly Language[]
  /** The few words until a first screen has come. */
  readonly texts: TextsByTag
  /** What is in the name of every file of first screens, so that none is taken from another edition. */
  readonly edition: string
}

/** The choice of a ferment in one language. */
export interface TreeChoices extends FirstWords {
  readonly trees: readonly TreeChoice[]
}

/** The address of a tree's first question. */
export const firstFile = (tree: string, tag: string, edition: string): string =>
  `assets/first-${tree}-${tag}-${edition}.json`

/** The address of the choice of a ferment. */
export const choicesFile = (tag: string, edition: string): string =>
  `assets/choose-${tag}-${edition}.json`
