import { useEffect } from 'preact/hooks'
import { useSetting } from '../../parts/setting.tsx'
import type { WalkInHand } from '../../parts/use-walk.ts'
import type { Answers } from '../../tree/answers.ts'
import type { Outcome } from '../../tree/caution.ts'
import type { Tree } from '../../tree/tree.ts'
import type { Words } from '../../words/words.ts'

/** How a practice call stands on the sheet. */
export interface SheetSeen {
  readonly tree: Tree
  /** The sheet's words, and beside them those of the language that the caller speaks. */
  readonly words: Words
  readonly second: Words | null
  /** The observation that the sheet asks; null where it asks nothing. */
  readonly asks: string | null
  readonly entered: Answers
  /** Once the sheet tells one. */
  readonly outcome: Outcome | null
}

/** Tells whoever watches how the call stands: a practice call is compared with the tree's outcome. */
export function useWatched(
  watch: ((seen: SheetSeen) => void) | null,
  { question, answers, evaluation }: WalkInHand,
  decided: boolean
): void {
  const { tree, words, second } = useSetting()
  const asks = decided ? null : (question?.id ?? null)
  useEffect(() => {
    watch?.({
      tree,
      words,
      second: second?.words ?? null,
      asks,
      entered: answers,
      outcome: decided ? (evaluation.settled?.outcome ?? evaluation.walk.outcome) : null
    })
  }, [watch, tree, words, second, asks, answers, evaluation, decided])
}
