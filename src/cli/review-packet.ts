import { createHash } from 'node:crypto'
import { canonicalJson } from '../load/fingerprint.ts'
import { observationsOf, textsOf } from '../load/texts-of-tree.ts'
import { itemsOf, type PacketItem } from '../paper/packet/items.ts'
import type { PacketOf } from '../paper/packet/packet.ts'
import { type Group, groupOf, isGroup } from '../tree/group.ts'
import type { Tree } from '../tree/tree.ts'
import { isSafetyText } from '../words/kinds.ts'
import { createWords, SOURCE_TAG } from '../words/words.ts'
import { openEdition } from './open-edition.ts'
import type { Project } from './read-project.ts'
import type { ReviewedState } from './review-template.ts'

/** What a packet of a tree is made of, as its project stands. */
export async function packetParts(project: Project, tree: Tree): Promise<PacketOf> {
  const { loaded } = project
  const last = loaded.editions
    .filter(edition => edition.tree.id === tree.id)
    .sort((one, other) => other.tree.edition - one.tree.edition)[0]
  return {
    tree,
    ...spokenBy(project, tree),
    published: last ? { before: last, after: await openEdition(project, tree.id) } : null
  }
}

/** The items that a review of a tree decides, and the state that it holds for. */
export function reviewedState(
  project: Project,
  tree: Tree
): { readonly items: readonly PacketItem[]; readonly state: ReviewedState } {
  const items = itemsOf({ tree, ...spokenBy(project, tree) })
  return { items, state: stateOf(tree, items) }
}

/** The fingerprints leave out what rules of what is said demand, and all sources: those of the items stand in the last. */
export const stateOf = (tree: Tree, items: readonly PacketItem[]): ReviewedState => ({
  tree: tree.id,
  meaning: tree.fingerprint,
  words: tree.wordsFingerprint,
  items: createHash('sha256').update(canonicalJson(items)).digest('hex')
})

function spokenBy({ loaded }: Project, tree: Tree) {
  const english = groupOf(loaded.words[SOURCE_TAG])
  const own = { ...english, observations: observationsOf(tree.id, english) }
  const texts = textsOf(tree, english)
  // What a tree says of common observations in its own words stands among the observations already.
  const { observations: _, ...rest } = groupOf(texts[tree.id])
  return {
    words: createWords({ [SOURCE_TAG]: own }, SOURCE_TAG),
    sources: loaded.sources,
    texts: { ...texts, [tree.id]: rest, ui: safetyOf(groupOf(english.ui)) }
  }
}

/** Of the words of the screens those that say whom to call or what to beware of. */
function safetyOf(texts: Group, above: readonly string[] = []): Group {
  return Object.fromEntries(
    Object.entries(texts).flatMap(([key, text]) => {
      const keys = [...above, key]
      if (!isGroup(text)) return isSafetyText('ui', keys.join('.')) ? [[key, text]] : []
      const within = safetyOf(text, keys)
      return Object.keys(within).length === 0 ? [] : [[key, within]]
    })
  )
}
