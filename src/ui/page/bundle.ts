import type { Tree } from '../../tree/tree.ts'
import type { SourceLedger } from '../../words/sources.ts'
import type { Setting } from '../parts/setting.tsx'

/** What a browser needs of one tree: its meaning without the rules, its words, its sources. */
export interface TreeBundle {
  readonly tree: Tree
  readonly sources: SourceLedger
  /** By namespace, of one language. */
  readonly words: Readonly<Record<string, unknown>>
  readonly pictures: Setting['pictures']
}

/** What the first screen needs: the trees there are, and the words of the screens themselves. */
export interface Catalogue {
  readonly trees: readonly CatalogueEntry[]
  readonly ui: unknown
}

export interface CatalogueEntry {
  readonly id: string
  readonly edition: number
  readonly fingerprint: string
  readonly title: string
  readonly about: string
}

/** How a tree and its drawings are fetched. */
export type Openers = Readonly<
  Record<
    string,
    {
      readonly open: () => Promise<{ readonly default: TreeBundle }>
      readonly draw: () => Promise<{ readonly default: Readonly<Record<string, string>> }>
    }
  >
>
