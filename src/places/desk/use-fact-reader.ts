import { useEffect, useMemo, useState } from 'preact/hooks'
import type { TreeOpener } from '../../opening/bundle.ts'
import { createFactReader, type FactReader } from '../../reader/fact-reader.ts'
import type { CallersWords } from '../../tree/callers-words.ts'
import type { Tree } from '../../tree/tree.ts'
import type { Words } from '../../words/words.ts'

const NOTHING_SAID: CallersWords = { phrases: {}, foods: {}, ferments: {}, both: [], bands: [] }

/**
 * Reads what is typed, in every language offered. Null until callers' own words have arrived, or will not:
 * a line read without them would be understood as something else.
 */
export function useFactReader(
  opener: TreeOpener | undefined,
  tree: Tree | null,
  words: readonly Words[]
): FactReader | null {
  const [arrived, setArrived] = useState<{ of: TreeOpener; said: CallersWords } | null>(null)
  useEffect(() => {
    opener?.said().then(
      ({ default: said }) => setArrived({ of: opener, said }),
      // The labels of the answers are read all the same.
      () => setArrived({ of: opener, said: NOTHING_SAID })
    )
  }, [opener])
  // Those of the tree before say nothing of this one.
  const said = arrived !== null && arrived.of === opener ? arrived.said : null
  return useMemo(
    () => (tree === null || said === null ? null : createFactReader({ tree, said, words })),
    [tree, said, words]
  )
}
