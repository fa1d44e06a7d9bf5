import { useEffect, useState } from 'preact/hooks'
import type { Catalogue, Openers } from '../../opening/bundle.ts'
import type { TextsByTag } from '../../opening/speech.ts'
import { SOURCE_TAG } from '../../words/words.ts'

/** What a kiosk has opened before anybody asks for it. */
export interface OpenedAhead {
  /** The screens' words in every language that could be had. */
  readonly texts: TextsByTag
  /** The latest day on which a tree's review is due; null while no tree is open. */
  readonly due: string | null
  /** Something could not be had: it was never kept, or what was kept is broken. */
  readonly lacking: boolean
  /** All of it is open, in every language. */
  readonly complete: boolean
}

/**
 * Opens every language and every tree at once: a kiosk that has been opened goes on without a
 * network, even where its device keeps nothing. Null until the languages are there.
 */
export function useOpenedAhead(catalogue: Catalogue, openers: Openers): OpenedAhead | null {
  const [texts, setTexts] = useState<TextsByTag | null>(null)
  const [due, setDue] = useState<string | null>(null)
  const [lacking, setLacking] = useState(false)
  const [opened, setOpened] = useState(false)
  useEffect(() => {
    async function had<T>(asked: readonly Promise<T>[]): Promise<readonly T[]> {
      const settled = await Promise.allSettled(asked)
      if (settled.some(({ status }) => status === 'rejected')) setLacking(true)
      return settled.flatMap(one => (one.status === 'fulfilled' ? [one.value] : []))
    }
    const english = { [SOURCE_TAG]: catalogue.texts }
    const others = Object.entries(openers.screens).map(async ([tag, open]) => [
      tag,
      (await open()).default
    ])
    const screensHad = had(others).then(screens =>
      setTexts({ ...english, ...Object.fromEntries(screens) })
    )

    const trees = Object.values(openers.trees)
    const treesHad = had(trees.map(tree => tree.open())).then(opened => {
      const days = opened.map(({ default: { tree } }) => tree.review.due).sort()
      setDue(days.at(-1) ?? null)
    })
    const restHad = had(
      trees.flatMap(({ draw, words }) => [draw(), ...Object.values(words).map(open => open())])
    )
    Promise.all([screensHad, treesHad, restHad]).then(() => setOpened(true))
  }, [])
  return texts && { texts, due, lacking, complete: opened && !lacking }
}
