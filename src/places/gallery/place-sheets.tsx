import { evaluate } from '../../evaluate/evaluate.ts'
import { Actions } from '../../parts/actions.tsx'
import { After } from '../../parts/after.tsx'
import { Before } from '../../parts/before.tsx'
import { ChoiceAnswers } from '../../parts/choice-answers.tsx'
import { type OtherSheet, USUAL_PRINT } from '../../parts/print-choice.ts'
import { PrintPreview } from '../../parts/print-preview.tsx'
import { Qr } from '../../parts/qr.tsx'
import { tellOf } from '../../parts/said-twice.ts'
import type { Setting } from '../../parts/setting.tsx'
import { Sheet as PaperSheet } from '../../parts/sheet.tsx'
import { WalkScreen } from '../../parts/walk-screen.tsx'
import { reportOn } from '../../report/report.ts'
import type { Answers } from '../../tree/answers.ts'
import { played, playedUntil } from './played.ts'
import { alone, type Sheet, type State, together } from './sheet.ts'

const nothing = () => undefined
const HOME = 'https://jarside.larkspur.example/#/kombucha-jar'

const OTHERS: readonly OtherSheet[] = [
  { name: 'card', title: () => 'Batch record', side: () => null },
  { name: 'chart', title: () => 'What gets mixed up', side: () => null },
  { name: 'class', title: () => 'For the class', side: () => null },
  { name: 'key', title: () => 'Key on paper', side: () => null }
]

/** What the places put around a walk: before it, under its outcome, on paper. */
export function placeSheets(setting: Setting): readonly Sheet[] {
  const { tree, office, today } = setting
  const paper = (name: string, answers: Answers, general = false): State => {
    const report = reportOn(evaluate(tree, played(tree, answers)), office, today)
    return {
      name,
      show: (
        <PaperSheet
          report={report}
          general={general}
          address={() => ({ scanned: HOME, typed: HOME, showsOutcome: true })}
        />
      )
    }
  }
  const preview = (name: string, always: boolean | null): State => ({
    name,
    show: (
      <PrintPreview
        chosen={USUAL_PRINT}
        others={always === null ? [] : OTHERS}
        overleaf={always === null ? null : { words: setting.words, always }}
        onChoose={nothing}
        onClose={nothing}
      >
        {paper('an ordinary jar', {}).show}
      </PrintPreview>
    )
  })
  const before = (name: string, shown: Partial<Parameters<typeof Before>[0]>): State => ({
    name,
    show: (
      <Before
        speech={setting}
        trees={[{ id: tree.id, drawing: setting.drawings['wet-film'] ?? '' }]}
        notice={null}
        quiet={true}
        office={office}
        today={today}
        onChoose={nothing}
        {...shown}
      />
    )
  })
  return [
    ...whole('before', [
      before('choosing', {}),
      before('not loaded', { notice: 'ui:not-loaded' }),
      before('withdrawn', {
        withdrawn: {
          id: tree.id,
          edition: 1,
          fingerprint: '',
          drawing: '',
          withdrawn: '2026-11-25'
        }
      })
    ]).map(sheet => ({ ...sheet, parts: ['before', 'choose', 'withdrawn', 'screen'] })),
    ...whole('walk-screen', [
      {
        name: 'in the middle of a walk',
        show: (
          <WalkScreen
            start={playedUntil(tree, {}, 'surface-texture')}
            notice={null}
            onLeave={nothing}
          />
        )
      }
    ]).map(sheet => ({ ...sheet, parts: ['walk-screen', 'question-in-hand', 'printed-sheet'] })),
    ...alone(
      ['sheet', 'sheet-side', 'section-part'],
      [
        paper('an ordinary jar', {}),
        paper('a moldy jar', { 'surface-texture': 'dry-fuzzy' }),
        paper('a general sheet', { 'surface-texture': 'dry-fuzzy' }, true)
      ]
    ),
    ...alone(
      ['print-preview'],
      [
        preview('open over an outcome', null),
        preview('of a draft translation', true),
        preview('of a reviewed translation', false)
      ]
    ),
    ...together(['qr'], [{ name: 'an address', show: <Qr text={HOME} label="An address" /> }]),
    ...together(
      ['actions'],
      [
        {
          name: 'under an outcome',
          show: (
            <Actions
              said={tellOf(setting, reportOn(evaluate(tree, played(tree, {})), office, today)).said}
              answers={played(tree, {})}
            />
          )
        }
      ]
    ),
    ...together(
      ['after'],
      [
        {
          name: 'one answered',
          show: <After answers={{ 'jar-cover': 'unsure' }} onAnswer={nothing} onInputs={nothing} />
        }
      ]
    ),
    ...together(['key', 'answer-name', 'text'], [numbered(setting)])
  ]
}

/** Answers with their keys, and a second language under each. */
function numbered(setting: Setting): State {
  const texture = setting.tree.observations['surface-texture']
  return {
    name: 'keys and a second language',
    setting: { numbered: true, second: { words: setting.words, shows: 'everything' } },
    show:
      texture?.kind === 'choice' ? (
        <ChoiceAnswers observation={texture} told={undefined} onAnswer={nothing} />
      ) : null
  }
}

/** States that are whole screens with landmarks of their own. */
const whole = (part: string, states: readonly State[]): readonly Sheet[] =>
  alone([part], states).map(sheet => ({ ...sheet, whole: true }))
