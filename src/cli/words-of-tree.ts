import type { Loaded, Sources } from '../load/load.ts'
import { observationsOf } from '../load/texts-of-tree.ts'
import type { Tree } from '../tree/tree.ts'
import type { Resources } from '../words/words.ts'

/** What a tree says: its own words as they are now, or those with which its edition was published. */
export function wordsOfTree(
  tree: Tree,
  loaded: Loaded
): { readonly texts: Resources; readonly sources: Sources } {
  const edition = loaded.editions.find(one => one.tree === tree)
  if (edition === undefined) {
    const own = Object.entries(loaded.words).map(([tag, now]) => [
      tag,
      { ...now, observations: observationsOf(tree.id, now) }
    ])
    return { texts: Object.fromEntries(own), sources: loaded.sources }
  }
  const texts = Object.entries(loaded.words).map(([tag, now]) => [
    tag,
    // The screens speak as they do now; the tree as it did then.
    { ...now, ...edition.texts[tag] }
  ])
  return { texts: Object.fromEntries(texts), sources: edition.sources as Sources }
}
