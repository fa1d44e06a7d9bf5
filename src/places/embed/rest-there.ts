import type { Texts } from '../../opening/bundle.ts'
import type { TextsByTag } from '../../opening/speech.ts'
import { SOURCE_TAG } from '../../words/words.ts'
import type { TreeFiles, WholeTree } from './embed-files.ts'
import { addressIn, take } from './take.ts'

/** Everything after the first question but its drawings, which may come later. */
export interface RestThere {
  readonly show: typeof import('./rest.tsx')
  readonly whole: WholeTree
  readonly texts: TextsByTag
  readonly tag: string
}

/** The built file of `rest.tsx`; the build writes its name here. */
const FILE = '%REST%'
let script: Promise<RestThere['show']> | undefined
let failures = 0

/**
 * The script of the rest, once for all elements. Some browsers remember that a script could not be had
 * and never ask for it again: after a failure it goes by another name.
 */
function scriptOfRest(): Promise<RestThere['show']> {
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

/** Fetches the rest of a tree in a language. @throws Error when some of it cannot be had. */
export async function restOf(files: TreeFiles, tag: string): Promise<RestThere> {
  const tags = [...new Set([SOURCE_TAG, tag])]
  const [show, whole, ...words] = await Promise.all([
    scriptOfRest(),
    take<WholeTree>(files.whole),
    ...tags.map(one => take<Texts>(files.words[one] ?? ''))
  ])
  const texts = Object.fromEntries(tags.map((one, index) => [one, words[index] ?? {}]))
  return { show, whole, texts, tag }
}
