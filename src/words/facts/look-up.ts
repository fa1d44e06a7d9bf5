import MiniSearch from 'minisearch'
import type { SignValue } from '../../tree/answers.ts'
import type { Candidate } from './fact.ts'
import { SMALL_WORDS } from './lexicon.ts'
import { factOf } from './meaning.ts'
import { type Token, tokensOf } from './normal.ts'
import type { Phrase, PhraseBook } from './phrase-book.ts'
import type { Scene } from './scene.ts'
import { oneSlip } from './typos.ts'

/** Something found by a part of its words. */
export interface Found extends Candidate {
  /** 2: it goes on as the words being typed begin; 1: it has all words looked up; 0: some of them. */
  readonly fits: 0 | 1 | 2
  /** More than the name of something asked about leads to it. */
  readonly near: boolean
}

/** A word longer than any in a phrase is no word. */
const LONGEST_WORD = 24
/** Of a longer piece only the first words are looked up. */
const MOST_WORDS = 16

/** Opens the search for phrases that a piece holds in part, unfinished or mistyped: never sure. */
export function openLookUp(book: PhraseBook): (scene: Scene, typing: boolean) => readonly Found[] {
  const index = new MiniSearch<{ id: number; text: string }>({
    fields: ['text'],
    tokenize: text => text.split(' '),
    processTerm: term => term
  })
  index.addAll(
    book.phrases.map(({ text }, id) => ({ id, text: spellings(tokensOf(text)).join(' ') }))
  )
  return (scene, typing) => {
    const tokens = scene.tokens
      .filter(
        ({ word, number }) =>
          number === undefined && !SMALL_WORDS.has(word) && word.length <= LONGEST_WORD
      )
      .slice(0, MOST_WORDS)
    if (tokens.length === 0) return []
    const beginning = tokens.map(({ raw }) => raw).join(' ')
    const matches = index.search(spellings(tokens).join(' '), {
      prefix: term => typing || term.length >= 4,
      fuzzy: term => (term.length >= 6 ? 2 : term.length >= 4 ? 1 : false),
      weights: { prefix: 0.6, fuzzy: 0.5 }
    })
    const found = matches.flatMap(({ id, queryTerms, terms }): readonly Found[] => {
      const phrase = book.phrases[id as number]
      if (phrase === undefined || (phrase.answer === null && !scene.stance.doubted)) return []
      const held = ({ word, raw }: Token) => queryTerms.includes(word) || queryTerms.includes(raw)
      const fits = typing && goesOn(phrase, beginning) ? 2 : tokens.every(held) ? 1 : 0
      const near = queryTerms.some(
        term => !book.naming.has(term) && terms.some(each => alike(term, each))
      )
      return valuesFor(scene, phrase, queryTerms).flatMap(value => {
        const fact = factOf(phrase, value)
        return fact ? [{ ...fact, matched: phrase.text, sure: false, fits, near }] : []
      })
    })
    // What settles another question is thought of after the question itself.
    const later = ({ observation }: Found) => (book.settling.has(observation) ? 1 : 0)
    return [...found].sort((a, b) => b.fits - a.fits || later(a) - later(b))
  }
}

/** What a found phrase may be meant as, most worrying first. */
function valuesFor(
  { stance, tokens }: Scene,
  { observation, words }: Phrase,
  terms: readonly string[]
): readonly SignValue[] {
  if (stance.doubted) return ['unsure']
  // A "no" that belongs to the phrase, as in "no starter", turns nothing round.
  const strangers = stance.negators.filter(at => !words.includes(tokens[at]?.word ?? ''))
  if (strangers.length === 0) return ['yes']
  const reached = [...stance.denied].some(at => {
    const { word = '', raw = '' } = tokens[at] ?? {}
    return terms.includes(word) || terms.includes(raw)
  })
  if (!reached) return ['yes', 'no']
  return observation.kind === 'signs' ? ['no'] : []
}

/** A fuzzy match may be any word: these are the same, begun or with one slip. */
const alike = (typed: string, known: string): boolean =>
  typed === known ||
  (typed.length >= 3 && known.startsWith(typed)) ||
  (typed.length >= 5 && typed[0] === known[0] && oneSlip(typed, known))

const goesOn = ({ text }: Phrase, beginning: string): boolean =>
  tokensOf(text)
    .map(({ raw }) => raw)
    .join(' ')
    .startsWith(beginning)

/** Each word with and without its plural, so that a slip near its end finds it too. */
function spellings(tokens: readonly Token[]): readonly string[] {
  return [...new Set(tokens.flatMap(({ word, raw }) => [word, raw]))]
}
