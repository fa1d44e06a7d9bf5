import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks'
import { localTime } from '../../office/hours.ts'
import type { Catalogue, Openers } from '../../opening/bundle.ts'
import { speechIn } from '../../opening/speech.ts'
import { useOffice } from '../../opening/use-office.ts'
import { usePageLanguage } from '../../opening/use-screens.ts'
import { SOURCE_TAG } from '../../words/words.ts'
import { Cleaning } from './cleaning.tsx'
import { type KeptCopy, keepOnDevice } from './keep-on-device.ts'
import { useOpenedAhead } from './open-ahead.ts'
import { isRolledBack, proveCopy } from './prove-copy.ts'
import { mayBeOutdated, offered } from './settings.ts'
import { Staff } from './staff.tsx'
import { inBoth, Start } from './start.tsx'
import { useCounts } from './use-counts.ts'
import { useSettings } from './use-settings.ts'
import { useStay } from './use-stay.ts'
import { useVoices } from './use-voices.ts'
import { Visit } from './visit.tsx'

const MINUTE = 60_000
/** The day of the device's clock, the same in every time zone. */
const dayNow = () => new Date().toISOString().slice(0, 10)

/** The kiosk: a start screen that waits, and one visitor after the other, none of whom leaves a trace. */
export function Kiosk({ catalogue, openers }: { catalogue: Catalogue; openers: Openers }) {
  const { language, tree, chosen, told, looks, left, untouched, visitors, staff, send } = useStay()
  const inHand = useSettings(looks)
  const { settings, change } = inHand
  const speakers = useVoices(catalogue.languages.map(({ tag }) => tag))
  const [today, setToday] = useState(() => new Date())
  const served = language !== null
  const ahead = useOpenedAhead(catalogue, openers)
  const copy = useCopy(untouched, ahead?.complete ?? false, () => change({ reachedOn: dayNow() }))
  const { kept } = copy
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
  const onOffer = useMemo(
    () => ({
      ...catalogue,
      trees: offered(catalogue.trees, ({ id }) => id, settings.withoutTrees)
    }),
    [catalogue, settings.withoutTrees]
  )
  const languages = catalogue.languages.filter(({ tag }) => Object.hasOwn(texts, tag))
  const shown = offered(languages, ({ tag }) => tag, settings.withoutLanguages)
  // Staff read their menu in the language of their choice, which goes with it.
  const [staffTag, setStaffTag] = useState(SOURCE_TAG)
  useEffect(() => {
    if (staff !== 'menu') setStaffTag(SOURCE_TAG)
  }, [staff])
  useEffect(() => {
    send({ type: 'settle', quiet: settings.idleSeconds * 1000 })
  }, [settings.idleSeconds])
  usePageLanguage(language ?? (staff === 'menu' ? staffTag : SOURCE_TAG))
  useLayoutEffect(() => {
    // Opening hours and review dates go by while the kiosk stands; a visit keeps its day.
    setToday(new Date())
    scrollTo(0, 0)
    if (served) return undefined
    const timer = setInterval(() => setToday(new Date()), MINUTE)
    return () => clearInterval(timer)
  }, [served, visitors])

  const shared = { languages: shown, texts, office, today }
  const outdated = mayBeOutdated(settings.reachedOn, today)
  if (staff === 'menu') {
    return (
      <Staff
        office={office}
        today={today}
        languages={languages}
        onLanguage={setStaffTag}
        speech={{ ...speechIn(texts, staffTag), second: null, dials: false }}
        onLeave={() => send({ type: 'leave' })}
        menu={{
          inHand,
          trees: catalogue.trees.filter(({ withdrawn }) => withdrawn === null),
          languages,
          speakers,
          copy: { ...copy, whole: ahead !== null && !lacking },
          date: localTime(today, office?.hours?.zone).date,
          onClean: () => send({ type: 'clean' })
        }}
      />
    )
  }
  if (staff === 'cleaning') {
    return (
      <Cleaning
        speech={inBoth(texts, shown)}
        office={office}
        today={today}
        onUnlock={() => send({ type: 'unlock' })}
      />
    )
  }
  return language === null ? (
    <Start
      {...shared}
      due={ahead?.due ?? null}
      kept={kept}
      outdated={outdated}
      quiet={visitors === 0}
      onLanguage={tag => send({ type: 'speak', language: tag })}
      onStaff={() => send({ type: 'staff' })}
    />
  ) : (
    <Visit
      {...shared}
      catalogue={onOffer}
      outdated={outdated}
      openers={openers}
      language={language}
      tree={tree}
      chosen={chosen}
      told={told}
      left={left}
      onOutcome={onOutcome}
      aids={{
        shown: inHand.shown,
        speaker: speakers.get(language) ?? null,
        covered: left !== null,
        onLooks: changed => send({ type: 'see', looks: changed }),
        onSentence: () => send({ type: 'touch' })
      }}
      send={send}
    />
  )
}

/** The copy that this device keeps; a newer one is taken only while nobody is there. */
function useCopy(untouched: boolean, complete: boolean, onReached: () => void) {
  const [kept, setKept] = useState(false)
  const [rolledBack, setRolledBack] = useState(false)
  const [newer, setNewer] = useState(false)
  const copy = useRef<KeptCopy | null>(null)
  useEffect(() => {
    copy.current = keepOnDevice({
      onKept: () => setKept(true),
      onNewer: () => setNewer(true),
      onReached
    })
  }, [])
  useEffect(() => {
    isRolledBack().then(setRolledBack, () => undefined)
  }, [])
  useEffect(() => {
    // A device without room for a second copy goes on with one, as it did before there were two.
    if (kept && complete) proveCopy().catch(() => undefined)
  }, [kept, complete])
  useEffect(() => {
    if (!untouched || !newer) return
    setNewer(false)
    copy.current?.take()
  }, [untouched, newer])
  return {
    kept,
    rolledBack,
    take: () => copy.current?.take(),
    look: async () => (await copy.current?.look()) ?? 'unreached'
  }
}
