import { useEffect, useState } from 'preact/hooks'
import type { FoundAnswers } from '../../know-how/found.ts'
import { openKnowHow } from '../../know-how/search.ts'
import { searchedIn } from '../../know-how/searched.ts'
import type { KnowHowBundle } from '../../opening/bundle.ts'
import type { Words } from '../../words/words.ts'
import { wordsWith } from '../../words/words-with.ts'

/** The answers to how-to questions, opened when the first is asked. */
export interface KnowHowAtHand {
  readonly knowHow: KnowHowBundle
  ask(line: string): FoundAnswers
  /** A language's words with those of the answers among them. */
  withAnswers(words: Words): Words
}

/** Opens the answers once something is asked; null until they have come, or will not. */
export function useKnowHow(asked: boolean): KnowHowAtHand | null {
  const [atHand, setAtHand] = useState<KnowHowAtHand | null>(null)
  useEffect(() => {
    if (!asked || atHand !== null) return
    import('virtual:jarside/know-how').then(
      ({ knowHow, words }) =>
        setAtHand({
          knowHow,
          ask: openKnowHow(searchedIn(knowHow, words)),
          withAnswers: screen => wordsWith(screen, words, /^(?:know-how:|ui:know-how\.)/)
        }),
      // The question stays in the field, and is answered at the end as before.
      () => undefined
    )
  }, [asked])
  return atHand
}
