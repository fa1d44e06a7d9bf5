import { useEffect, useMemo } from 'preact/hooks'
import { reportOf } from '../../office/report.ts'
import type { Language } from '../../words/languages.ts'
import { type NamedOutcome, readOutcome } from '../opening/outcome-address.ts'
import { homeOf, sheetAddress } from '../opening/sheet-address.ts'
import { Foot } from '../parts/foot.tsx'
import { Masthead } from '../parts/masthead.tsx'
import { Outcome } from '../parts/outcome.tsx'
import { useSetting } from '../parts/setting.tsx'
import { Sheet } from '../parts/sheet.tsx'
import { tellOf } from '../parts/use-walk.ts'

/** An outcome that an address names: from a sheet of paper, or taken home from the kiosk. */
export function OutcomePage({
  outcome: named,
  fingerprint,
  languages,
  onLanguage,
  quiet,
  onAsk,
  onLeave
}: {
  outcome: string
  fingerprint: string | null
  languages: readonly Language[]
  onLanguage: (tag: string) => void
  quiet: boolean
  /** Asks the questions of this tree from the start. */
  onAsk: () => void
  onLeave: () => void
}) {
  const setting = useSetting()
  const { tree, words, office, today } = setting
  const read = useMemo(() => readOutcome(tree, named, fingerprint), [tree, named, fingerprint])
  const title = words.t(`${tree.id}:title`)
  const told = read && tellOf(setting, reportOf(tree, read.outcome, office, today))
  const heading = told?.said.verdicts[0]?.name ?? words.t('ui:no-such-outcome')
  useEffect(() => {
    document.title = `${heading} · ${title} · Jarside`
  }, [heading, title])
  return (
    <>
      <div class="screen">
        <Masthead
          title={title}
          draft={tree.review.state === 'draft'}
          languages={languages}
          onLanguage={onLanguage}
          onBack={null}
          onStartOver={onLeave}
        />
        <main class="main">
          <p class="notice" role="status">
            {words.t(NOTICES[read?.standing ?? 'unknown'])}
          </p>
          <div class="keep-it">
            <button type="button" class="primary" data-action="ask" onClick={onAsk}>
              {words.t('ui:ask-about-mine')}
            </button>
            {told !== null && (
              <button type="button" class="secondary" onClick={() => print()}>
                {words.t('ui:print')}
              </button>
            )}
          </div>
          {told !== null && <Outcome {...told} quiet={quiet} />}
        </main>
        <Foot office={office} today={today} />
      </div>
      {told !== null && read !== null && (
        <Sheet
          {...told}
          general={read.standing !== 'whole'}
          address={sheetAddress(
            tree,
            read.outcome,
            words.tag,
            homeOf(office),
            read.standing === 'whole' ? 'one jar' : 'general'
          )}
        />
      )}
    </>
  )
}

const NOTICES = {
  whole: 'ui:outcome-from-address',
  general: 'ui:outcome-in-general',
  'other-edition': 'ui:outcome-other-edition',
  unknown: 'ui:no-such-outcome'
} as const satisfies Record<NamedOutcome['standing'] | 'unknown', string>
