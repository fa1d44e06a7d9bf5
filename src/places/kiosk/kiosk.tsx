import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks'
import { localTime } from '../../office/hours.ts'
import type { Catalogue, Openers } from '../../opening/bundle.ts'
import { useOffice } from '../../opening/use-office.ts'
import { usePageLanguage } from '../../opening/use-screens.ts'
import { SOURCE_TAG } from '../../words/words.ts'
import { keepOnDevice } from './keep-on-device.ts'
import { useOpenedAhead } from './open-ahead.ts'
import { Start } from './start.tsx'
import { useCounts } from './use-counts.ts'
import { useStay } from './use-stay.ts'
import { Visit } from './visit.tsx'

const MINUTE = 60_000

/** The kiosk: a start screen that waits, and one visitor after the other, none of whom leaves a trace. */
export function Kiosk({ catalogue, openers }: { catalogue: Catalogue; openers: Openers }) {
  const { language, tree, chosen, told, left, untouched, visitors, send } = useStay()
  const [today, setToday] = useState(() => new Date())
  const served = language !== null
  const { kept } = useCopy(untouched)
  const ahead = useOpenedAhead(catalogue, openers)
  const lacking = ahead?.lacking ?? false
  useEffect(() => {
    // The watchdog throws a broken copy away, and fetches a whole one where there is a network.
    if (untouched && lacking) dispatchEvent(new Event('jarside-copy-broken'))
  }, [untouched, lacking])
  // The office's file is read again for every visitor, and once more when it can first be kept.
  const office = useOffice('./office.json', `${visitors} ${kept}`)
  const onOutcome = useCounts(language, chosen, localTime(today, office?.hours?.zone).date)
  const texts = useMemo(
    () => ahead?.texts ?? { [SOURCE_TAG]: catalogue.texts },
    [ahead?.texts, catalogue]
  )
  const languages = catalogue.languages.filter(({ tag }) => Object.hasOwn(texts, tag))
  usePageLanguage(language ?? SOURCE_TAG)
  useLayoutEffect(() => {
    // Opening hours and review dates go by while the kiosk stands; a visit keeps its day.
    setToday(new Date())
    scrollTo(0, 0)
    if (served) return undefined
    const timer = setInterval(() => setToday(new Date()), MINUTE)
    return () => clearInterval(timer)
  }, [served, visitors])

  const shared = { languages, texts, office, today }
  return language === null ? (
    <Start
      {...shared}
      due={ahead?.due ?? null}
      kept={kept}
      quiet={visitors === 0}
      onLanguage={tag => send({ type: 'speak', language: tag })}
    />
  ) : (
    <Visit
      {...shared}
      catalogue={catalogue}
      openers={openers}
      language={language}
      tree={tree}
      chosen={chosen}
      told={told}
      left={left}
      onOutcome={onOutcome}
      send={send}
    />
  )
}

/** The copy that this device keeps; a newer one is taken only while nobody is there. */
function useCopy(untouched: boolean): { readonly kept: boolean } {
  const [kept, setKept] = useState(false)
  const [newer, setNewer] = useState(false)
  const take = useRef<(() => void) | null>(null)
  useEffect(() => {
    take.current = keepOnDevice({ onKept: () => setKept(true), onNewer: () => setNewer(true) })
  }, [])
  useEffect(() => {
    if (!untouched || !newer) return
    setNewer(false)
    take.current?.()
  }, [untouched, newer])
  return { kept }
}
