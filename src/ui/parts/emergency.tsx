import type { Said } from '../../words/say.ts'
import { Phone } from './phone.tsx'
import { useSetting } from './setting.tsx'
import { StepHeading } from './step-heading.tsx'

/** The emergency words and numbers at once, and nothing beside them but the way to take the answer back. */
export function Emergency({ said, onTakeBack }: { said: Said; onTakeBack: () => void }) {
  const { words } = useSetting()
  const [verdict] = said.verdicts
  const [first, ...rest] = said.calls
  // The heading has said the first step already.
  const steps = said.doNow.filter(step => step !== verdict?.message)
  if (verdict === undefined || first === undefined) return null
  return (
    <article class="emergency" data-verdict={verdict.id}>
      <p class="signal signal-danger">{verdict.signalWord}</p>
      <StepHeading step="emergency">{verdict.message}</StepHeading>
      {first.phone !== null && (
        <p class="emergency-number">
          <Phone number={first.phone} />
        </p>
      )}
      <ol>
        {steps.map(step => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      {rest.map(({ to, name, phone }) => (
        <p key={to} class="emergency-other">
          {name} {phone !== null && <Phone number={phone} />}
        </p>
      ))}
      <button type="button" class="quiet" onClick={onTakeBack}>
        {words.t('ui:take-back')}
      </button>
    </article>
  )
}
