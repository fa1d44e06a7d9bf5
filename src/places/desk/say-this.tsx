import { homeOf } from '../../addresses/sheet-address.ts'
import { Actions } from '../../parts/actions.tsx'
import { After } from '../../parts/after.tsx'
import { Outcome } from '../../parts/outcome.tsx'
import { type SaidTwice, tellOf } from '../../parts/said-twice.ts'
import { type Setting, SettingProvider, useSetting } from '../../parts/setting.tsx'
import type { Report } from '../../report/report.ts'
import type { Answer, Answers } from '../../tree/answers.ts'

/** The outcome to be read aloud, and what can be sent or handed to the caller in the caller's language. */
export function SayThis({
  told,
  handed,
  report,
  early,
  quiet,
  onGoOn,
  answers,
  onAnswer,
  onInputs
}: {
  told: SaidTwice
  handed: Setting
  report: Report | null
  /** Not every question was asked. */
  early: boolean
  /** The focus stays in the field: more facts may follow. */
  quiet: boolean
  onGoOn: () => void
  answers: Answers
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
      {report !== null && (
        <Actions
          said={tellOf(handed, report).said}
          handed={handed.words}
          home={homeOf(handed.office)}
          answers={answers}
        />
      )}
      {/* Keys answer the question of the walk alone: beside these answers none is shown. */}
      <SettingProvider value={{ ...setting, numbered: false }}>
        <After answers={answers} onAnswer={onAnswer} onInputs={onInputs} />
      </SettingProvider>
    </>
  )
}
