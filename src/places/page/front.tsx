import { useEffect, useMemo, useState } from 'preact/hooks'
import { addressOf, type Route, readRoute, writeRoute } from '../../addresses/route.ts'
import type { FirstQuestion } from '../../opening/first-question.ts'
import { FirstScreen } from '../../opening/first-screen.tsx'
import { firstSpeech } from '../../opening/first-speech.ts'
import { choicesFile, type FrontBundle, firstFile, type TreeChoices } from '../../opening/front.ts'
import { speechIn } from '../../opening/speech.ts'
import { useOffice } from '../../opening/use-office.ts'
import { usePageLanguage } from '../../opening/use-screens.ts'
import { useToday } from '../../opening/use-today.ts'
import { Before } from '../../parts/before.tsx'
import { SwitchTree } from '../../parts/switch-tree.tsx'
import type { Answers } from '../../tree/answers.ts'
import { preferred } from '../../words/languages.ts'
import { WAYS } from './ways.tsx'
import type { Ahead } from './whole.tsx'

/** The rest, and of the tree whose first question stands what was fetched with it. */
interface Rest {
  readonly Whole: typeof import('./whole.tsx').Whole
  readonly ahead: Ahead | null
}

/** A first screen that has come, in one language: of a tree its first question, or the choice of one. */
type Shown =
  | { readonly tree: string; readonly tag: string; readonly first: FirstQuestion }
  | { readonly tree: null; readonly tag: string; readonly choices: TreeChoices }

const NOTHING: Answers = {}

/**
 * The front of the page: the choice of a ferment, or the first question of one, as soon as that little
 * has come. The rest comes behind it and takes over with the first answer, or at once where an address
 * brings answers or an outcome, and wherever a first screen cannot be had.
 */
export function Front({ languages, texts, edition }: FrontBundle) {
  const today = useToday()
  const office = useOffice()
  const tags = languages.map(({ tag }) => tag)
  const [route, setRoute] = useState(() => readRoute(location.hash, tags))
  const [language, setLanguage] = useState(
    () => route.language ?? preferred(languages, navigator.languages)
  )
  const [shown, setShown] = useState<Shown | null>(null)
  const [lost, setLost] = useState(false)
  const [quiet, setQuiet] = useState(true)
  const [attempt, setAttempt] = useState(0)
  // With what the whole page begins; null while the front stands.
  const [begun, setBegun] = useState<Answers | null>(() => (isPlain(route) ? null : NOTHING))
  const [rest, setRest] = useState<Rest | 'failed' | null>(null)
  const { tree } = route
  const here = shown !== null && shown.tree === tree ? shown : null
  const spoken = here?.tag ?? language
  usePageLanguage(spoken)
  const takeOver = (answers: Answers) => {
    // What failed behind the reader's back is tried once more before that is said.
    setRest(there => (there === 'failed' ? null : there))
    setBegun(answers)
  }

  useEffect(() => {
    if (begun !== null) return undefined
    const follow = () => {
      const next = readRoute(location.hash, tags)
      setRoute(next)
      if (next.language !== null) setLanguage(next.language)
      if (!isPlain(next)) takeOver(NOTHING)
    }
    addEventListener('hashchange', follow)
    return () => removeEventListener('hashchange', follow)
  }, [begun])

  useEffect(() => {
    if (begun !== null) return undefined
    let wanted = true
    setLost(false)
    firstScreen(tree, language, edition).then(
      screen => wanted && setShown(screen),
      () => {
        if (!wanted) return
        // In another language it stands already; else the whole page knows what else there is.
        if (here) setLost(true)
        else takeOver(NOTHING)
      }
    )
    return () => {
      wanted = false
    }
  }, [tree, language, attempt, begun])

  // The rest is asked for once the first question stands, or when it is needed.
  const needed = begun !== null
  const opened = here?.tree ?? null
  const ready =
    rest !== null && rest !== 'failed' && isFor(rest.ahead, opened, spoken) ? rest : null
  useEffect(() => {
    if (ready || (!needed && opened === null)) return undefined
    let wanted = true
    const fetched = async () => {
      const { Whole, fetchAhead } = await import('./whole.tsx')
      // What cannot be had of a tree the whole page asks for again, and says so.
      const ahead = opened === null ? null : await fetchAhead(opened, spoken).catch(() => null)
      return { Whole, ahead }
    }
    const begin = () => {
      if (!wanted) return
      fetched().then(
        there => wanted && setRest(there),
        () => wanted && setRest('failed')
      )
    }
    if (needed) begin()
    else afterPaint(begin)
    return () => {
      wanted = false
    }
  }, [opened, spoken, needed])

  const waiting = useMemo(() => speechIn(texts, language), [texts, language])
  const speech = useMemo(
    () => (here?.tree === null ? firstSpeech(here.choices, here.tag) : null),
    [here]
  )
  if (begun !== null && rest === 'failed') throw new Error('the rest of the page did not come')
  if (begun !== null && ready !== null) {
    const { Whole, ahead } = ready
    return <Whole {...{ language: spoken, office, begun, ahead, quiet }} />
  }
  const go = (next: string | null) => {
    setQuiet(false)
    const address = addressOf(next, language)
    if (location.hash !== address) location.hash = address
    setRoute({ language, tree: next, fingerprint: null, outcome: null, query: null })
  }
  const speak = (tag: string) => {
    setLanguage(tag)
    setAttempt(n => n + 1)
    const next = { ...route, language: tag }
    history.replaceState(history.state, '', writeRoute(next))
    setRoute(next)
  }
  const shared = { languages, onLanguage: speak, languageLost: lost, quiet, office, today }
  if (here !== null && here.tree !== null) {
    const leave = () => go(null)
    return (
      <FirstScreen
        key={here.tree}
        {...shared}
        ownsPage
        first={here.first}
        tag={here.tag}
        waiting={begun !== null}
        onAnswer={answers => {
          setQuiet(false)
          takeOver(answers)
        }}
        onBack={leave}
        onStartOver={leave}
      >
        <SwitchTree onSwitch={leave} />
      </FirstScreen>
    )
  }
  return (
    <Before
      {...shared}
      speech={speech ?? waiting}
      trees={here?.choices.trees ?? null}
      notice={null}
      {...WAYS}
      onChoose={go}
      onLeave={tree === null ? null : () => go(null)}
    />
  )
}

/** Whether an address names no more than a tree, or none: answers and outcomes need the whole page. */
const isPlain = ({ tree, outcome, query }: Route): boolean =>
  outcome === null && query === null && (tree === null || /^[a-z0-9-]+$/.test(tree))

/** Whether what was fetched ahead is of this tree in this language; nothing is for all. */
const isFor = (ahead: Ahead | null, tree: string | null, tag: string): boolean =>
  ahead === null || (ahead.id === tree && ahead.tag === tag)

/** Takes a first screen in a language. @throws Error when it cannot be had. */
async function firstScreen(tree: string | null, tag: string, edition: string): Promise<Shown> {
  const file = tree === null ? choicesFile(tag, edition) : firstFile(tree, tag, edition)
  const answer = await fetch(`./${file}`)
  if (!answer.ok) throw new Error(`${file}: ${answer.status}`)
  const screen = await answer.json()
  return tree === null ? { tree, tag, choices: screen } : { tree, tag, first: screen }
}

/** Once what is on the screen now has been painted. */
const afterPaint = (then: () => void) => requestAnimationFrame(() => requestAnimationFrame(then))
