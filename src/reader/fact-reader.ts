import type { CallersWords } from '../tree/callers-words.ts'
import { asSpokenOf } from '../tree/derived.ts'
import type { Tree } from '../tree/tree.ts'
import type { Words } from '../words/words.ts'
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
  type Told
} from './fact.ts'
import { type Heard, openHearing } from './heard.ts'
import { PERSONS, PETS, SMALL_WORDS } from './lexicon.ts'
import { MOST_CANDIDATES, offerOf } from './offer.ts'
import { otherTreesIn } from './other-trees.ts'
import { openPhraseBook } from './phrase-book.ts'
import { openReadings } from './readings.ts'
import { openScene, outside, type Scene } from './scene.ts'
import { openTogether, type ReadPart } from './together.ts'
import { deniedBy, scatteredBy, toldBy } from './told.ts'
import { UNIT_WORDS } from './typed-units.ts'
import { openWeak } from './weak.ts'
import { wellIn } from './well.ts'
import { byWorry, isDangerFact } from './worry.ts'

/** What a tree is told in, and the words of every language offered. */
export interface Source {
  readonly tree: Tree
  readonly said: CallersWords
  readonly words: readonly Words[]
}

/** Reads facts as callers say them. Only what is clear is `sure`; all else is offered. */
export interface FactReader {
  /** The facts of a whole line, part by part. Nothing of the line is lost. */
  read(line: string): readonly Fragment[]
  /** The part being typed, and what it may come to, best first. */
  begun(text: string): Fragment | null
  /** What parts of a line come to after the facts told before. */
  hear(before: readonly Told[], parts: readonly Fragment[]): Heard
  /** The trees that parts of a line may be about instead, by the ferment that they name. */
  elsewhere(parts: readonly Fragment[]): readonly string[]
}

/** Parts of a line that are read; whoever pastes more has pasted something else. */
const MOST_FRAGMENTS = 20
/** Parts that were read before are not read again while a line is typed. */
const MOST_KEPT = 200

/**
 * The languages that callers' own words are known of. Of another the labels alone would be read, by words
 * that nobody has tried.
 */
function wordsRead(offered: readonly Words[], { phrases }: CallersWords): readonly Words[] {
  const spoken = offered.filter(({ tag }) => Object.hasOwn(phrases, tag))
  return spoken.length > 0 ? spoken : offered
}

