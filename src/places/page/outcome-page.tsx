import { useEffect } from 'preact/hooks'
import type { NamedOutcome } from '../../addresses/outcome-address.ts'
import { homeOf, sheetAddress } from '../../addresses/sheet-address.ts'
import type { LanguageChoice } from '../../parts/language-switch.tsx'
import { Outcome } from '../../parts/outcome.tsx'
import { askToPrint } from '../../parts/print-preview.tsx'
import { PrintedSheet } from '../../parts/printed-sheet.tsx'
import { tellOf } from '../../parts/said-twice.ts'
import { Screen } from '../../parts/screen.tsx'
import { useSetting } from '../../parts/setting.tsx'
import { Text } from '../../parts/text.tsx'
import { reportOf } from '../../report/report.ts'

const NOTICES = {
  whole: 'ui:outcome-from-address',
  general: 'ui:outcome-in-general',
  'other-edition': 'ui:outcome-other-edition'
} as const satisfies Record<NamedOutcome['standing'], string>

/** An outcome that an address names: from a sheet of paper, or taken home from the kiosk. */
export function OutcomePage({
  named: { outcome, standing },
  quiet,
  onAsk,
  onLeave,
  ...frame
}: LanguageChoice & {
  named: NamedOutcome
  quiet: boolean
  /** Asks the questions of this tree from the start. */
  onAsk: () => void
  onLeave: () => void
}) {
  const setting = useSetting()
  const { tree, words, office, today } = setting
  const title = words.t(`${tree.id}:title`)
  const report = reportOf(tree, outcome, office, today, standing === 'whole' ? {} : null)
  const sentences = tellOf(setting, report)
  const heading = sentences.said.verdicts[0]?.name ?? title
  const general = standing !== 'whole'
  useEffect(() => {
    document.title = `${heading} · ${title} · Jarside`
  }, [heading, title])
  return (
    <>
      <Screen
        {...frame}
        title={title}
        draft={tree.review.state === 'draft'}
        onBack={null}
        onStartOver={onLeave}
        office={office}
        today={today}
      >
        <div class="notice">
          <p>
            <Text k={NOTICES[standing]} />
          </p>
          <div class="keep-it">
            <button type="button" class="primary" data-action="ask" onClick={onAsk}>
              {words.t('ui:ask-about-mine')}
            </button>
            <button type="button" class="secondary" onClick={askToPrint}>
              {words.t('ui:print')}
            </button>
          </div>
        </div>
        <Outcome {...sentences} quiet={quiet} />
      </Screen>
      <PrintedSheet
        report={report}
        general={general}
        address={() => language =>
          sheetAddress(tree, outcome, language, homeOf(office), general ? 'general' : 'one jar')
        }
      />
    </>
  )
}
