import type { Candidate, Fact } from '../../src/reader/fact.ts'
import { createFactReader, type FactReader } from '../../src/reader/fact-reader.ts'
import { isDanger } from '../../src/reader/worry.ts'
import type { SaidPhrase } from '../../src/tree/callers-words.ts'
import type { Observation } from '../../src/tree/observation.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { createWords, type Words } from '../../src/words/words.ts'
import { loadShipped } from '../helpers/shipped.ts'

/** A tree, what callers say of it, and the reader over both. */
export interface Shipped {
  readonly tree: Tree
  readonly words: readonly Words[]
  /** Only of observations that the tree knows. */
  readonly said: readonly (SaidPhrase & { readonly tag: string })[]
  readonly reader: FactReader
}

const loaded = await loadShipped()

/** The trees there are, by their ids. */
export const TREES: readonly string[] = loaded.trees.map(({ id }) => id)

/** Opens the reader over the authored project, with a few phrases of the test's own. */
export function shippedReader(
  id = 'kombucha-jar',
  more: Readonly<Record<string, readonly SaidPhrase[]>> = {}
): Shipped {
  const tree = loaded.trees.find(each => each.id === id)
  if (!tree) throw new Error(`the tree does not load: ${JSON.stringify(loaded.findings[0])}`)
  const words = Object.keys(loaded.words).map(tag => createWords(loaded.words, tag))
  const tags = new Set([...Object.keys(loaded.said.phrases), ...Object.keys(more)])
  const phrases = Object.fromEntries(
    [...tags].map(tag => [tag, [...(loaded.said.phrases[tag] ?? []), ...(more[tag] ?? [])]])
  )
  const all = Object.entries(phrases).flatMap(([tag, of]) => of.map(each => ({ ...each, tag })))
  return {
    tree,
    words,
    said: all.filter(({ observation }) => tree.observations[observation] !== undefined),
    reader: createFactReader({ tree, said: { ...loaded.said, phrases }, words })
  }
}

/** The fact that a said phrase stands for. */
export function toldBy(
  tree: Tree,
  { observation, answer, force }: Omit<SaidPhrase, 'phrase'>
): Fact {
  const of = tree.observations[observation] as Observation
  if (answer === null) throw new Error(`${observation} is only named`)
  const value = force === 'rules-out' ? 'no' : 'yes'
  return { observation, answer: of.kind === 'signs' ? { [answer]: value } : answer }
}

/** The fact that a said phrase alone stands for: "everyone is fine" rules out all that people feel at once. */
export function wholeFact({ tree, said }: Shipped, each: SaidPhrase): Fact {
  const of = tree.observations[each.observation] as Observation
  const { phrase, observation, answer, force } = each
  if (force !== 'rules-out' || of.about !== 'person' || !isDanger(of, answer ?? '')) {
    return toldBy(tree, each)
  }
  const signs = said.filter(
    one => one.phrase === phrase && one.observation === observation && one.force === force
  )
  return { observation, answer: Object.fromEntries(signs.map(one => [one.answer, 'no'])) }
}

/** What is offered for the part being typed. */
export const suggested = (reader: FactReader, text: string): readonly Candidate[] =>
  reader.begun(text)?.candidates ?? []

/** Every candidate of a line, and those that are sure, as plain facts. */
export const offered = (reader: FactReader, line: string): readonly Candidate[] =>
  reader.read(line).flatMap(({ candidates }) => candidates)

export const sureOf = (reader: FactReader, line: string): readonly Fact[] =>
  offered(reader, line)
    .filter(({ sure }) => sure)
    .map(({ observation, answer }) => ({ observation, answer }))
