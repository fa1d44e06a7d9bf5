import type { CatalogueEntry } from '../parts/catalogue-entry.ts'
import type { Setting } from '../parts/setting.tsx'
import type { BatchCard } from '../tree/batch-card.ts'
import type { CallersWords } from '../tree/callers-words.ts'
import type { KnowHow } from '../tree/know-how.ts'
import type { Tree } from '../tree/tree.ts'
import type { Language } from '../words/languages.ts'
import type { SourceLedger } from '../words/sources.ts'

/** The texts of one language, by namespace. */
export type Texts = Readonly<Record<string, unknown>>

/** What a browser needs of one tree: its meaning without the rules, its English words, its sources. */
export interface TreeBundle {
  readonly tree: Tree
  readonly sources: SourceLedger
  readonly texts: Texts
  readonly pictures: Setting['pictures']
  readonly lookAlikes: Setting['lookAlikes']
}

/** What the first screen needs: the trees there are, the languages, and the screens' own English. */
export interface Catalogue {
  readonly trees: readonly CatalogueEntry[]
  readonly languages: readonly Language[]
  /** `ui`, and of each tree its title. */
  readonly texts: Texts
}

/** Every answer to a how-to question, and what they cite. */
export interface KnowHowBundle {
  readonly answers: readonly KnowHow[]
  readonly sources: SourceLedger
  /** The drawings of what is done, by picture id. */
  readonly drawings: Readonly<Record<string, string>>
  /** What callers call each food, by ferment. */
  readonly called: Readonly<Record<string, readonly string[]>>
}

/** What the sheets of a tree that are not about a verdict hold. */
export interface SheetsBundle {
  /** Null where a ferment has no record of a batch. */
  readonly card: BatchCard | null
  /** The how-to answers chosen for a class. */
  readonly answers: readonly KnowHow[]
  /** What those cite. */
  readonly sources: SourceLedger
  /** By language tag: the texts of these sheets alone. */
  readonly words: Readonly<Record<string, Texts>>
}

type Opened<T> = () => Promise<{ readonly default: T }>

/** How the rest is fetched: a tree, its drawings, its words in a language that is not English. */
export interface Openers {
  readonly trees: Readonly<Record<string, TreeOpener>>
  /** By language tag: what `Catalogue.words` has in English. */
  readonly screens: Readonly<Record<string, Opened<Texts>>>
}

export interface TreeOpener {
  readonly open: Opened<TreeBundle>
  readonly draw: Opened<Readonly<Record<string, string>>>
  readonly words: Readonly<Record<string, Opened<Texts>>>
  /** Callers' own words: the desk alone reads them. */
  readonly said: Opened<CallersWords>
  /** Asked for by whoever looks at what will be printed. */
  readonly sheets: Opened<SheetsBundle>
}
