import catalogue, { openers } from 'virtual:jarside/catalogue'
import '../../style/look-alikes.css'
import '../../style/outcome.css'
import '../../style/preview.css'
import '../../style/sheet.css'
import '../../style/print.css'
import type { Texts } from '../../opening/bundle.ts'
import { NO_DRAWINGS, type TreeAhead } from '../../opening/use-tree.ts'
import { prepareWalk } from '../../parts/use-walk.ts'
import { App, type Beginning } from './app.tsx'

/** The whole page: everything that can follow a first screen. */
export const Whole = (beginning: Beginning) => (
  <App catalogue={catalogue} openers={openers} {...beginning} />
)

/** A tree and the screens' words, fetched before they are needed. */
export interface Ahead extends TreeAhead {
  readonly id: string
  readonly tag: string
  /** By language tag. */
  readonly screens: Readonly<Record<string, Texts>>
}

/** Fetches a tree in a language before it is needed. @throws Error when some of it cannot be had. */
export async function fetchAhead(tree: string, tag: string): Promise<Ahead> {
  const opener = Object.hasOwn(openers.trees, tree) ? openers.trees[tree] : undefined
  if (opener === undefined) throw new Error(`there is no tree ${tree}`)
  const drawn = opener.draw().catch(() => null)
  const [bundle, others, screens] = await Promise.all([
    opener.open(),
    opener.words[tag]?.(),
    openers.screens[tag]?.()
  ])
  const ahead = {
    id: tree,
    tag,
    bundle: bundle.default,
    others: others ? { [tag]: others.default } : {},
    screens: screens ? { [tag]: screens.default } : {},
    drawings: NO_DRAWINGS
  }
  // Nobody waits for drawings: what has come by then is there.
  void drawn.then(there => there && Object.assign(ahead, { drawings: there.default }))
  whenIdle(() => prepareWalk(ahead.bundle.tree))
  return ahead
}

/** While nobody waits; not every browser tells when that is. */
const whenIdle = (then: () => void) =>
  'requestIdleCallback' in window ? requestIdleCallback(then) : setTimeout(then)
