import type { Observation } from '../../../src/tree/observation.ts'
import type { Tree } from '../../../src/tree/tree.ts'
import type { Candidate, Fact, SaidPhrase } from '../../../src/words/facts/fact.ts'
import { createFactReader, type FactReader } from '../../../src/words/facts/fact-reader.ts'
import { createWords, type Words } from '../../../src/words/words.ts'
import { loadShipped } from '../../helpers/shipped.ts'

/** The kombucha tree, what callers say of it, and the reader over both. */
export interface Shipped {
  readonly tree: Tree
  readonly words: readonly Words[]
  /** Only of observations that the tree knows. */
  readonly said: readonly (SaidPhrase & { readonly tag: string })[]
  readonly reader: FactReader
}

/** Opens the reader over the authored project, with a few phrases of the test's own. */
export async function shippedReader(
  more: Readonly<Record<string, readonly SaidPhrase[]>> = {}
): Promise<Shipped> {
  const loaded = await loadShipped()
  const tree = loaded.trees.find(({ id }) => id === 'kombucha-jar')
  if (!tree) throw new Error(`the tree does not load: ${JSON.stringify(loaded.findings[0])}`)
  const words = Object.keys(loaded.words).map(tag => createWords(loaded.words, tag))
  const tags = new Set([...Object.keys(loaded.said), ...Object.keys(more)])
  const said = Object.fromEntries(
    [...tags].map(tag => [tag, [...(loaded.said[tag] ?? []), ...(more[tag] ?? [])]])
  )
  const all = Object.entries(said).flatMap(([tag, ofTag]) => ofTag.map(each => ({ ...each, tag })))
  return {
    tree,
    words,
    said: all.filter(({ observation }) => tree.observations[observation] !== undefined),
    reader: createFactReader({ tree, said, words })
  }
}

/** The fact that a said phrase stands for. */
export function toldBy(tree: Tree, { observation, answer }: SaidPhrase): Fact {
  const of = tree.observations[observation] as Observation
  if (answer === null) throw new Error(`${observation} is only named`)
  return { observation, answer: of.kind === 'signs' ? { [answer]: 'yes' } : answer }
}

/** Every candidate of a line, and those that are sure, as plain facts. */
export const offered = (reader: FactReader, line: string): readonly Candidate[] =>
  reader.read(line).flatMap(({ candidates }) => candidates)

export const sureOf = (reader: FactReader, line: string): readonly Fact[] =>
  offered(reader, line)
    .filter(({ sure }) => sure)
    .map(({ observation, answer }) => ({ observation, answer }))
