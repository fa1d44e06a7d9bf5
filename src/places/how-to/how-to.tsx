import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import type { FoundAnswers } from '../../know-how/found.ts'
import { openKnowHow } from '../../know-how/search.ts'
import { searchedIn } from '../../know-how/searched.ts'
import type { Catalogue, KnowHowBundle, Openers, Texts } from '../../opening/bundle.ts'
import { useLinked, useLinkedPage } from '../../opening/use-linked-page.ts'
import type { AnswerTwice } from '../../parts/know-how-answer.tsx'
import { KnowHowFound } from '../../parts/know-how-found.tsx'
import { Screen } from '../../parts/screen.tsx'
import { SpeechProvider } from '../../parts/setting.tsx'
import { ANY_FERMENT, type KnowHow } from '../../tree/know-how.ts'
import { sayKnowHow } from '../../words/know-how-text.ts'
import { preferred } from '../../words/languages.ts'
import { AskField } from './ask-field.tsx'
import { ClassSheet } from './class-sheet.tsx'
import { Collection } from './collection.tsx'

/** What was found, or one answer that was picked. */
const picked = (id: string): FoundAnswers => ({ lead: null, ferment: null, answers: [id] })

/** The page of how-to answers: a question in one's own words, or all answers by ferment. */
export function HowTo({
  catalogue,
  openers,
  knowHow,
  allWords
}: {
  catalogue: Catalogue
  openers: Openers
  knowHow: KnowHowBundle
  /** The words of the answers, in every language at once: a question may be asked in any. */
  allWords: Readonly<Record<string, Texts>>
}) {
  const linked = useLinked()
  const { answers, sources } = knowHow
  const byId = useMemo(() => new Map(answers.map(answer => [answer.id, answer])), [answers])
  const ask = useMemo(() => openKnowHow(searchedIn(knowHow, allWords)), [knowHow, allWords])
  const ferments = catalogue.trees.filter(
    ({ id, withdrawn }) => withdrawn === null && byFerment(answers, id).length > 0
  )
  const [ferment, setFerment] = useState(() => {
    const wanted = linked.get('ferment') ?? ''
    return ferments.some(({ id }) => id === wanted) ? wanted : ANY_FERMENT
  })
  const [found, setFound] = useState<FoundAnswers | null>(() => {
    const id = linked.get('answer') ?? ''
    return byId.has(id) ? picked(id) : null
  })
  const [shown] = found?.lead === null ? found.answers : []
  const { speech, frame } = useLinkedPage(
    { catalogue, openers },
    () => linked.get('lang') ?? preferred(catalogue.languages, navigator.languages),
    { ferment, ...(shown !== undefined && { answer: shown }) }
  )
  const { words, second } = speech
  const title = words.t('ui:know-how.title')
  useEffect(() => {
    document.title = `${title} · Jarside`
  }, [title])
  const result = useRef<HTMLDivElement>(null)
  const where = { office: frame.office, today: frame.today }
  const twice = (answer: KnowHow): AnswerTwice => ({
    said: sayKnowHow(answer, words, sources, where),
    beside: second && sayKnowHow(answer, second.words, sources, where),
    drawings: knowHow.drawings
  })
  const pick = (id: string) => {
    setFound(picked(id))
    result.current?.focus()
  }
  return (
    <SpeechProvider value={speech}>
      <Screen {...frame} look="how-to-page" title={title} draft onBack={null} onStartOver={null}>
        <div class="how-to-ask">
          <h1>{title}</h1>
          <p>{words.t('ui:know-how.intro')}</p>
          <AskField onAsk={line => setFound(ask(line))} />
          <div ref={result} class="how-to-result" role="status" tabIndex={-1}>
            {found !== null && (
              <KnowHowFound
                found={found}
                answers={found.answers.flatMap(id => {
                  const answer = byId.get(id)
                  return answer ? [twice(answer)] : []
                })}
                {...where}
                onPick={pick}
              >
                <p>
                  <a class="primary" href={questionsAt(found.ferment, ferments, words.tag)}>
                    {lookText(found.ferment)}
                  </a>
                </p>
              </KnowHowFound>
            )}
          </div>
          <p>
            <a href={`./#/${words.tag}`}>{words.t('ui:know-how.to-questions')}</a>
          </p>
        </div>
        <Collection
          ferments={ferments}
          chosen={ferment}
          onChoose={setFerment}
          answers={byFerment(answers, ferment).map(twice)}
          shown={shown ?? null}
          onPick={pick}
        />
      </Screen>
      <ClassSheet ferment={ferment} answers={byFerment(answers, ferment).map(twice)} {...where} />
    </SpeechProvider>
  )

  function lookText(tree: string | null): string {
    return ferments.some(({ id }) => id === tree)
      ? words.t('ui:know-how.look-link', { title: words.t(`${tree}:title`) })
      : words.t('ui:know-how.look-any')
  }
}

const byFerment = (answers: readonly KnowHow[], ferment: string): readonly KnowHow[] =>
  answers.filter(answer => answer.ferment === ferment)

/** The address of the questions about one jar, of the food that was named. */
const questionsAt = (
  tree: string | null,
  ferments: readonly { readonly id: string }[],
  tag: string
): string => (ferments.some(({ id }) => id === tree) ? `./#/${tag}/${tree}` : `./#/${tag}`)
