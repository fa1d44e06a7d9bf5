import type { Observation } from '../../tree/observation.ts'
import type { Tree } from '../../tree/tree.ts'
import { answerHint, answerLabel } from '../tree-texts.ts'
import { SOURCE_TAG, type Words } from '../words.ts'
import type { SaidPhrase } from './fact.ts'
import { GRAMMARS } from './grammars.ts'
import { SMALL_WORDS } from './lexicon.ts'
import { wordsOf } from './normal.ts'
import { withRivals } from './rivals.ts'
import { answersOf } from './worry.ts'

/** Words by which an answer, a sign or an observation is known. */
export interface Phrase {
  readonly text: string
  readonly words: readonly string[]
  readonly observation: Observation
  /** Null: the words name only what is observed. */
  readonly answer: string | null
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
  readonly longest: number
  /** The words with which a phrase of several begins, at every length. */
  readonly beginnings: ReadonlySet<string>
  /** Every word that stands in a phrase. */
  readonly vocabulary: ReadonlySet<string>
  /** Words that are no typing error of another. */
  readonly known: ReadonlySet<string>
  /** Observations that settle another, in a way of looking of their own. */
  readonly settling: ReadonlySet<string>
  /** The words that callers use of an answer, or of an observation by its names. */
  ownWords(observation: string, answer: string | null): ReadonlySet<string>
}

/** Words of no listed language are offered, never taken. */
const NO_GRAMMAR = ''

const NOTHING: ReadonlySet<string> = new Set()

/** Gathers the phrases of a tree's observations: callers' words, labels, ids and short names. */
export function openPhraseBook(
  tree: Tree,
  said: Readonly<Record<string, readonly SaidPhrase[]>>,
  languages: readonly Words[]
): PhraseBook {
  const phrases: Phrase[] = []
  const own = new Map<string, Set<string>>()
  const known = new Set<string>(SMALL_WORDS)
  const settling = settlingOf(tree)
  const add = (
    text: string,
    tag: string,
    observation: Observation,
    answer: string | null,
    spoken = false
  ) => {
    const words = wordsOf(text)
    if (words.length === 0) return
    const readable = Object.hasOwn(GRAMMARS, tag)
    phrases.push({ text, words, observation, answer, spoken, readable })
  }
  const addOwn = (text: string, tag: string, observation: Observation, answer: string | null) => {
    add(text, tag, observation, answer, true)
    const key = `${observation.id} ${answer ?? ''}`
    own.set(key, new Set([...(own.get(key) ?? []), ...wordsOf(text)]))
  }
  for (const [tag, ofTag] of Object.entries(said)) {
    for (const { phrase, observation: id, answer } of ofTag) {
      const observation = Object.hasOwn(tree.observations, id) ? tree.observations[id] : undefined
      if (observation && (answer === null || answersOf(observation).includes(answer))) {
        addOwn(phrase, tag, observation, answer)
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
      if (settles) add(spaced(answer), NO_GRAMMAR, observation, answer)
      else addOwn(spaced(answer), SOURCE_TAG, observation, answer)
      for (const words of languages) {
        const tag = settles ? NO_GRAMMAR : words.tag
        add(answerLabel(words, observation.id, answer), tag, observation, answer)
        for (const word of wordsOf(answerHint(words, observation.id, answer) ?? '')) known.add(word)
      }
    }
  }
  const vocabulary = new Set(phrases.flatMap(({ words }) => words))
  for (const word of vocabulary) known.add(word)
  return {
    phrases,
    telling: withRivals(byWords(phrases.filter(({ answer }) => answer !== null))),
    naming: byWords(phrases.filter(({ answer }) => answer === null)),
    beginnings: new Set(
      phrases.flatMap(({ words }) => words.map((_, at) => words.slice(0, at + 1).join(' ')))
    ),
    longest: Math.max(1, ...phrases.map(({ words }) => words.length)),
    vocabulary,
    known,
    settling,
    ownWords: (observation, answer) => own.get(`${observation} ${answer ?? ''}`) ?? NOTHING
  }
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
