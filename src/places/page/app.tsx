import { useEffect, useMemo, useState } from 'preact/hooks'
import { readLink } from '../../addresses/link.ts'
import { readOutcome } from '../../addresses/outcome-address.ts'
import { addressOf, readRoute, writeRoute } from '../../addresses/route.ts'
import type { OfficePack } from '../../office/office-pack.ts'
import type { Catalogue, Openers, Texts } from '../../opening/bundle.ts'
import { settingOf } from '../../opening/setting-of.ts'
import { speechIn } from '../../opening/speech.ts'
import { usePageLanguage, useScreens } from '../../opening/use-screens.ts'
import { useToday } from '../../opening/use-today.ts'
import { type TreeAhead, useTree } from '../../opening/use-tree.ts'
import { withdrawnIn } from '../../opening/withdrawn-in.ts'
import { fetchSheets } from '../../paper/fetch-sheets.ts'
import { Actions } from '../../parts/actions.tsx'
import { After } from '../../parts/after.tsx'
import { Before } from '../../parts/before.tsx'
import { SettingProvider } from '../../parts/setting.tsx'
import { WalkScreen } from '../../parts/walk-screen.tsx'
import type { Answers } from '../../tree/answers.ts'
import { carriedOver } from '../../tree/tell.ts'
import { OutcomePage } from './outcome-page.tsx'
import { WAYS } from './ways.tsx'

/** Where the whole page takes over from its front. */
export interface Beginning {
  readonly language: string
  readonly office: OfficePack | null
  /** What was answered on a first screen; empty where none was. */
  readonly begun: Answers
  /** The tree that was answered, as far as it was fetched by then. */
  readonly ahead: (TreeAhead & { readonly screens: Readonly<Record<string, Texts>> }) | null
  /** Nothing was pressed yet: the focus stays where the reader put it. */
  readonly quiet: boolean
}

/** The whole page: choose a ferment, walk, outcome; or an outcome that an address names. */
export function App({
  catalogue,
  openers,
  language: spoken,
  office,
  begun,
  ahead,
  quiet
}: Beginning & { catalogue: Catalogue; openers: Openers }) {
  const today = useToday()
  const tags = catalogue.languages.map(({ tag }) => tag)
  const [route, setRoute] = useState(() => readRoute(location.hash, tags))
  const [language, setLanguage] = useState(spoken)
  const [walkNumber, setWalkNumber] = useState(0)
  // What was told of one ferment before another was chosen; in memory only.
  const [kept, setKept] = useState<Answers>(begun)
  const [first, setFirst] = useState(quiet)
  const [attempt, setAttempt] = useState(0)
  useEffect(() => {
    const follow = () => {
      const next = readRoute(location.hash, tags)
      setRoute(next)
      if (next.language !== null) setLanguage(next.language)
    }
    addEventListener('hashchange', follow)
    return () => removeEventListener('hashchange', follow)
  }, [])

  const screens = useScreens(catalogue, openers, language, attempt, ahead?.screens)
  usePageLanguage(screens.tag)
  // A link may name anything: only the project's own trees count, not what every object has.
  const { tree } = route
  const opener =
    tree !== null && Object.hasOwn(openers.trees, tree) ? openers.trees[tree] : undefined
  const opened = useTree(opener, [screens.tag], attempt, ahead)
  const speech = useMemo(() => speechIn(screens.texts, screens.tag), [screens.texts, screens.tag])
  const ready = opened !== null && opened !== 'failed' ? opened : null
  const setting = useMemo(
    () =>
      ready && {
        ...settingOf(ready, { ...screens, tag: ready.tag }, office, today),
        photoPage: PHOTO_PAGE,
        ...(opener && { fetchSheets: fetchSheets(opener) })
      },
    [ready?.bundle, ready?.tag, ready?.drawings, office, today]
  )
  const link = useMemo(
    () =>
      ready === null || route.query === null ? null : readLink(ready.bundle.tree, route.query),
    [ready?.bundle, route.query]
  )

  const named = useMemo(
    () =>
      ready === null || route.outcome === null
        ? null
        : readOutcome(ready.bundle.tree, route.outcome, route.fingerprint),
    [ready?.bundle, route.outcome, route.fingerprint]
  )

  // One and the same until something else was told: a new set would begin the walk anew.
  const carried = useMemo(
    () => (ready === null ? NOTHING : carriedOver(ready.bundle.tree, kept)),
    [ready?.bundle, kept]
  )

  const again = () => setAttempt(n => n + 1)
  const go = (next: string | null) => {
    setFirst(false)
    again()
    setWalkNumber(n => n + 1)
    const address = addressOf(next, language)
    if (location.hash !== address) location.hash = address
    setRoute({ language, tree: next, fingerprint: null, outcome: null, query: null })
  }
  const speak = (tag: string) => {
    setLanguage(tag)
    again()
    // The address keeps what it says of the jar and changes its language alone.
    const next = { ...route, language: tag }
    history.replaceState(history.state, '', writeRoute(next))
    setRoute(next)
  }
  const lost = screens.failed || (ready?.missing.includes(screens.tag) ?? false)
  const shared = {
    languages: catalogue.languages,
    onLanguage: speak,
    languageLost: lost,
    quiet: first
  }
  if (setting === null) {
    const withdrawn = withdrawnIn(catalogue, tree)
    const unknown = tree !== null && opener === undefined && withdrawn === null
    const failed = opened === 'failed'
    return (
      <Before
        {...shared}
        speech={speech}
        withdrawn={withdrawn}
        trees={opener === undefined || failed ? catalogue.trees : null}
        notice={failed ? 'ui:not-loaded' : unknown ? 'ui:no-such-tree' : null}
        office={office}
        today={today}
        {...WAYS}
        onChoose={go}
        onLeave={withdrawn === null ? null : () => go(null)}
      />
    )
  }
  return (
    <SettingProvider value={setting}>
      {named === null ? (
        <WalkScreen
          // A link pasted into the open page is a new walk too.
          key={`${walkNumber} ${route.query ?? ''}`}
          {...shared}
          start={link?.answers ?? carried}
          notice={
            route.outcome !== null
              ? setting.words.t('ui:no-such-outcome')
              : link === null
                ? null
                : setting.words.t(`ui:link-${link.standing}`)
          }
          onLeave={() => {
            setKept(NOTHING)
            go(null)
          }}
          onSwitch={
            catalogue.trees.length > 1
              ? answer => {
                  setKept(answer)
                  go(null)
                }
              : undefined
          }
          underOutcome={walk => (
            <>
              {walk.told && <Actions said={walk.told.said} answers={walk.given} />}
              <After answers={walk.answers} onAnswer={walk.replace} onInputs={walk.workOut} />
            </>
          )}
        />
      ) : (
        <OutcomePage
          {...shared}
          named={named}
          onAsk={() => go(setting.tree.id)}
          onLeave={() => go(null)}
        />
      )}
    </SettingProvider>
  )
}

const NOTHING = {}
const PHOTO_PAGE = './look-alikes.html'
