import { useEffect, useMemo, useState } from 'preact/hooks'
import { directionOf } from '../words/languages.ts'
import { SOURCE_TAG } from '../words/words.ts'
import type { Catalogue, Openers, Texts } from './bundle.ts'
import type { TextsByTag } from './speech.ts'

/**
 * The screens' words in the language asked for; in the one before until those have arrived. A greater
 * `attempt` tries again what failed.
 */
export function useScreens(
  catalogue: Catalogue,
  openers: Openers,
  asked: string,
  attempt = 0
): { readonly tag: string; readonly texts: TextsByTag; readonly failed: boolean } {
  const [arrived, setArrived] = useState<Readonly<Record<string, Texts>>>({})
  const [shown, setShown] = useState(SOURCE_TAG)
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

/** Tells the browser, and whoever reads the page aloud, which language the page is in. */
export function usePageLanguage(tag: string): void {
  useEffect(() => {
    document.documentElement.lang = tag
    document.documentElement.dir = directionOf(tag)
  }, [tag])
}
