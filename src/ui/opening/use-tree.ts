import { useEffect, useRef, useState } from 'preact/hooks'
import { SOURCE_TAG } from '../../words/words.ts'
import type { Texts, TreeBundle, TreeOpener } from './bundle.ts'
import type { TextsByTag } from './speech.ts'

/** A tree that has arrived, its words in every language asked for so far, and its drawings as they come. */
export interface OpenedTree {
  readonly bundle: TreeBundle
  readonly texts: TextsByTag
  readonly drawings: Readonly<Record<string, string>>
  /** The first of the languages asked for, of those whose words have arrived. */
  readonly tag: string
}

const NO_DRAWINGS: OpenedTree['drawings'] = {}

/**
 * Opens a tree in some languages: null while it is on its way, `failed` when it cannot be had. While a
 * further language is on its way the walk goes on in the one before: nothing told is lost.
 */
export function useTree(
  opener: TreeOpener | undefined,
  tags: readonly string[]
): OpenedTree | 'failed' | null {
  const [bundle, setBundle] = useState<TreeBundle | null>(null)
  const [others, setOthers] = useState<Readonly<Record<string, Texts>>>({})
  const [drawings, setDrawings] = useState(NO_DRAWINGS)
  const [failed, setFailed] = useState(false)
  const begun = useRef(false)
  useEffect(() => {
    begun.current = false
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
  const spoken = useRef(SOURCE_TAG)
  if (failed) return 'failed'
  const missing = tags.some(tag => tag !== SOURCE_TAG && others[tag] === undefined)
  if (!missing) spoken.current = tags[0] ?? SOURCE_TAG
  const known = spoken.current === SOURCE_TAG || others[spoken.current] !== undefined
  if (bundle === null || (missing && (!begun.current || !known))) return null
  begun.current = true
  return {
    bundle,
    drawings,
    texts: { ...others, [SOURCE_TAG]: bundle.texts },
    tag: spoken.current
  }
}
