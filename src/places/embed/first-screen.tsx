import { useEffect, useMemo, useRef } from 'preact/hooks'
import type { OfficePack } from '../../office/office-pack.ts'
import { MouthString } from '../../parts/mouth-string.tsx'
import { PlainAnswers } from '../../parts/plain-answers.tsx'
import { progressText } from '../../parts/progress-text.ts'
import { QuestionFrame } from '../../parts/question-frame.tsx'
import { Screen } from '../../parts/screen.tsx'
import { type Setting, SettingProvider } from '../../parts/setting.tsx'
import type { Answers as AnswerSet } from '../../tree/answers.ts'
import { isDraft, type Language } from '../../words/languages.ts'
import { createWords, SOURCE_TAG } from '../../words/words.ts'
import type { FirstQuestion } from './embed-files.ts'

/** The first question by itself; once it is answered, word that the rest is on its way. */
export function FirstScreen({
  first,
  tag,
  office,
  today,
  quiet,
  waiting,
  languages,
  onLanguage,
  onAnswer,
  onStartOver
}: {
  first: FirstQuestion
  tag: string
  office: OfficePack | null
  today: Date
  quiet: boolean
  /** Answered, and the rest is not there yet. */
  waiting: boolean
  languages: readonly Language[]
  onLanguage: (tag: string) => void
  onAnswer: (answers: AnswerSet) => void
  onStartOver: () => void
}) {
  const setting = useMemo(() => settingOf(first, tag, office, today), [first, tag, office, today])
  const { words, tree } = setting
  const [observation] = Object.values(tree.observations)
  if (observation === undefined) return null
  const { id } = observation
  return (
    <SettingProvider value={setting}>
      <Screen
        title={words.t(`${tree.id}:title`)}
        draft={tree.review.state === 'draft'}
        languages={languages}
        onLanguage={onLanguage}
        onBack={null}
        onStartOver={onStartOver}
        main="div"
        office={office}
        today={today}
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
            <PlainAnswers
              observation={observation}
              told={{}}
              onAnswer={told => onAnswer({ [id]: told })}
            />
          </QuestionFrame>
        )}
      </Screen>
    </SettingProvider>
  )
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
  { tree, sources, pictures, texts, cautions }: FirstQuestion,
  tag: string,
  office: OfficePack | null,
  today: Date
): Setting {
  return {
    // Whether a hint was written at all is asked in English: every language has the same ones.
    words: createWords({ [SOURCE_TAG]: texts, [tag]: texts }, tag),
    second:
      isDraft(tag) && cautions !== null
        ? { words: createWords({ [SOURCE_TAG]: cautions }, SOURCE_TAG), shows: 'cautions' }
        : null,
    dials: true,
    numbered: false,
    tree,
    sources,
    pictures,
    drawings: {},
    lookAlikes: [],
    photoPage: null,
    office,
    today
  }
}
