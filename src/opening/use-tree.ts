import { useEffect, useRef, useState } from 'preact/hooks'
import { SOURCE_TAG } from '../words/words.ts'
import type { Texts, TreeBundle, TreeOpener } from './bundle.ts'
import type { TextsByTag } from './speech.ts'

/** A tree that has arrived, its words in every language asked for so far, and its drawings as they come. */
export interface OpenedTree {
  readonly bundle: TreeBundle
  readonly texts: TextsByTag
  readonly drawings: Readonly<Record<string, string>>
  /** The first of the languages asked for, while its words are there; else the one spoken before. */
  readonly tag: string
  /** Languages asked for that could not be had. */
  readonly missing: readonly string[]
}

/** What of a tree was fetched before it is opened: with it the first screen is whole. */
export interface TreeAhead {
  readonly bundle: TreeBundle
  /** By language tag, its words in languages other than English. */
  readonly others: Readonly<Record<string, Texts>>
  /** As far as they have come. */
  readonly drawings: OpenedTree['drawings']
}

/** What of a tree has arrived; a new tree starts with nothing. */
interface Arrived extends Omit<TreeAhead, 'bundle'> {
  readonly opener: TreeOpener | undefined
  readonly bundle: TreeBundle | null
  readonly failed: boolean
  readonly missing: readonly string[]
}

const nothing = (opener: TreeOpener | undefined): Arrived => ({
  opener,
  bundle: null,
  failed: false,
  others: {},
  missing: [],
  drawings: NO_DRAWINGS
})

/** Before any drawing has come. */
export const NO_DRAWINGS: OpenedTree['drawings'] = {}

/**
 * Opens a tree in some languages: null while it is on its way, `failed` when it cannot be had. While a
 * further language is on its way, or cannot be had, the walk goes on in the one before: nothing told is
 * lost. A greater `attempt` tries again what failed.
 */
export function useTree(
  opener: TreeOpener | undefined,
  tags: readonly string[],
  attempt = 0,
  ahead: TreeAhead | null = null
): OpenedTree | 'failed' | null {
  const [arrived, setArrived] = useState<Arrived>(() => ({ ...nothing(opener), ...ahead }))
  const spoken = useRef(SOURCE_TAG)
  const begun = useRef<TreeOpener | undefined>(undefined)
  // What arrives for a tree that was left meanwhile is of no use any more.
  const add = (part: (before: Arrived) => Partial<Arrived>) =>
    setArrived(before => (before.opener === opener ? { ...before, ...part(before) } : before))

  useEffect(() => {
    const own = arrived.opener === opener ? arrived : nothing(opener)
    // Drawn anew only for a reason: the walk is drawn with it.
    if (own !== arrived || own.failed) setArrived({ ...own, failed: false })
    if (opener === undefined) return
    if (own.bundle === null) {
      opener.open().then(
        ({ default: bundle }) => add(() => ({ bundle })),
        () => add(() => ({ failed: true }))
      )
    }
    if (own.drawings !== NO_DRAWINGS) return
    // Without drawings every answer still has its words.
    opener.draw().then(
      ({ default: drawings }) => add(() => ({ drawings })),
      () => undefined
    )
  }, [opener, attempt])

  useEffect(() => {
    for (const tag of tags) {
      if (tag === SOURCE_TAG || arrived.others[tag] !== undefined) continue
      opener?.words[tag]?.().then(
        ({ default: texts }) =>
          add(({ others, missing }) => ({
            others: { ...others, [tag]: texts },
            missing: missing.filter(one => one !== tag)
          })),
        () => add(({ missing }) => ({ missing: [...new Set([...missing, tag])] }))
      )
    }
  }, [opener, tags.join(), attempt])

  const { bundle, failed, others, missing, drawings } = arrived
  if (arrived.opener !== opener || opener === undefined) return null
  if (failed) return 'failed'
  const has = (tag: string) => tag === SOURCE_TAG || others[tag] !== undefined
  const first = tags[0] ?? SOURCE_TAG
  const settled = tags.every(tag => has(tag) || missing.includes(tag))
  if (bundle === null) return null
  // Before a walk has begun its language is waited for, unless it cannot be had.
  if (!settled && begun.current !== opener) return null
  begun.current = opener
  if (has(first)) spoken.current = first
  else if (!has(spoken.current)) spoken.current = SOURCE_TAG
  return {
    bundle,
    drawings,
    texts: { ...others, [SOURCE_TAG]: bundle.texts },
    tag: spoken.current,
    missing
  }
}
