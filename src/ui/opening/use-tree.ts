import { useEffect, useState } from 'preact/hooks'
import { SOURCE_TAG } from '../../words/words.ts'
import type { Texts, TreeBundle, TreeOpener } from './bundle.ts'
import type { TextsByTag } from './speech.ts'

/** A tree that has arrived, its words in every language asked for so far, and its drawings as they come. */
export interface OpenedTree {
  readonly bundle: TreeBundle
  readonly texts: TextsByTag
  readonly drawings: Readonly<Record<string, string>>
}

const NO_DRAWINGS: OpenedTree['drawings'] = {}

/** Opens a tree in some languages: null while it is on its way, `failed` when it cannot be had. */
export function useTree(
  opener: TreeOpener | undefined,
  tags: readonly string[]
): OpenedTree | 'failed' | null {
  const [bundle, setBundle] = useState<TreeBundle | null>(null)
  const [others, setOthers] = useState<Readonly<Record<string, Texts>>>({})
  const [drawings, setDrawings] = useState(NO_DRAWINGS)
  const [failed, setFailed] = useState(false)
  useEffect(() => {
    setBundle(null)
    setOthers({})
    setDrawings(NO_DRAWINGS)
    setFailed(false)
    if (opener === undefined) return
    opener.open().then(
      ({ default: opened }) => setBundle(opened),
      () => setFailed(true)
    )
    // Without drawings every answer still has its words.
    opener.draw().then(
      ({ default: drawn }) => setDrawings(drawn),
      () => undefined
    )
  }, [opener])
  useEffect(() => {
    for (const tag of tags) {
      if (tag === SOURCE_TAG || others[tag] !== undefined) continue
      opener?.words[tag]?.().then(
        ({ default: texts }) => setOthers(before => ({ ...before, [tag]: texts })),
        () => setFailed(true)
      )
    }
  }, [opener, tags.join()])
  if (failed) return 'failed'
  if (bundle === null || tags.some(tag => tag !== SOURCE_TAG && others[tag] === undefined)) {
    return null
  }
  return { bundle, drawings, texts: { ...others, [SOURCE_TAG]: bundle.texts } }
}
