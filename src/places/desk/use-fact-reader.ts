import { useEffect, useMemo, useState } from 'preact/hooks'
import type { TreeOpener } from '../../opening/bundle.ts'
import { createFactReader, type FactReader } from '../../reader/fact-reader.ts'
import type { CallersWords } from '../../tree/callers-words.ts'
import type { Tree } from '../../tree/tree.ts'
import type { Words } from '../../words/words.ts'

const NOTHING_SAID: CallersWords = { phrases: {}, foods: {}, both: [], bands: [] }

/** Reads what is typed, in every language offered; callers' own words come as soon as they have arrived. */
export function useFactReader(
  opener: TreeOpener | undefined,
  tree: Tree | null,
  words: readonly Words[]
): FactReader | null {
  const [said, setSaid] = useState(NOTHING_SAID)
  useEffect(() => {
    opener?.said().then(
      ({ default: all }) => setSaid(all),
      // The labels of the answers are read all the same.
      () => undefined
    )
  }, [opener])
  return useMemo(
    () => (tree === null ? null : createFactReader({ tree, said, words })),
    [tree, said, words]
  )
}
