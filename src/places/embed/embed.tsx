import { useMemo, useState } from 'preact/hooks'
import { FirstScreen } from '../../opening/first-screen.tsx'
import { speechIn } from '../../opening/speech.ts'
import { useOffice } from '../../opening/use-office.ts'
import { groupOf } from '../../tree/group.ts'
import { type EmbedCatalogue, helpLanguage, type TreeFiles } from './embed-files.ts'
import { Surround } from './surround.tsx'
import { addressIn } from './take.ts'
import { Trouble } from './trouble.tsx'
import { useLife } from './use-life.ts'
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
  const help = helpLanguage(catalogue, language)
  const speech = useMemo(() => speechIn(catalogue.help, help), [catalogue, help])
  if (files === undefined) {
    return (
      <Surround tag={help} title={null}>
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
  const [{ at, context }, send] = useLife(files, language)
  const { first, rest, answers, attempt, round } = context
  const [today] = useState(() => new Date())
  const office = useOffice(addressIn('office.json'))
  const help = helpLanguage(catalogue, context.language)
  const speech = useMemo(() => speechIn(catalogue.help, help), [catalogue, help])
  const drawn = useMemo(
    () => rest && { ...rest, drawings: context.drawings ?? {} },
    [rest, context.drawings]
  )
  const shared = {
    office,
    today,
    languages: catalogue.languages,
    onLanguage: (tag: string) => send({ type: 'speak', language: tag }),
    onStartOver: () => send({ type: 'start-over' })
  }
  const again = () => send({ type: 'again' })

  if (at === 'not-opened') {
    return (
      <Surround tag={help} title={null}>
        <Trouble speech={speech} sentence="not-loaded" focus={attempt > 0} onAgain={again} />
      </Surround>
    )
  }
  // Until there is something to show, the page's own words stand as if there were no script.
  if (first === null) return <slot />
  const { tag, question } = first
  const { title: named } = groupOf(question.texts[question.tree.id])
  const title = typeof named === 'string' ? named : null
  if (at === 'not-gone-on') {
    return (
      <Surround tag={tag} title={title}>
        <Trouble speech={speech} sentence="not-gone-on" focus onAgain={again} />
      </Surround>
    )
  }
  const running = at === 'running' ? drawn : null
  return (
    <Surround tag={running?.tag ?? tag} title={title}>
      {running ? (
        <WalkBox rest={running} start={answers} {...shared} />
      ) : (
        <FirstScreen
          key={round}
          {...shared}
          first={question}
          tag={tag}
          quiet={round === 0 && attempt === 0}
          waiting={at === 'waiting'}
          onAnswer={answer => send({ type: 'answered', answers: answer })}
        />
      )}
    </Surround>
  )
}
