import type { Tree } from '../tree/tree.ts'
import type { Texts, TreeBundle } from './bundle.ts'

/** The words of a first screen in one language. */
export interface FirstWords {
  readonly texts: Texts
  /** The English of what tells people what to do; null in English. */
  readonly cautions: Texts | null
}

/** What the first question of one tree needs in one language, and nothing more. */
export interface FirstQuestion extends FirstWords {
  /** The tree with its first question alone: enough to show, not to walk. */
  readonly tree: Tree
  /** The titles of what it rests on, by id. */
  readonly sources: Readonly<Record<string, string>>
  readonly pictures: TreeBundle['pictures']
  /** How many questions can follow at the very most. */
  readonly atMostMore: number
}
