import { type Comparison, compare } from '../../compare/compare.ts'
import { type Reworded, reworded, type SpokenTree } from '../../compare/wording.ts'
import { limitCasesOf, type NumericLimit } from '../../tables/limit-cases.ts'
import {
  type AlarmPattern,
  alarmPatternsOf,
  type OutcomePattern,
  patternsOf,
  patternsOfLevel,
  type SidePatterns,
  setsOfLevel
} from '../../tables/patterns.ts'
import { lensesOf } from '../../tables/tables.ts'
import { TRACKS } from '../../tree/observation.ts'
import type { Tree } from '../../tree/tree.ts'
import type { SourceLedger } from '../../words/sources.ts'
import type { Words } from '../../words/words.ts'
import { itemsOf, type PacketItem } from './items.ts'
import { type NoteOccasion, noteOccasions } from './note-occasions.ts'
import { type SpokenText, spokenTexts } from './texts.ts'

/** What a packet is made of. */
export interface PacketOf {
  readonly tree: Tree
  readonly words: Words
  readonly sources: SourceLedger
  /** The tree's English texts, by namespace; of the screens those that carry safety. */
  readonly texts: Readonly<Record<string, unknown>>
  /** The tree as it is now and as it was last published, with all that they say; null where it never was. */
  readonly published: { readonly before: SpokenTree; readonly after: SpokenTree } | null
}

/** Everything that a specialist reads before signing a tree. */
export interface Packet extends Omit<PacketOf, 'texts' | 'published'> {
  readonly items: readonly PacketItem[]
  readonly alarms: readonly AlarmPattern[]
  readonly sides: readonly SidePatterns[]
  /** When something may be used as directed, in full; null where that takes more than anybody reads. */
  readonly freed: readonly OutcomePattern[] | null
  readonly notes: readonly NoteSaid[]
  readonly limits: readonly NumericLimit[]
  readonly texts: readonly SpokenText[]
  readonly change: { readonly comparison: Comparison; readonly wording: readonly Reworded[] } | null
}

/** When a note is said. */
export interface NoteSaid {
  readonly note: string
  readonly sets: bigint
  /** Null where they are more than anybody reads: then its occasions tell it. */
  readonly patterns: readonly OutcomePattern[] | null
  /** The answers that add it, on every walk that comes to them. */
  readonly occasions: readonly NoteOccasion[]
}

/** More patterns of one note, or of what frees, are told in another way. */
const MOST_OF_A_NOTE = 4
const MOST_CONDITIONS = 6
const MOST_THAT_FREE = 40

/** Works out what a packet shows. @throws Error where the published edition cannot be compared. */
export function packetOf({ tree, words, sources, texts, published }: PacketOf): Packet {
  const notes = lensesOf(tree).flatMap(lens => (typeof lens === 'object' ? [lens.note] : []))
  return {
    tree,
    words,
    sources,
    items: itemsOf({ tree, words, sources, texts }),
    alarms: alarmPatternsOf(tree),
    sides: [...TRACKS, 'use' as const].map(lens => patternsOf(tree, lens)),
    freed: patternsOfLevel(tree, 'use', 0, MOST_THAT_FREE),
    notes: notes.map(note => ({
      note,
      sets: setsOfLevel(tree, { note }, 1),
      patterns: readable(patternsOfLevel(tree, { note }, 1, MOST_OF_A_NOTE)),
      occasions: noteOccasions(tree, note)
    })),
    limits: limitCasesOf(tree),
    texts: spokenTexts(texts),
    change: published && {
      comparison: compare(published.before.tree, published.after.tree),
      wording: reworded(published.before, published.after)
    }
  }
}

const readable = (patterns: readonly OutcomePattern[] | null) =>
  patterns?.some(({ when }) => when.length > MOST_CONDITIONS) ? null : patterns
