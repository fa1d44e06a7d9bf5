import type { Tree } from '../../tree/tree.ts'
import type { Words } from '../words.ts'
import { cut, type Piece } from './cut.ts'
import { doubtedBy } from './doubted.ts'
import { type Candidate, type Fact, type Fragment, factKey, type SaidPhrase } from './fact.ts'
import { SMALL_WORDS } from './lexicon.ts'
import { type Found, openLookUp } from './look-up.ts'
import { openPhraseBook } from './phrase-book.ts'
import { openReadings } from './readings.ts'
import { openScene, outside, type Scene } from './scene.ts'
import { toldBy } from './told.ts'
import { UNIT_WORDS } from './typed-units.ts'
import { byWorry } from './worry.ts'

/** What a tree is told in, and the words of every language offered. */
export interface Source {
  readonly tree: Tree
  /** Callers' own words, by language tag. */
  readonly said: Readonly<Record<string, readonly SaidPhrase[]>>
  readonly words: readonly Words[]
}

/** Reads facts as callers say them. Only what is clear is `sure`; all else is offered. */
export interface FactReader {
  /** The facts of a whole line, part by part. Nothing of the line is lost. */
  read(line: string): readonly Fragment[]
  /** What the words being typed may come to, best first. */
  suggest(text: string): readonly Candidate[]
}

/** Parts of a line that are read; whoever pastes more has pasted something else. */
const MOST_FRAGMENTS = 20
const MOST_CANDIDATES = 8

/** Opens the reading of facts for one tree. */
export function createFactReader({ tree, said, words }: Source): FactReader {
  const book = openPhraseBook(tree, said, words)
  const readings = openReadings(tree, book, words)
  const lookUp = openLookUp(book)
  const worry = byWorry(tree)

  function readPiece({ text, asked }: Piece, typing: boolean): Fragment {
    const scene = openScene(text, asked, book)
    const { doubted, negators } = scene.stance
    const { candidates: measured, span, numbered } = readings(scene)
    const told = doubted ? doubtedBy(scene, book, numbered) : toldBy(scene, book)
    const done = (doubted ? told : measured).some(({ sure }) => sure)
    const open = !done && unexplained(scene, numbered)
    const more = typing || open ? lookUp(scene, typing) : []
    // "Rotten egs": a longer phrase that may be meant leaves no shorter one sure.
    const contested = open && more.some(({ fits, ...found }) => fits > 0 && !holds(told, found))
    const clear = [...told.map(each => (contested ? { ...each, sure: false } : each)), ...measured]
    clear.sort(worry)
    const candidates = once(
      clear,
      [...more].sort((a, b) => (a.fits === 2 && b.fits === 2 ? worry(a, b) : 0))
    )
    const denied = negators.length > 0 && !doubted && !candidates.some(({ sure }) => sure)
    if (span) return { text, candidates, problem: 'out-of-span', span }
    if (denied && (candidates.length > 0 || scene.spots.length > 0)) {
      return { text, candidates, problem: 'said-not-seen' }
    }
    return { text, candidates, ...(candidates.length === 0 && { problem: 'not-understood' }) }
  }

  return {
    read: line =>
      cut(line, book).map((piece, index) =>
        index < MOST_FRAGMENTS
          ? readPiece(piece, false)
          : { text: piece.text, candidates: [], problem: 'not-understood' }
      ),
    suggest(text) {
      const last = cut(text, book).at(-1)
      return last ? readPiece(last, true).candidates.slice(0, MOST_CANDIDATES) : []
    }
  }
}

const holds = (candidates: readonly Candidate[], fact: Fact): boolean =>
  candidates.some(each => factKey(each) === factKey(fact))

/** Whether words of a piece belong to no phrase, no name and no reading, and are not small. */
const unexplained = (scene: Scene, numbered: boolean): boolean =>
  outside(scene, [...scene.spots, ...scene.names]).some(at => {
    const { word = '', number } = scene.tokens[at] ?? {}
    return number === undefined && !SMALL_WORDS.has(word) && !(numbered && UNIT_WORDS.has(word))
  })

/**
 * Each fact once, what is sure first. Of what is only looked up no more than can be picked from.
 */
function once(clear: readonly Candidate[], more: readonly Found[]): readonly Candidate[] {
  const ordered = [
    ...clear.filter(({ sure }) => sure),
    ...clear.filter(({ sure }) => !sure),
    ...more.map(({ fits: _, ...candidate }) => candidate)
  ]
  const all = new Map<string, Candidate>()
  for (const [place, candidate] of ordered.entries()) {
    const key = factKey(candidate)
    const room = place < clear.length || all.size < MOST_CANDIDATES
    if (room && !all.has(key)) all.set(key, candidate)
  }
  return [...all.values()]
}
