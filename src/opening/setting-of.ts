import type { OfficePack } from '../office/office-pack.ts'
import type { Setting } from '../parts/setting.tsx'
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
  return {
    ...speechIn(joined(screens.texts, texts), screens.tag),
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
