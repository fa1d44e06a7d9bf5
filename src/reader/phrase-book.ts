import type { CallersWords, SaidPhrase, SignPair } from '../tree/callers-words.ts'
import type { Observation } from '../tree/observation.ts'
import type { Tree } from '../tree/tree.ts'
import { answerHint, answerLabel } from '../words/tree-texts.ts'
import { SOURCE_TAG, type Words } from '../words/words.ts'
import { GRAMMARS } from './grammars.ts'
import { baseOf, SENSES, SMALL_WORDS } from './lexicon.ts'
import { tokensOf, wordsOf } from './normal.ts'
import { withRivals } from './rivals.ts'
import { type Starts, startsOf } from './spot.ts'
import { answersOf } from './worry.ts'

/** Words by which an answer, a sign or an observation is known. */
export interface Phrase {
  readonly text: string
  readonly words: readonly string[]
  readonly observation: Observation
  /** Null: the words name only what is observed. */
  readonly answer: string | null
  readonly force: SaidPhrase['force']
  /** A caller's own words or an id, not a label. */
  readonly spoken: boolean
  /** Whether a "no" beside them would be noticed. */
  readonly readable: boolean
}

/** Every phrase that a tree can take a fact from, in all languages offered. */
export interface PhraseBook {
  readonly phrases: readonly Phrase[]
  /** By their words, joined with spaces. */
  readonly telling: ReadonlyMap<string, readonly Phrase[]>
  readonly naming: ReadonlyMap<string, readonly Phrase[]>
  readonly tellingStarts: Starts
  readonly namingStarts: Starts
  readonly longest: number
  /** The words with which a phrase of several begins, at every length. */
  readonly beginnings: ReadonlySet<string>
  /** Every word that stands in a phrase, as it is spelled. */
  readonly spellings: readonly string[]
  /** Words that are no typing error of another. */
  readonly known: ReadonlySet<string>
  /** Observations that settle another, in a way of looking of their own. */
  readonly settling: ReadonlySet<string>
  /** What is made, and in what: it tells nothing by itself. */
  readonly foods: ReadonlySet<string>
  readonly both: readonly SignPair[]
  /** Observations that somebody smells or tastes, and of those the signs by which they do. */
  readonly sensed: ReadonlySet<string>
  readonly smelled: ReadonlySet<string>
  /** Callers' own phrases of an answer, by each word of theirs that is not small. */
  readonly spokenWith: ReadonlyMap<string, readonly Phrase[]>
  /** The words that callers use of an answer, or of an observation by its names. */
  ownWords(observation: string, answer: string | null): ReadonlySet<string>
  /** The answers of which callers use a word, each as its observation and its id. */
  tellersOf(word: string): ReadonlySet<string>
}

/** Words of no listed language are offered, never taken. */
const NO_GRAMMAR = ''

const NOTHING: ReadonlySet<string> = new Set()

/** An answer of an observation as one word. */
export const meaningKey = (observation: string, answer: string | null): string =>
  `${observation} ${answer ?? ''}`

