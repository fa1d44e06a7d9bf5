import type { Told } from './outcome.tsx'
import { Phone } from './phone.tsx'
import { useSetting } from './setting.tsx'
import { StepHeading } from './step-heading.tsx'
import { Both } from './text.tsx'

/** The emergency words and numbers at once, and nothing beside them but the way to take the answer back. */
export function Emergency({
  said,
  beside,
  onTakeBack,
  onStartOver = null
}: Told & {
  onTakeBack: () => void
  /** Where the place has a way to begin anew on every screen. */
  onStartOver?: (() => void) | null
}) {
  const { words } = useSetting()
  const [verdict] = said.verdicts
  const [first, ...rest] = said.calls
  // The heading has said the first step already.
  const steps = said.doNow
    .map((step, at) => ({ step, second: beside?.doNow[at] }))
    .filter(({ step }) => step !== verdict?.message)
  if (verdict === undefined || first === undefined) return null
  return (
    <article class="emergency" data-verdict={verdict.id}>
      <p class="signal signal-danger">{verdict.signalWord}</p>
      <StepHeading step="emergency">
        <Both text={verdict.message ?? verdict.name} second={beside?.verdicts[0]?.message} />
      </StepHeading>
      {first.phone !== null && (
        <p class="emergency-number">
          <Phone number={first.phone} />
        </p>
      )}
      <ol>
        {steps.map(({ step, second }) => (
          <li key={step}>
            <Both text={step} second={second} />
          </li>
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
      {onStartOver && (
        <button type="button" class="quiet" data-move="start-over" onClick={onStartOver}>
          {words.t('ui:start-over')}
        </button>
      )}
    </article>
  )
}
