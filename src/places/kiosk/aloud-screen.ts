import type { CatalogueEntry } from '../../parts/catalogue-entry.ts'
import { emergencyTold } from '../../parts/emergency-told.ts'
import type { Setting } from '../../parts/setting.tsx'
import type { WalkInHand } from '../../parts/use-walk.ts'
import type { Words } from '../../words/words.ts'
import {
  chooseTexts,
  emergencyTexts,
  type Marked,
  outcomeTexts,
  questionTexts,
  withdrawnTexts
} from './read-aloud.ts'
import type { AloudScreen } from './read-aloud-button.tsx'

/** What stands before a walk, to be read. */
export function aloudBefore(
  trees: readonly { readonly id: string }[] | null,
  withdrawn: CatalogueEntry | null,
  words: Words
): AloudScreen {
  if (withdrawn !== null) {
    return { id: 'withdrawn', texts: () => withdrawnTexts(withdrawn.id, words) }
  }
  if (trees === null) return { id: 'opening', texts: () => [words.t('ui:opening')] }
  return { id: 'choose', texts: () => chooseTexts(trees, words) }
}

/** What a walk shows, to be read; `notice` stands under an outcome. */
export function aloudIn(
  walk: WalkInHand,
  { tree, words, second }: Setting,
  notice: string | null
): AloudScreen {
  const { question, told, listed, emergency, answers, walked } = walk
  const id = question === null ? `outcome ${emergency}` : `${question.id} ${listed}`
  return {
    id,
    texts() {
      if (told !== null && emergency) {
        return emergencyTexts(told.said, emergencyTold(tree, answers, walked), words)
      }
      if (question !== null) return questionTexts(walk, words, markedHere())
      if (told === null) return []
      const isDraft = second?.shows === 'cautions'
      return [
        ...outcomeTexts(told.said, words),
        ...(notice === null ? [] : [notice]),
        ...(isDraft ? [words.t('ui:draft-translation')] : [])
      ]
    }
  }
}

/** A mark is the screen's own until one of the buttons under the signs is pressed. */
const markedHere = (): Marked => ({
  some: document.querySelector('.signs :checked') !== null,
  seen: document.querySelector('.signs [data-sign]:checked') !== null
})