/** Gathers the phrases of a tree's observations: callers' words, labels, ids and short names. */
export function openPhraseBook(
  tree: Tree,
  { phrases: said, foods, both }: CallersWords,
  languages: readonly Words[]
): PhraseBook {
  const phrases: Phrase[] = []
  const own = new Map<string, Set<string>>()
  const names = new Set<string>(SMALL_WORDS)
  const spellings = new Set<string>()
  const settling = settlingOf(tree)
  const doubtful = doubtfulIn(said)
  const add = (text: string, tag: string, of: Pick<Phrase, 'observation' | 'answer' | 'force'>) => {
    const words = wordsOf(text)
    for (const { raw, word } of tokensOf(text)) spellings.add(raw).add(word)
    // What may mean several things does so as a label too.
    const again = of.force === 'told' && doubtful.has(keyOf(of.observation.id, of.answer, text))
    if (words.length === 0 || again) return
    phrases.push({ ...of, text, words, spoken: false, readable: Object.hasOwn(GRAMMARS, tag) })
  }
  const addOwn = (
    text: string,
    tag: string,
    observation: Observation,
    answer: string | null,
    force: Phrase['force'] = 'told'
  ) => {
    const before = phrases.length
    add(text, tag, { observation, answer, force })
    const added = phrases[before]
    if (added === undefined) return
    phrases[before] = { ...added, spoken: true }
    const key = meaningKey(observation.id, answer)
    own.set(key, new Set([...(own.get(key) ?? []), ...added.words]))
  }
  for (const [tag, ofTag] of Object.entries(said)) {
    for (const { phrase, observation: id, answer, force } of ofTag) {
      const observation = Object.hasOwn(tree.observations, id) ? tree.observations[id] : undefined
      if (observation && (answer === null || takes(observation, answer))) {
        addOwn(phrase, tag, observation, answer, force)
      }
    }
  }
  for (const observation of Object.values(tree.observations)) {
    // What settles another question was seen in its own way: only words that say so tell it.
    const settles = settling.has(observation.id)
    addOwn(spaced(observation.id), SOURCE_TAG, observation, null)
    for (const words of languages) {
      for (const name of shortNames(words, observation.id)) {
        addOwn(name, words.tag, observation, null)
      }
    }
    for (const answer of answersOf(observation)) {
      for (const words of languages) {
        const tag = settles ? NO_GRAMMAR : words.tag
        add(answerLabel(words, observation.id, answer), tag, { observation, answer, force: 'told' })
        for (const word of wordsOf(answerHint(words, observation.id, answer) ?? '')) names.add(word)
      }
    }
  }
  const telling = withRivals(byWords(phrases.filter(({ answer }) => answer !== null)))
  const naming = byWords(phrases.filter(({ answer }) => answer === null))
  const spokenWith = spokenIn(phrases)
  const smells = phrases.filter(
    ({ spoken, answer, words, observation }) =>
      spoken &&
      observation.about === 'batch' &&
      observation.kind === 'signs' &&
      answer !== 'none' &&
      words.some(word => SENSES.has(word))
  )
  for (const { words } of phrases) for (const word of words) names.add(word)
  return {
    phrases,
    telling,
    naming,
    tellingStarts: startsOf(telling),
    namingStarts: startsOf(naming),
    beginnings: new Set(
      phrases.flatMap(({ words }) => words.map((_, index) => words.slice(0, index + 1).join(' ')))
    ),
    longest: Math.max(1, ...phrases.map(({ words }) => words.length)),
    spellings: [...spellings],
    known: names,
    settling,
    foods: new Set(Object.values(foods).flatMap(some => some.flatMap(wordsOf).map(baseOf))),
    both: both.filter(({ observation }) => Object.hasOwn(tree.observations, observation)),
    sensed: new Set(smells.map(({ observation }) => observation.id)),
    smelled: new Set(smells.map(({ observation, answer }) => meaningKey(observation.id, answer))),
    spokenWith,
    ownWords: (observation, answer) => own.get(meaningKey(observation, answer)) ?? NOTHING,
    tellersOf: word =>
      new Set(
        (spokenWith.get(word) ?? []).map(({ observation, answer }) =>
          meaningKey(observation.id, answer)
        )
      )
  }
}

/** None of the signs is no sign of its own, and can be said all the same. */
const takes = (observation: Observation, answer: string): boolean =>
  answersOf(observation).includes(answer) || (observation.kind === 'signs' && answer === 'none')

const keyOf = (observation: string, answer: string | null, text: string): string =>
  `${meaningKey(observation, answer)} ${wordsOf(text).join(' ')}`

function doubtfulIn(said: CallersWords['phrases']): ReadonlySet<string> {
  return new Set(
    Object.values(said)
      .flat()
      .filter(({ force }) => force === 'may-mean')
      .map(({ observation, answer, phrase }) => keyOf(observation, answer, phrase))
  )
}

function spokenIn(phrases: readonly Phrase[]): ReadonlyMap<string, readonly Phrase[]> {
  const holding = new Map<string, Phrase[]>()
  for (const phrase of phrases) {
    if (!phrase.spoken || phrase.answer === null || phrase.answer === 'none') continue
    for (const word of new Set(phrase.words)) {
      if (SMALL_WORDS.has(word)) continue
      holding.set(word, [...(holding.get(word) ?? []), phrase])
    }
  }
  return holding
}

const settlingOf = (tree: Tree): ReadonlySet<string> =>
  new Set(
    Object.values(tree.observations).flatMap(observation =>
      observation.kind === 'choice' && observation.settles !== undefined ? [observation.id] : []
    )
  )

const spaced = (id: string): string => id.replaceAll('-', ' ')

/** "Smell, liquid" is called by either word. */
function shortNames(words: Words, observation: string): readonly string[] {
  if (!words.has(`ui:short.${observation}`)) return []
  const whole = words.t(`ui:short.${observation}`)
  return [...new Set([whole, ...whole.split(/, | and | y /)])]
}

function byWords(phrases: readonly Phrase[]): ReadonlyMap<string, readonly Phrase[]> {
  const all = new Map<string, Phrase[]>()
  for (const phrase of phrases) {
    const key = phrase.words.join(' ')
    all.set(key, [...(all.get(key) ?? []), phrase])
  }
  return all
}
