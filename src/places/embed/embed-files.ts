import type { TreeBundle } from '../../opening/bundle.ts'
import type { TextsByTag } from '../../opening/speech.ts'
import type { Language } from '../../words/languages.ts'
import { SOURCE_TAG } from '../../words/words.ts'

/** What the script itself holds: of the trees their names alone, and the words for when no file comes. */
export interface EmbedCatalogue {
  readonly languages: readonly Language[]
  readonly trees: readonly string[]
  /** What is in the name of every file, so that none is taken from another build. */
  readonly mark: string
  /** Trees that were withdrawn: nothing of them is here. */
  readonly withdrawn: readonly string[]
  /** The few words that must be there when nothing else comes, in the languages that most read. */
  readonly help: TextsByTag
}

/** The language in which it is said that nothing comes. */
export const helpLanguage = ({ help }: EmbedCatalogue, language: string): string =>
  Object.hasOwn(help, language) ? language : SOURCE_TAG

/** The files of one tree, as addresses from the script's own folder. */
export interface TreeFiles {
  /** By language tag: a `FirstQuestion`. */
  readonly first: Readonly<Record<string, string>>
  /** A `WholeTree`. */
  readonly whole: string
  /** By language tag: the `Texts` of the whole walk. */
  readonly words: Readonly<Record<string, string>>
  /** The drawings by picture id. */
  readonly drawings: string
}

/** Where the files of a tree lie; undefined for a tree that is not here. */
export function filesOf(
  { trees, mark, languages }: Pick<EmbedCatalogue, 'trees' | 'mark' | 'languages'>,
  tree: string
): TreeFiles | undefined {
  if (!trees.includes(tree)) return undefined
  const file = (part: string) => `embed/${tree}-${part}-${mark}.json`
  const byTag = (part: string) =>
    Object.fromEntries(languages.map(({ tag }) => [tag, file(`${part}-${tag}`)]))
  return {
    first: byTag('first'),
    whole: file('whole'),
    words: byTag('words'),
    drawings: file('drawings')
  }
}

/** A tree as it is walked; its words come in files of their own. */
export type WholeTree = Pick<TreeBundle, 'tree' | 'sources' | 'pictures' | 'lookAlikes'>
