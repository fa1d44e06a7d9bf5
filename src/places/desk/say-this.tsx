import { homeOf } from '../../addresses/sheet-address.ts'
import type { Fact } from '../../evaluate/facts.ts'
import { Actions } from '../../parts/actions.tsx'
import { After } from '../../parts/after.tsx'
import { Outcome } from '../../parts/outcome.tsx'
import { type ToldOutcome, tellOf } from '../../parts/said-twice.ts'
import { type Setting, SettingProvider, useSetting } from '../../parts/setting.tsx'
import { Text } from '../../parts/text.tsx'
import type { Report } from '../../report/report.ts'
import type { Answer, Answers } from '../../tree/answers.ts'
import { textMessage } from '../../words/text-message.ts'
import { callSummary } from './call-summary.ts'

/** The outcome to be read aloud, and what can be sent or handed to the caller in the caller's language. */
export function SayThis({
  told,
  handed,
  report,
  early,
  quiet,
  onGoOn,
  answers,
  facts,
  address,
  onAnswer,
  onInputs
}: {
  told: ToldOutcome
  handed: Setting
  report: Report | null
  /** Not every question was asked. */
  early: boolean
  /** The focus stays in the field: more facts may follow. */
  quiet: boolean
  onGoOn: () => void
  answers: Answers
  /** As they were told. */
  facts: readonly Fact[]
  /** Where the caller sees it all again. */
  address: () => string
  onAnswer: (observation: string, answer: Answer) => void
  onInputs: (observation: string, inputs: Answers) => void
}) {
  const setting = useSetting()
  const { words } = setting
  return (
    <>
      <p class="desk-cue">{words.t('ui:desk.say-this')}</p>
      {early && (
        <div class="notice">
          <p>{words.t('ui:desk.stopped-early')}</p>
          <button type="button" class="secondary" data-action="go-on" onClick={onGoOn}>
            {words.t('ui:desk.go-on')}
          </button>
        </div>
      )}
      <Outcome {...told} quiet={quiet} />
      <p class="desk-teach-back">
        <Text k="ui:desk.teach-back" />
      </p>
      {report !== null && (
        <Actions
          said={tellOf(handed, report).said}
          handed={handed.words}
          home={homeOf(handed.office)}
          answers={answers}
          copies={[
            {
              id: 'message',
              text: () => textMessage(tellOf(handed, report).said, address()),
              label: 'ui:desk.copy-message',
              done: 'ui:desk.copied-message'
            },
            {
              id: 'summary',
              text: () => callSummary(setting.tree, facts, words, 'specialist').join('\n'),
              label: 'ui:desk.copy-summary',
              done: 'ui:desk.copied-summary'
            },
            {
              id: 'doubt',
              text: () => callSummary(setting.tree, facts, words, 'doubt').join('\n'),
              label: 'ui:desk.copy-doubt',
              done: 'ui:desk.copied-doubt'
            }
          ]}
        />
      )}
      {/* Keys answer the question of the walk alone: beside these answers none is shown. */}
      <SettingProvider value={{ ...setting, numbered: false }}>
        <After answers={answers} onAnswer={onAnswer} onInputs={onInputs} />
      </SettingProvider>
    </>
  )
}
