import type { SignValue } from '../tree/answers.ts'
import type { Candidate } from './fact.ts'
import { NEGATORS, SMALL_WORDS } from './lexicon.ts'
import { factOf } from './meaning.ts'
import { type Token, tokenOf, tokensOf } from './normal.ts'
import { meaningKey, type Phrase, type PhraseBook } from './phrase-book.ts'
import type { Scene } from './scene.ts'
import { oneSlip } from './typos.ts'
import { isDanger } from './worry.ts'

/** Something found by a part of its words. */
export interface Found extends Candidate {
  /** It goes on as the words being typed begin. */
  readonly goesOn: boolean
  /** Every word that was looked up stands in it. */
  readonly holdsAll: boolean
}

/** A word longer than any in a phrase is no word. */
const LONGEST_WORD = 24
/** Of a longer piece only the first words are looked up. */
const MOST_WORDS = 16
/** Shorter beginnings begin too much. */
const SHORTEST_BEGINNING = 3
/** Less of a phrase than this, by the weight of its words, is no hint of it. */
const LEAST = 0.5
/** What small words and foods weigh: a rare word weighs 1. */
const SMALL = 0.3
const FOOD = 0.2

interface Entry {
  readonly phrase: Phrase
  /** Its words that are not small, and what all of them weigh. */
  readonly content: readonly string[]
  readonly weight: number
  readonly raw: string
}

/**
 * Opens the search for phrases that a piece holds in part, unfinished or mistyped: never sure. The rarer a
 * word is among the answers, the more it says. A danger of a person, and that
 * nobody had any, is found by all its words alone: nobody reads 911 to somebody whose jar is dark brown.
 */
export function openWeak(book: PhraseBook): (scene: Scene, typing: boolean) => readonly Found[] {
  const meanings = new Map<string, Set<string>>()
  for (const { words, observation, answer } of book.phrases) {
    for (const word of words) {
      const of = meanings.get(word) ?? new Set()
      meanings.set(word, of.add(meaningKey(observation.id, answer)))
    }
  }
  // What is made tells nothing by itself.
  const weightOf = (word: string): number =>
    SMALL_WORDS.has(word)
      ? SMALL
      : (book.foods.has(word) ? FOOD : 1) / Math.sqrt(meanings.get(word)?.size ?? 1)
  const entries = book.phrases.map((phrase): Entry => {
    const content = phrase.words.filter(word => !SMALL_WORDS.has(word) && !/^\d/.test(word))
    const weight = phrase.words.reduce((sum, word) => sum + weightOf(word), 0)
    const raw = tokensOf(phrase.text)
      .map(token => token.raw)
      .join(' ')
    return { phrase, content, weight, raw }
  })
  const byWord = new Map<string, Entry[]>()
  for (const entry of entries) {
    for (const word of entry.content) byWord.set(word, [...(byWord.get(word) ?? []), entry])
  }
  const slips = (raw: string, shortest: number): readonly string[] =>
    raw.length < 5
      ? []
      : book.spellings
          .filter(each => each.length >= shortest && beginsAlike(raw, each) && oneSlip(raw, each))
          .map(each => tokenOf(each).word)

  return (scene, typing) => {
    const tokens = scene.tokens
      .filter(
        ({ word, number }) =>
          number === undefined && !SMALL_WORDS.has(word) && word.length <= LONGEST_WORD
      )
      .slice(0, MOST_WORDS)
    if (tokens.length === 0) return []
    const last = tokens.at(-1)
    const meant = tokens.map(token => {
      const begun = typing && token === last && token.raw.length >= SHORTEST_BEGINNING
      const more = begun ? beginning(byWord, token) : []
      const all = (shortest: number) =>
        new Set([...(byWord.has(token.word) ? [token.word] : slips(token.raw, shortest)), ...more])
      return { any: all(5), grave: all(6) }
    })
    const beginningRaw = scene.tokens.map(({ raw }) => raw).join(' ')
    const looked = new Set(
      meant.flatMap(({ any }) => [...any].flatMap(word => byWord.get(word) ?? []))
    )
    const here = new Set(scene.tokens.map(({ word }) => word))
    const found = [...looked].flatMap(entry => {
      const { observation: of, answer, force } = entry.phrase
      const grave =
        of.about === 'person' && answer !== null && (force === 'rules-out' || isDanger(of, answer))
      // "Poked" is near "puked", and a word of its own.
      const heard = meant.map(each => (grave ? each.grave : each.any))
      if (scene.sensed && of.about === 'batch' && !book.sensed.has(of.id)) return []
      const matched = entry.content.filter(word => heard.some(words => words.has(word)))
      const small = entry.phrase.words.filter(
        word => SMALL_WORDS.has(word) && (here.has(word) || isSaid(word, scene.tokens))
      )
      const share =
        [...matched, ...small].reduce((sum, word) => sum + weightOf(word), 0) / entry.weight
      const goesOn = typing && beginningRaw.length >= 3 && entry.raw.startsWith(beginningRaw)
      const holdsAll = heard.every(words => entry.content.some(word => words.has(word)))
      return valuesFor(scene, entry.phrase, matched).flatMap(value => {
        const fact = factOf(entry.phrase, value)
        if (!fact || !isHint(grave, share, goesOn, tokens.length)) return []
        return [{ ...fact, matched: entry.phrase.text, sure: false, goesOn, holdsAll, share }]
      })
    })
    return found.sort(
      (a, b) =>
        Number(b.goesOn) - Number(a.goesOn) ||
        Number(b.holdsAll) - Number(a.holdsAll) ||
        b.share - a.share
    )
  }
}

/** Another first letter is another word, unless it was left out or swapped with the next. */
const beginsAlike = (typed: string, word: string): boolean =>
  typed[0] === word[0] || word.slice(1) === typed || (typed[0] === word[1] && typed[1] === word[0])

function isHint(grave: boolean, share: number, goesOn: boolean, words: number): boolean {
  if (grave) return share >= 0.99 || (goesOn && words > 1)
  return goesOn || share >= LEAST
}

const beginning = (byWord: ReadonlyMap<string, unknown>, { word, raw }: Token): readonly string[] =>
  [...byWord.keys()].filter(each => each.startsWith(raw) || each.startsWith(word))

/** Whether a "no" of a phrase stands in the piece, mistyped or not. */
const isSaid = (negator: string, tokens: readonly Token[]): boolean =>
  tokens.some(({ word, raw }) => word === negator || (raw.length >= 5 && oneSlip(raw, negator)))

/** What a found phrase may be meant as, most worrying first. */
function valuesFor(
  { stance, tokens }: Scene,
  { observation, answer, words, force }: Phrase,
  matched: readonly string[]
): readonly SignValue[] {
  if (stance.doubted) return ['unsure']
  if (answer === null) return []
  const refuses = words.filter(word => NEGATORS.has(word))
  if (force === 'rules-out') {
    return refuses.every(word => tokens.some(each => each.word === word)) ? ['no'] : []
  }
  // A "no" that belongs to the phrase, as in "no starter", turns nothing round.
  const strangers = stance.negators.filter(place => !words.includes(tokens[place]?.word ?? ''))
  if (strangers.length === 0) {
    // Without its "no" a phrase says something else: "starter" is not "no starter".
    return refuses.length > 0 && !refuses.some(each => isSaid(each, tokens)) ? [] : ['yes']
  }
  const reached = [...stance.denied].some(place => matched.includes(tokens[place]?.word ?? ''))
  if (!reached) return ['yes', 'no']
  return observation.kind === 'signs' ? ['no'] : []
}
