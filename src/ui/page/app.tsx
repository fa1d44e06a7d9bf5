import { useEffect, useMemo, useState } from 'preact/hooks'
import type { OfficePack } from '../../office/office-pack.ts'
import type { Answers } from '../../tree/answers.ts'
import { createWords, SOURCE_TAG } from '../../words/words.ts'
import { Foot } from '../parts/foot.tsx'
import { Masthead } from '../parts/masthead.tsx'
import { type Setting, SettingProvider } from '../parts/setting.tsx'
import type { Catalogue, Openers, TreeBundle } from './bundle.ts'
import { Choose } from './choose.tsx'
import { type ReadLink, readLink } from './link.ts'
import { addressOf, readRoute } from './route.ts'
import { WalkScreen } from './walk-screen.tsx'

const NOTHING: Answers = {}

/** The page: choose a ferment, walk, outcome. */
export function App({
  catalogue,
  openers,
  office,
  today
}: {
  catalogue: Catalogue
  openers: Openers
  office: OfficePack | null
  today: Date
}) {
  const words = useMemo(
    () => createWords({ [SOURCE_TAG]: { ui: catalogue.ui } }, SOURCE_TAG),
    [catalogue]
  )
  const [route, setRoute] = useState(() => readRoute(location.hash))
  const [bundle, setBundle] = useState<TreeBundle | null>(null)
  const [failed, setFailed] = useState(false)
  const [walkNumber, setWalkNumber] = useState(0)
  const [first, setFirst] = useState(true)
  useEffect(() => {
    const follow = () => setRoute(readRoute(location.hash))
    addEventListener('hashchange', follow)
    return () => removeEventListener('hashchange', follow)
  }, [])

  // A link may name anything: only the project's own trees count, not what every object has.
  const opener =
    route.tree !== null && Object.hasOwn(openers, route.tree) ? openers[route.tree] : undefined
  useEffect(() => {
    setBundle(null)
    setFailed(false)
    opener?.open().then(
      ({ default: opened }) => setBundle(opened),
      () => setFailed(true)
    )
  }, [opener])

  const go = (tree: string | null) => {
    setFirst(false)
    setWalkNumber(n => n + 1)
    if (location.hash !== addressOf(tree)) location.hash = addressOf(tree)
    setRoute({ tree, query: null })
  }
  if (opener !== undefined && bundle !== null && !failed) {
    return (
      <Opened
        // A link pasted into the open page is a new walk too.
        key={`${walkNumber} ${route.query ?? ''}`}
        bundle={bundle}
        ui={catalogue.ui}
        draw={opener.draw}
        query={route.query}
        office={office}
        today={today}
        quiet={first}
        onLeave={() => go(null)}
      />
    )
  }
  const unknown = route.tree !== null && opener === undefined
  const notice = failed ? words.t('ui:not-loaded') : unknown ? words.t('ui:no-such-tree') : null
  return (
    <div class="screen">
      <Masthead words={words} title={null} draft={false} onBack={null} onStartOver={null} />
      <main class="main">
        {opener === undefined || failed ? (
          <Choose
            words={words}
            trees={catalogue.trees}
            notice={notice}
            quiet={first}
            onChoose={go}
          />
        ) : (
          <p role="status">{words.t('ui:opening')}</p>
        )}
      </main>
      <Foot words={words} office={office} today={today} />
    </div>
  )
}

/** A tree that has arrived, with its own words; its drawings follow as soon as they can. */
function Opened({
  bundle,
  ui,
  draw,
  query,
  office,
  today,
  quiet,
  onLeave
}: {
  bundle: TreeBundle
  ui: unknown
  draw: () => Promise<{ readonly default: Readonly<Record<string, string>> }>
  query: string | null
  office: OfficePack | null
  today: Date
  quiet: boolean
  onLeave: () => void
}) {
  const { tree, sources, pictures } = bundle
  const [drawings, setDrawings] = useState<Readonly<Record<string, string>>>({})
  useEffect(() => {
    // Without drawings every answer still has its words.
    draw().then(
      ({ default: drawn }) => setDrawings(drawn),
      () => undefined
    )
  }, [draw])
  const words = useMemo(
    () => createWords({ [SOURCE_TAG]: { ...bundle.words, ui } }, SOURCE_TAG),
    [bundle, ui]
  )
  const link = useMemo<ReadLink | null>(
    () => (query === null ? null : readLink(tree, query)),
    [tree, query]
  )
  const setting: Setting = { tree, words, sources, pictures, drawings, office, today }
  const notice = link === null ? null : words.t(`ui:link-${link.standing}`)
  return (
    <SettingProvider value={setting}>
      <WalkScreen
        start={link?.answers ?? NOTHING}
        notice={notice}
        quiet={quiet}
        onLeave={onLeave}
      />
    </SettingProvider>
  )
}
