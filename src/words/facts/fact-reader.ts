import { asSpokenOf } from '../../tree/derived.ts'
import type { Tree } from '../../tree/tree.ts'
import type { Words } from '../words.ts'
import { openAges } from './ages.ts'
import { cut, type Piece } from './cut.ts'
import { openDistress } from './distress.ts'
import { doubtedBy, lackedBy } from './doubted.ts'
import {
  type Candidate,
  type Fact,
  type Fragment,
  factKey,
  type Problem,
  type SaidPhrase
} from './fact.ts'
import { SMALL_WORDS } from './lexicon.ts'
import { openLookUp } from './look-up.ts'
import { MOST_CANDIDATES, offerOf } from './offer.ts'
import { openPhraseBook } from './phrase-book.ts'
import { openReadings } from './readings.ts'
import { openScene, outside, type Scene } from './scene.ts'
import { openTogether, type Part, takesBack } from './together.ts'
import { toldBy } from './told.ts'
import { UNIT_WORDS } from './typed-units.ts'
import { byWorry, isDangerFact } from './worry.ts'

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

/** Opens the reading of facts for one tree. */
export function createFactReader({ tree: whole, said, words }: Source): FactReader {
  const tree = asSpokenOf(whole)
  const book = openPhraseBook(tree, said, words)
  const readings = openReadings(tree, book, words)
  const lookUp = openLookUp(book)
  const worry = byWorry(tree)
  const distress = openDistress(book)
  const ages = openAges(book)
  const together = openTogether(book)

  function readPiece(piece: Piece, typing: boolean): Part {
    const { text } = piece
    const scene = openScene(piece, book)
    const { doubted, negators } = scene.stance
    const { candidates: measured, span, numbered } = readings(scene)
    const told = doubted ? doubtedBy(scene, book, numbered) : toldBy(scene, book)
    const failing = distress(scene)
    const lacked = doubted ? [] : lackedBy(scene)
    const done = (doubted ? told : measured).some(({ sure }) => sure)
    // A gentle thing is sure only when the whole piece speaks of it.
    const whole = told.some(each => each.sure && !isDangerFact(tree, each))
    const open = !done && !whole && unexplained(scene, numbered)
    const more = typing || open ? lookUp(scene, typing) : []
    // "Rotten egs": a longer phrase that may be meant leaves no shorter one sure.
    const contested =
      open && more.some(({ fits, near: _, ...found }) => fits > 0 && !holds(told, found))
    const clear = [
      ...told.map(each => (contested ? { ...each, sure: false } : each)),
      ...[...failing, ...ages(scene), ...lacked, ...measured]
    ]
    clear.sort(worry)
    const candidates = offerOf(
      tree,
      clear,
      [...more].sort((a, b) => (a.fits === 2 && b.fits === 2 ? worry(a, b) : 0))
    )
    const denied =
      negators.length > 0 &&
      !doubted &&
      failing.length + lacked.length === 0 &&
      !(numbered && takesBack(scene.tokens)) &&
      !candidates.some(({ sure }) => sure)
    const part = (problem?: Problem) => ({
      fragment: { text, candidates, ...(problem && { problem }), ...(span && { span }) },
      tokens: scene.tokens
    })
    if (span) return part('out-of-span')
    if (denied && (candidates.length > 0 || scene.spots.length > 0)) return part('said-not-seen')
    return part(candidates.length === 0 ? 'not-understood' : undefined)
  }

  const readParts = (pieces: readonly Piece[], typing: boolean): readonly Fragment[] =>
    together(pieces.map((piece, at) => readPiece(piece, typing && at === pieces.length - 1)))

  return {
    read(line) {
      const pieces = cut(line, book)
      const beyond = pieces.slice(MOST_FRAGMENTS)
      return [
        ...readParts(pieces.slice(0, MOST_FRAGMENTS), false),
        ...beyond.map(({ text }): Fragment => ({ text, candidates: [], problem: 'not-understood' }))
      ]
    },
    suggest(text) {
      const last = readParts(cut(text, book).slice(-MOST_FRAGMENTS), true).at(-1)
      return last ? last.candidates.slice(0, MOST_CANDIDATES) : []
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