/** Opens the reading of facts for one tree. */
export function createFactReader({ tree: whole, said, words: offered }: Source): FactReader {
  const tree = asSpokenOf(whole)
  const { ferments } = said
  const words = wordsRead(offered, said)
  const book = openPhraseBook(tree, said, words)
  const readings = openReadings(tree, book, words, said.bands)
  const weak = openWeak(book)
  const worry = byWorry(tree)
  const distress = openDistress(book)
  const ages = openAges(book)
  const together = openTogether(book)
  const kept = new Map<string, ReadPart>()

  function readPiece(piece: Piece, typing: boolean): ReadPart {
    const key = JSON.stringify([piece, typing])
    const before = kept.get(key)
    if (before) return before
    const part = readAnew(piece, typing)
    if (kept.size >= MOST_KEPT) kept.clear()
    kept.set(key, part)
    return part
  }

  function readAnew(piece: Piece, typing: boolean): ReadPart {
    const { corrects, joined, contrasts, turnedOut } = piece
    const scene = openScene(piece, book)
    const denies = piece.asked === 'no' ? deniedBy(scene, book) : []
    const part = (fragment: Omit<Fragment, 'text'>): ReadPart => ({
      fragment: {
        text: piece.typed,
        ...fragment,
        ...(corrects && { corrects }),
        ...(denies.length > 0 && { denies })
      },
      tokens: scene.tokens,
      joined,
      contrasts,
      turnedOut
    })
    // Whoever asks what to do tells nothing by what the question mentions.
    if (piece.asked === 'plea') return part({ candidates: [], problem: 'asked' })
    const { doubted, negators } = scene.stance
    const { candidates: measured, span, numbered } = readings(scene)
    const facts = doubted ? doubtedBy(scene, book, numbered) : toldBy(scene, book)
    const failing = piece.asked === 'no' ? distress(scene) : []
    const lacked = doubted ? [] : lackedBy(scene)
    const well = wellIn(scene)
    // "A year old" is a jar's age where nobody is spoken of.
    const someone = scene.tokens.some(({ word }) => PERSONS.has(word))
    const aged = someone || measured.length === 0 ? ages(scene) : []
    const done = [...well, ...(doubted ? facts : measured)].some(({ sure }) => sure)
    // A gentle thing is sure only when the whole piece speaks of it.
    const whole = facts.some(each => each.sure && !isDangerFact(tree, each))
    const open = !done && !whole && unexplained(scene, numbered)
    const more = typing || open ? weak(scene, typing) : []
    // "Rotten egs": a longer phrase that may be meant leaves no shorter one sure.
    const contested = open && more.some(found => found.holdsAll && !holds(facts, found))
    const clear = [
      ...facts.map(each => (contested ? { ...each, sure: false } : each)),
      ...[...failing, ...aged, ...lacked, ...measured, ...well]
    ]
    clear.sort(worry)
    // What settles another question is thought of after the question itself.
    const later = ({ observation }: Fact) => book.settling.has(observation)
    const scattered = scatteredBy(scene)
    const offered = offerOf(
      tree,
      [...clear, ...scattered.filter(each => !later(each))],
      [...more.filter(each => !later(each)), ...scattered.filter(later), ...more.filter(later)]
    )
    const pet = !someone && scene.tokens.some(({ word }) => PETS.has(word))
    const candidates =
      piece.asked === 'look' || pet ? offered.filter(each => !isPersonal(tree, each)) : offered
    const denied =
      negators.length > 0 &&
      !doubted &&
      failing.length + lacked.length === 0 &&
      !candidates.some(({ sure }) => sure)
    const problem: Problem | null =
      denied && (candidates.length > 0 || scene.spots.length > 0)
        ? 'said-not-seen'
        : candidates.length === 0
          ? piece.asked === 'no'
            ? 'not-understood'
            : 'asked'
          : null
    if (span) return part({ candidates, span, problem: 'out-of-span' })
    return part({ candidates, ...(problem && { problem }) })
  }

  const readParts = (pieces: readonly Piece[], typing: boolean): readonly Fragment[] =>
    together(pieces.map((piece, index) => readPiece(piece, typing && index === pieces.length - 1)))

  function begun(text: string): Fragment | null {
    const last = readParts(cut(text, book).slice(-MOST_FRAGMENTS), true).at(-1)
    return last ? { ...last, candidates: last.candidates.slice(0, MOST_CANDIDATES) } : null
  }

  return {
    read(line) {
      const pieces = cut(line, book)
      const beyond = pieces.slice(MOST_FRAGMENTS)
      return [
        ...readParts(pieces.slice(0, MOST_FRAGMENTS), false),
        ...beyond.map(
          ({ typed }): Fragment => ({ text: typed, candidates: [], problem: 'not-understood' })
        )
      ]
    },
    begun,
    hear: openHearing(tree),
    elsewhere(parts) {
      // Whoever asks how something is made does not speak of the jar.
      const said = parts.filter(({ problem }) => problem !== 'asked').map(({ text }) => text)
      return otherTreesIn(said.join(', '), ferments, tree.id)
    }
  }
}

const holds = (candidates: readonly Candidate[], fact: Fact): boolean =>
  candidates.some(each => factKey(each) === factKey(fact))

const isPersonal = (tree: Tree, { observation }: Fact): boolean =>
  tree.observations[observation]?.about === 'person'

/** Whether words of a piece belong to no phrase, no name and no reading, and are not small. */
const unexplained = (scene: Scene, numbered: boolean): boolean =>
  outside(scene, [...scene.spots, ...scene.names]).some(place => {
    const { word = '', number } = scene.tokens[place] ?? {}
    return number === undefined && !SMALL_WORDS.has(word) && !(numbered && UNIT_WORDS.has(word))
  })
