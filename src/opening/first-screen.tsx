import type { ComponentChildren } from 'preact'
import { useEffect, useMemo, useRef } from 'preact/hooks'
import type { OfficePack } from '../office/office-pack.ts'
import { ChoiceAnswers } from '../parts/choice-answers.tsx'
import { MouthString } from '../parts/mouth-string.tsx'
import { progressText } from '../parts/progress-text.ts'
import { QuestionFrame } from '../parts/question-frame.tsx'
import { Screen } from '../parts/screen.tsx'
import { type Setting, SettingProvider } from '../parts/setting.tsx'
import { SignsAnswers } from '../parts/signs-answers.tsx'
import type { Answer, Answers as AnswerSet } from '../tree/answers.ts'
import type { Observation } from '../tree/observation.ts'
import type { Language } from '../words/languages.ts'
import type { FirstQuestion } from './first-question.ts'
import { firstSpeech } from './first-speech.ts'

/** The first question by itself; once it is answered, word that the rest is on its way. */
export function FirstScreen({
  first,
  tag,
  office,
  today,
  quiet,
  waiting,
  ownsPage = false,
  languages,
  onLanguage,
  languageLost = false,
  onAnswer,
  onBack = null,
  onStartOver,
  children
}: {
  first: FirstQuestion
  tag: string
  office: OfficePack | null
  today: Date
  quiet: boolean
  /** Answered, and the rest is not there yet. */
  waiting: boolean
  /** The page is this walk's alone: its title and its main part. */
  ownsPage?: boolean
  languages: readonly Language[]
  onLanguage: (tag: string) => void
  /** The language asked for could not be loaded; the one before stands. */
  languageLost?: boolean
  onAnswer: (answers: AnswerSet) => void
  /** Back to what stands before the question, where anything does. */
  onBack?: (() => void) | null
  onStartOver: () => void
  /** What a place offers besides. */
  children?: ComponentChildren
}) {
  const setting = useMemo(() => settingOf(first, tag, office, today), [first, tag, office, today])
  const { words, tree } = setting
  const [observation] = Object.values(tree.observations)
  const id = observation?.id ?? ''
  const title = words.t(`${tree.id}:title`)
  const heading = words.t(`observations:${id}.ask`)
  useEffect(() => {
    if (ownsPage) document.title = `${heading} · ${title} · Jarside`
  }, [heading, title])
  if (observation === undefined) return null
  return (
    <SettingProvider value={setting}>
      <Screen
        title={title}
        draft={tree.review.state === 'draft'}
        languages={languages}
        onLanguage={onLanguage}
        languageLost={languageLost}
        onBack={onBack}
        onStartOver={onStartOver}
        main={ownsPage ? 'main' : 'div'}
        office={office}
        today={today}
        more={!waiting && children}
        under={<MouthString open={id} at={id} quiet />}
      >
        {waiting ? (
          <OnItsWay text={words.t('ui:opening')} />
        ) : (
          <QuestionFrame
            observation={id}
            question={Object.keys(tree.questions)[0] ?? null}
            quiet={quiet}
            progress={progressText(words.t, { question: 1, atMostMore: first.atMostMore })}
          >
            <FirstAnswers
              observation={observation}
              onAnswer={answer => onAnswer({ [id]: answer })}
            />
          </QuestionFrame>
        )}
      </Screen>
    </SettingProvider>
  )
}

/** What can be answered first: the build refuses a tree that begins with a number, whose field would wait here for nothing. */
function FirstAnswers({
  observation,
  onAnswer
}: {
  observation: Observation
  onAnswer: (answer: Answer) => void
}) {
  switch (observation.kind) {
    case 'signs':
      return <SignsAnswers observation={observation} told={{}} onAnswer={onAnswer} />
    case 'choice':
      return <ChoiceAnswers observation={observation} told={undefined} onAnswer={onAnswer} />
    case 'measure':
      return null
  }
}

/** The button that was pressed is gone: what it led to takes the focus, and is read out. */
function OnItsWay({ text }: { text: string }) {
  const said = useRef<HTMLParagraphElement>(null)
  useEffect(() => said.current?.focus(), [])
  return (
    <p role="status" tabIndex={-1} ref={said}>
      {text}
    </p>
  )
}

function settingOf(
  first: FirstQuestion,
  tag: string,
  office: OfficePack | null,
  today: Date
): Setting {
  const { tree, sources, pictures } = first
  return {
    ...firstSpeech(first, tag),
    tree,
    sources: Object.fromEntries(
      Object.entries(sources).map(([id, title]) => [
        id,
        { title, publisher: null, year: null, address: null }
      ])
    ),
    pictures,
    drawings: {},
    lookAlikes: [],
    photoPage: null,
    office,
    today
  }
}
