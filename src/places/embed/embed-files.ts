import type { Texts, TreeBundle } from '../../opening/bundle.ts'
import type { TextsByTag } from '../../opening/speech.ts'
import type { Tree } from '../../tree/tree.ts'
import type { Language } from '../../words/languages.ts'

/** What the script itself holds: which trees there are, where their files lie, and the words for when none comes. */
export interface EmbedCatalogue {
  readonly languages: readonly Language[]
  readonly trees: Readonly<Record<string, TreeFiles>>
  /** Trees that were withdrawn: nothing of them is here. */
  readonly withdrawn: readonly string[]
  /** The few words that must be there when nothing else comes. */
  readonly help: TextsByTag
}

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

/** What the first question of one tree needs in one language, and nothing more. */
export interface FirstQuestion {
  /** The tree with its first question alone: enough to show, not to walk. */
  readonly tree: Tree
  readonly sources: TreeBundle['sources']
  readonly pictures: TreeBundle['pictures']
  readonly texts: Texts
  /** The English of what tells people what to do; null in English. */
  readonly cautions: Texts | null
  /** How many questions can follow at the very most. */
  readonly atMostMore: number
}

/** A tree as it is walked; its words come in files of their own. */
export type WholeTree = Pick<TreeBundle, 'tree' | 'sources' | 'pictures' | 'lookAlikes'>
