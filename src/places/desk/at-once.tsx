import { useEffect, useRef } from 'preact/hooks'
import { Calls } from '../../parts/calls.tsx'
import { Steps } from '../../parts/outcome.tsx'
import { tellOf } from '../../parts/said-twice.ts'
import { useSetting } from '../../parts/setting.tsx'
import { Text } from '../../parts/text.tsx'
import { VerdictCard } from '../../parts/verdict-card.tsx'
import { reportOf } from '../../report/report.ts'
import { NOTHING_YET, verdict } from '../../tree/caution.ts'

/**
 * A danger as soon as what was told makes it certain, in the words and the size in which the outcome says
 * it: what to do for it and whom to call, and nothing of what is still open.
 */
export function AtOnce({ verdicts }: { verdicts: readonly string[] }) {
  const card = useRef<HTMLDivElement>(null)
  useEffect(() => {
    // The focus stays where it is; what is said now is in sight all the same.
    if (verdicts.length > 0) card.current?.scrollIntoView({ block: 'start' })
  }, [verdicts.join()])
  return (
    <div class="at-once" role="alert" ref={card}>
      {verdicts.map(id => (
        <UrgentCard key={id} id={id} />
      ))}
    </div>
  )
}

function UrgentCard({ id }: { id: string }) {
  const setting = useSetting()
  const { tree, office, today } = setting
  const { track, ceiling } = verdict(tree, id)
  const own = tree.advice.verdicts[id]
  const whole = reportOf(tree, { ...NOTHING_YET, [track]: id, use: ceiling }, office, today, {})
  const { said, beside } = tellOf(setting, {
    ...whole,
    advice: whole.advice && {
      ...whole.advice,
      doNow: whole.advice.doNow.filter(step => own?.doNow.includes(step)),
      later: whole.advice.later.filter(step => own?.doNow.includes(step))
    },
    referrals: whole.referrals.filter(({ to }) => own?.refer.includes(to))
  })
  const [spoken] = said.verdicts
  if (spoken === undefined) return null
  return (
    <VerdictCard
      verdict={spoken}
      beside={beside?.verdicts[0]}
      heading={text => <h2 class="at-once-heading">{text}</h2>}
    >
      <section class="do-now">
        <h3>
          <Text k="ui:do-now" />
        </h3>
        <Steps steps={said.doNow} second={beside?.doNow} />
      </section>
      <Calls calls={said.calls} doubt={said.officeDoubt} beside={beside} />
    </VerdictCard>
  )
}
