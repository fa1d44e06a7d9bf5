import { useMemo, useState } from 'preact/hooks'
import type { Answers } from '../../tree/answers.ts'
import { speechIn } from '../opening/speech.ts'
import { useOffice } from '../opening/use-office.ts'
import type { EmbedCatalogue, TreeFiles } from './embed-files.ts'
import { FirstScreen } from './first-screen.tsx'
import { Surround } from './surround.tsx'
import { addressIn } from './take.ts'
import { Trouble } from './trouble.tsx'
import { useFirst } from './use-first.ts'
import { useRest } from './use-rest.ts'
import { WalkBox } from './walk-box.tsx'

/** One element's walk: its first question as soon as that is there, then the rest. */
export function Embed({
  catalogue,
  files,
  withdrawn,
  language
}: {
  catalogue: EmbedCatalogue
  /** The tree asked for is not shown to anybody until a new edition. */
  withdrawn: boolean
  /** Undefined for a tree that is not here. */
  files: TreeFiles | undefined
  language: string
}) {
  const speech = useMemo(() => speechIn(catalogue.help, language), [catalogue, language])
  if (files === undefined) {
    return (
      <Surround tag={language} title={null}>
        <Trouble
          speech={speech}
          sentence={withdrawn ? 'withdrawn' : 'no-such-tree'}
          onAgain={null}
        />
      </Surround>
    )
  }
  return <KnownTree catalogue={catalogue} files={files} language={language} />
}

function KnownTree({
  catalogue,
  files,
  language
}: {
  catalogue: EmbedCatalogue
  files: TreeFiles
  language: string
}) {
  const { languages } = catalogue
  const [asked, setAsked] = useState(language)
  const [attempt, setAttempt] = useState(0)
  const [start, setStart] = useState<Answers | null>(null)
  const [round, setRound] = useState(0)
  const [today] = useState(() => new Date())
  const office = useOffice(addressIn('office.json'))
  const first = useFirst(files, asked, attempt)
  const rest = useRest(files, asked, first !== null && first !== 'failed', attempt)

  const again = () => setAttempt(n => n + 1)
  const answer = (told: Answers) => {
    setStart(told)
    // What failed behind the reader's back is tried once more before a word is said of it.
    if (rest === 'failed') again()
  }
  const startOver = () => {
    setStart(null)
    setRound(n => n + 1)
  }
  const speech = useMemo(() => speechIn(catalogue.help, asked), [catalogue, asked])
  const shared = { office, today, languages, onLanguage: setAsked, onStartOver: startOver }

  // Until there is something to show, the page's own words stand as if there were no script.
  if (first === null) return <slot />
  if (first === 'failed') {
    return (
      <Surround tag={asked} title={null}>
        <Trouble speech={speech} sentence="not-loaded" focus={attempt > 0} onAgain={again} />
      </Surround>
    )
  }
  const { tag, question } = first
  const title = (question.texts[question.tree.id] as { title: string }).title
  if (start !== null && rest === 'failed') {
    return (
      <Surround tag={tag} title={title}>
        <Trouble speech={speech} sentence="not-gone-on" focus onAgain={again} />
      </Surround>
    )
  }
  const goesOn = start !== null && rest !== null && rest !== 'failed'
  return (
    <Surround tag={goesOn ? rest.tag : tag} title={title}>
      {goesOn ? (
        <WalkBox rest={rest} start={start} {...shared} />
      ) : (
        <FirstScreen
          key={round}
          {...shared}
          first={question}
          tag={tag}
          quiet={round === 0 && attempt === 0}
          waiting={start !== null}
          onAnswer={answer}
        />
      )}
    </Surround>
  )
}
