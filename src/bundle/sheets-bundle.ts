import type { Loaded } from '../load/load.ts'
import { pick } from '../load/texts-of-tree.ts'
import type { SheetsBundle } from '../opening/bundle.ts'
import { batchCardOf } from '../tree/batch-card.ts'
import { groupOf } from '../tree/group.ts'
import type { Tree } from '../tree/tree.ts'
import { SOURCE_TAG } from '../words/words.ts'

/** The groups of texts of the sheets that are not about a verdict. */
const GROUPS: ReadonlySet<string> = new Set(['card', 'chart', 'class', 'key', 'know-how'])

/** What a tree's sheets hold that are not about a verdict, for those who print them from a page. */
export function sheetsOf(tree: Tree, { knowHow, sources, words }: Loaded): SheetsBundle {
  const answers = knowHow.answers.filter(({ ferment, inClass }) => ferment === tree.id && inClass)
  const ids = new Set(answers.map(({ id }) => id))
  return {
    card: batchCardOf(tree, words[SOURCE_TAG]?.[tree.id], knowHow.allowed[tree.id]),
    answers,
    sources: pick(sources, new Set(answers.flatMap(({ because }) => because))),
    words: Object.fromEntries(
      Object.entries(words).map(([tag, texts]) => [
        tag,
        { ui: pick(groupOf(texts.ui), GROUPS), 'know-how': pick(groupOf(texts['know-how']), ids) }
      ])
    )
  }
}
