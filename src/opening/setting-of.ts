import type { OfficePack } from '../office/office-pack.ts'
import type { Setting } from '../parts/setting.tsx'
import { createWords, SOURCE_TAG } from '../words/words.ts'
import { joined, speechIn, type TextsByTag } from './speech.ts'
import type { OpenedTree } from './use-tree.ts'

/** Everything that the parts of one walk share, of what has arrived. */
export function settingOf(
  {
    bundle: { tree, sources, pictures, lookAlikes },
    texts,
    drawings
  }: Pick<OpenedTree, 'bundle' | 'texts' | 'drawings'>,
  screens: { readonly tag: string; readonly texts: TextsByTag },
  office: OfficePack | null,
  today: Date
): Setting {
  const all = joined(screens.texts, texts)
  const speech = speechIn(all, screens.tag)
  return {
    ...speech,
    behind:
      speech.second === null && screens.tag !== SOURCE_TAG ? createWords(all, SOURCE_TAG) : null,
    tree,
    sources,
    pictures,
    drawings,
    lookAlikes,
    photoPage: null,
    office,
    today
  }
}
