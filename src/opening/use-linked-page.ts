import { useEffect, useMemo, useState } from 'preact/hooks'
import type { ScreenFrame } from '../parts/screen.tsx'
import type { Speech } from '../parts/setting.tsx'
import { SOURCE_TAG } from '../words/words.ts'
import type { Catalogue, Openers } from './bundle.ts'
import { speechIn } from './speech.ts'
import { useOffice } from './use-office.ts'
import { usePageLanguage, useScreens } from './use-screens.ts'
import { useToday } from './use-today.ts'

/** A page without a walk. */
export interface LinkedPage {
  readonly speech: Speech
  readonly frame: ScreenFrame
}

/** What the address held when a page was opened. */
export const useLinked = (): URLSearchParams =>
  useState(() => new URLSearchParams(location.hash.replace(/^#/, '')))[0]

/**
 * What a page without a walk stands in: its language, its office and its day. What it shows stands in its
 * address, and so does the language, unless it is English.
 */
export function useLinkedPage(
  { catalogue, openers }: { catalogue: Catalogue; openers: Openers },
  startTag: () => string,
  shown: Readonly<Record<string, string>>
): LinkedPage {
  const today = useToday()
  const office = useOffice('./office.json', '')
  const [tag, setTag] = useState(startTag)
  const screens = useScreens(catalogue, openers, tag)
  usePageLanguage(screens.tag)
  const speech = useMemo(() => speechIn(screens.texts, screens.tag), [screens.texts, screens.tag])
  const query = new URLSearchParams(shown)
  if (screens.tag !== SOURCE_TAG) query.set('lang', screens.tag)
  const address = `#${query}`
  useEffect(() => history.replaceState(history.state, '', address), [address])
  const frame = {
    languages: catalogue.languages,
    onLanguage: setTag,
    languageLost: screens.failed,
    office,
    today
  }
  return { speech, frame }
}
