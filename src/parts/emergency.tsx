import type { ComponentChildren } from 'preact'
import { answerLabel } from '../words/tree-texts.ts'
import type { Words } from '../words/words.ts'
import type { EmergencyTold } from './emergency-told.ts'
import { Key } from './key.tsx'
import { Phone } from './phone.tsx'
import type { SaidTwice } from './said-twice.ts'
import { useSetting } from './setting.tsx'
import { StepHeading } from './step-heading.tsx'
import { Both } from './text.tsx'

/** The key that takes an emergency back: nobody presses it out of habit, as they do Escape. */
const TAKES_BACK = 'Backspace'

/**
 * The emergency words and numbers at once, under what was understood, and nothing beside them but the way
 * to take the answer back.
 */
export function Emergency({
  said,
  beside,
  understood,
  onTakeBack,
  onStartOver = null,
  aids
}: SaidTwice & {
  /** What was told that is an emergency: said back first, because one key or one typed line brings this card. */
  understood: readonly EmergencyTold[]
  onTakeBack: () => void
  /** Where the place has a way to begin anew on every screen. */
  onStartOver?: (() => void) | null
  /** What helps to read it. */
  aids?: ComponentChildren
}) {
  const { words, second } = useSetting()
  const [verdict] = said.verdicts
  const [first, ...rest] = said.calls
  // The heading has said the first step already.
  const steps = said.doNow
    .map((step, at) => ({ step, second: beside?.doNow[at] }))
    .filter(({ step }) => step !== verdict?.message)
  if (verdict === undefined || first === undefined) return null
  return (
    <article
      class="emergency"
      data-verdict={verdict.id}
      onKeyDown={event => {
        if (event.key !== TAKES_BACK || event.repeat) return
        event.preventDefault()
        onTakeBack()
      }}
    >
      {aids}
      {understood.length > 0 && (
        <p class="emergency-understood" id="emergency-understood">
          <Both
            text={understoodText(words, understood)}
            second={second && understoodText(second.words, understood)}
          />
        </p>
      )}
      <p class="signal signal-danger">{verdict.signalWord}</p>
      <StepHeading step="emergency" describedBy="emergency-understood">
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
      <button
        type="button"
        class="quiet"
        data-action="take-back"
        aria-keyshortcuts={TAKES_BACK}
        onClick={onTakeBack}
      >
        <Key of="⌫" />
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

/** What was told that is an emergency, said back. */
export function understoodText(words: Words, understood: readonly EmergencyTold[]): string {
  const signs = understood.map(({ observation, sign }) => answerLabel(words, observation, sign))
  return words.t('ui:understood', { signs: signs.join('; ') })
}
