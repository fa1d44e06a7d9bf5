import { groupOf } from '../tree/group.ts'
import type { Tree } from '../tree/tree.ts'
import type { PublishedEdition } from './edition.ts'
import { canonicalJson, spokenFingerprint } from './fingerprint.ts'
import type { Loaded } from './load.ts'
import { textsOf } from './texts-of-tree.ts'

/** Freezes a tree with everything that it says and shows, on a day written YYYY-MM-DD. */
export async function publishedEdition(
  tree: Tree,
  loaded: Loaded,
  pictures: PublishedEdition['pictures'],
  publishedOn: string
): Promise<PublishedEdition> {
  const texts = Object.fromEntries(
    Object.entries(loaded.words).map(([tag, words]) => [tag, textsOf(tree, words)])
  )
  const cited = new Set(
    JSON.stringify(tree)
      .match(/"[a-z0-9-]+"/g)
      ?.map(id => id.slice(1, -1))
  )
  const sources = Object.fromEntries(Object.entries(loaded.sources).filter(([id]) => cited.has(id)))
  const spoken = await spokenFingerprint({ texts, sources, pictures })
  return { tree, texts, sources, pictures, publishedOn, spoken }
}

/** A published edition as its file holds it: one part to a line, in an order that nothing changes. */
export function editionFile(edition: PublishedEdition): string {
  const parts = Object.entries(groupOf(JSON.parse(canonicalJson(edition))))
  const lines = parts.map(([key, value]) => `  ${JSON.stringify(key)}: ${JSON.stringify(value)}`)
  return `{\n${lines.join(',\n')}\n}\n`
}
