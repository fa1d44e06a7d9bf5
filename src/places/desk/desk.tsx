import { useEffect, useMemo, useState } from 'preact/hooks'
import { type Calls, type CallView, createCalls } from '../../machine/calls.ts'
import type { Catalogue, Openers } from '../../opening/bundle.ts'
import { settingOf } from '../../opening/setting-of.ts'
import { joined, speechIn } from '../../opening/speech.ts'
import { useOffice } from '../../opening/use-office.ts'
import { useScreens } from '../../opening/use-screens.ts'
import { useToday } from '../../opening/use-today.ts'
import { useTree } from '../../opening/use-tree.ts'
import { withdrawnIn } from '../../opening/withdrawn-in.ts'
import { fetchSheets } from '../../paper/fetch-sheets.ts'
import { Before } from '../../parts/before.tsx'
import { type Setting, SettingProvider } from '../../parts/setting.tsx'
import { createWords, SOURCE_TAG } from '../../words/words.ts'
import { CallSheet } from './call-sheet.tsx'
import { useUnfinished } from './kept-offer.tsx'
import { useFactReader } from './use-fact-reader.ts'
import { useRecording } from './use-recording.ts'
import type { SheetSeen } from './watched.ts'

/** The desk: whoever answers the phone works in English, beside it the caller's own language. */
export function Desk({
  catalogue,
  openers,
  watch = null
}: {
  catalogue: Catalogue
  openers: Openers
  /** A practice call: it is watched, and nothing of it is kept or recorded. */
  watch?: ((seen: SheetSeen) => void) | null
}) {
  const today = useToday()
  // A caller waits: the tree that is asked about most stands ready, and is changed at the head.
  const [first] = catalogue.trees
    .filter(({ withdrawn }) => withdrawn === null)
    .concat(catalogue.trees)
  const call = useCalls(first?.id ?? null)
  const { tree, facts, line, caller, calls, asked, send } = call
  const [byKeys, setByKeys] = useState(true)
  const screens = useScreens(catalogue, openers, caller, asked)
  // The office's file is read again for every call.
  const office = useOffice('./office.json', `${calls}`)
  const unfinished = useUnfinished(send)
  const recording = useRecording(calls, office, today)
  const opener = tree === null ? undefined : openers.trees[tree]
  const opened = useTree(opener, [screens.tag], asked)
  const ready = opened !== null && opened !== 'failed' ? opened : null
  const settings = useMemo(() => {
    if (ready === null) return null
    // What the caller is handed is in the caller's language; what is read aloud stands in both.
    const handed: Setting = {
      ...settingOf(ready, { ...screens, tag: ready.tag }, office, today),
      ...(opener && { fetchSheets: fetchSheets(opener) })
    }
    const english = settingOf(ready, { ...screens, tag: SOURCE_TAG }, office, today)
    const read: Setting = {
      ...english,
      numbered: true,
      ticks: true,
      atOffice: true,
      // A caller may have sent a photo.
      photoPage: './look-alikes.html',
      second: ready.tag === SOURCE_TAG ? null : { words: handed.words, shows: 'everything' }
    }
    return { handed, read }
  }, [ready?.bundle, ready?.tag, ready?.drawings, office, today])
  const words = useMemo(
    () =>
      ready === null
        ? []
        : Object.keys(ready.texts).map(tag => createWords(joined(screens.texts, ready.texts), tag)),
    [ready?.bundle, ready?.tag]
  )
  const reader = useFactReader(opener, ready?.bundle.tree ?? null, words)
  useEffect(() => {
    document.documentElement.lang = SOURCE_TAG
  }, [])

  if (settings === null) {
    const failed = opened === 'failed'
    return (
      <Before
        speech={speechIn(screens.texts, SOURCE_TAG)}
        withdrawn={withdrawnIn(catalogue, tree)}
        trees={tree === null || failed ? catalogue.trees : null}
        notice={failed ? 'ui:not-loaded' : null}
        quiet={true}
        office={office}
        today={today}
        onChoose={id => send({ type: 'choose', tree: id, facts })}
      />
    )
  }
  return (
    <SettingProvider value={settings.read}>
      <CallSheet
        // Another tree is another walk, with the facts that apply to it.
        key={`${calls} ${settings.read.tree.id}`}
        typing={call.typing}
        onCall={send}
        trees={catalogue.trees.flatMap(({ id, withdrawn }) => (withdrawn === null ? [id] : []))}
        start={facts}
        begins={line}
        byKeys={byKeys}
        onByKeys={setByKeys}
        handed={settings.handed}
        reader={reader}
        languages={catalogue.languages}
        caller={caller}
        recording={recording}
        unfinished={unfinished}
        watch={watch}
        languageLost={screens.failed || (ready?.missing.includes(screens.tag) ?? false)}
      />
    </SettingProvider>
  )
}

/** The desk's calls, in the language that its volunteers work in. */
function useCalls(tree: string | null): CallView & Pick<Calls, 'send'> {
  const calls = useMemo(() => createCalls(SOURCE_TAG, tree), [])
  const [view, setView] = useState(calls.view)
  useEffect(() => calls.subscribe(() => setView(calls.view())), [calls])
  return { ...view, send: calls.send }
}
