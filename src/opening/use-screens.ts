import { useEffect, useMemo, useState } from 'preact/hooks'
import { directionOf } from '../words/direction.ts'
import { SOURCE_TAG } from '../words/words.ts'
import type { Catalogue, Openers, Texts } from './bundle.ts'
import type { TextsByTag } from './speech.ts'

/**
 * The screens' words in the language asked for; in the one before until those have arrived. A greater
 * `attempt` tries again what failed; `ahead`: those that had arrived before.
 */
export function useScreens(
  catalogue: Catalogue,
  openers: Openers,
  asked: string,
  attempt = 0,
  ahead: Readonly<Record<string, Texts>> = NOTHING
): { readonly tag: string; readonly texts: TextsByTag; readonly failed: boolean } {
  const [arrived, setArrived] = useState(ahead)
  const [shown, setShown] = useState(ahead[asked] === undefined ? SOURCE_TAG : asked)
  const [failed, setFailed] = useState(false)
  useEffect(() => {
    setFailed(false)
    if (asked === SOURCE_TAG || arrived[asked] !== undefined) {
      setShown(asked)
      return undefined
    }
    let wanted = true
    openers.screens[asked]?.().then(
      ({ default: texts }) => {
        setArrived(before => ({ ...before, [asked]: texts }))
        if (wanted) setShown(asked)
      },
      () => wanted && setFailed(true)
    )
    return () => {
      wanted = false
    }
  }, [asked, attempt])
  const texts = useMemo(() => ({ ...arrived, [SOURCE_TAG]: catalogue.texts }), [arrived, catalogue])
  return { tag: shown, texts, failed }
}

const NOTHING: Readonly<Record<string, Texts>> = {}

/** Tells the browser, and whoever reads the page aloud, which language the page is in. */
export function usePageLanguage(tag: string): void {
  useEffect(() => {
    document.documentElement.lang = tag
    document.documentElement.dir = directionOf(tag)
  }, [tag])
}
