import { useEffect, useMemo, useState } from 'preact/hooks'
import { SOURCE_TAG } from '../../words/words.ts'
import type { Texts } from '../opening/bundle.ts'
import type { TextsByTag } from '../opening/speech.ts'
import type { TreeFiles, WholeTree } from './embed-files.ts'
import { addressIn, take } from './take.ts'

/** Everything after the first question, once it is there. */
export interface Rest {
  readonly show: typeof import('./rest.tsx')
  readonly whole: WholeTree
  readonly texts: TextsByTag
  readonly tag: string
  readonly drawings: Readonly<Record<string, string>>
}

/**
 * Fetches the rest of a tree once `begun`: null while it is on its way, `failed` when it cannot be had.
 * A new `attempt` tries again.
 */
export function useRest(
  files: TreeFiles,
  tag: string,
  begun: boolean,
  attempt: number
): Rest | 'failed' | null {
  const [rest, setRest] = useState<Omit<Rest, 'drawings'> | null>(null)
  const [failedAt, setFailedAt] = useState<number | null>(null)
  const [drawings, setDrawings] = useState<Rest['drawings'] | null>(null)
  useEffect(() => {
    if (!begun) return undefined
    let wanted = true
    restOf(files, tag).then(
      there => wanted && setRest(there),
      () => wanted && setFailedAt(attempt)
    )
    return () => {
      wanted = false
    }
  }, [files, tag, begun, attempt])
  useEffect(() => {
    if (!begun || drawings !== null) return undefined
    let wanted = true
    // Without drawings every answer still has its words.
    take<Rest['drawings']>(files.drawings).then(
      there => wanted && setDrawings(there),
      () => undefined
    )
    return () => {
      wanted = false
    }
  }, [files, begun, attempt])
  return useMemo(() => {
    if (rest === null) return failedAt === attempt ? 'failed' : null
    return { ...rest, drawings: drawings ?? {} }
  }, [rest, drawings, failedAt, attempt])
}

/** The built file of `rest.tsx`; the build writes its name here. */
const FILE = '%REST%'
let script: Promise<Rest['show']> | undefined
let failures = 0

/**
 * The script of the rest, once for all elements. Some browsers remember that a script could not be had
 * and never ask for it again: after a failure it goes by another name.
 */
function scriptOfRest(): Promise<Rest['show']> {
  script ??=
    failures === 0
      ? import('./rest.tsx')
      : import(/* @vite-ignore */ addressIn(`${FILE}?again=${failures}`))
  script.catch(() => {
    script = undefined
    failures += 1
  })
  return script
}

async function restOf(files: TreeFiles, tag: string): Promise<Omit<Rest, 'drawings'>> {
  const tags = [...new Set([SOURCE_TAG, tag])]
  const [show, whole, ...words] = await Promise.all([
    scriptOfRest(),
    take<WholeTree>(files.whole),
    ...tags.map(one => take<Texts>(files.words[one] ?? ''))
  ])
  const texts = Object.fromEntries(tags.map((one, at) => [one, words[at] ?? {}]))
  return { show, whole, texts, tag }
}
