import type { OfficePack } from '../../office/office-pack.ts'
import { Foot } from '../../parts/foot.tsx'
import { type Speech, SpeechProvider } from '../../parts/setting.tsx'
import { StepHeading } from '../../parts/step-heading.tsx'
import { Text } from '../../parts/text.tsx'
import { HoldButton } from './hold-button.tsx'

/** The screen while somebody wipes it: a cloth presses nothing, and the numbers stay in sight. */
export function Cleaning({
  speech,
  office,
  today,
  onUnlock
}: {
  speech: Speech
  office: OfficePack | null
  today: Date
  onUnlock: () => void
}) {
  const { words } = speech
  return (
    <SpeechProvider value={speech}>
      <div class="screen cleaning">
        <main class="main">
          <StepHeading step="cleaning">
            <Text k="ui:staff.cleaning" />
          </StepHeading>
          <HoldButton
            look="cleaning-hold"
            label={words.t('ui:staff.cleaning-how')}
            onHeld={onUnlock}
          >
            <span class="cleaning-word" aria-hidden="true">
              {words.t('ui:staff.unlock')}
            </span>
          </HoldButton>
          <p class="cleaning-how">
            <Text k="ui:staff.cleaning-how" />
          </p>
        </main>
        <div class="cleaning-foot" inert>
          <Foot office={office} today={today} />
        </div>
      </div>
    </SpeechProvider>
  )
}
