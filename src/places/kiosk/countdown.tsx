import { GRACE } from '../../machine/stay.ts'

const RADIUS = 84
const AROUND = 2 * Math.PI * RADIUS

/** A jar's mouth whose rim runs out with the seconds, and their number in it. */
export function Countdown({ left }: { left: number }) {
  const share = left / (GRACE / 1000)
  return (
    <svg class="countdown" viewBox="0 0 200 200" aria-hidden="true">
      <circle cx="100" cy="100" r={RADIUS} class="countdown-rim" />
      <circle
        cx="100"
        cy="100"
        r={RADIUS}
        class="countdown-left"
        stroke-dasharray={`${AROUND * share} ${AROUND}`}
        transform="rotate(-90 100 100)"
      />
      <text x="100" y="125">
        {left}
      </text>
    </svg>
  )
}

/** The seconds left at which the countdown is spoken. */
const SPOKEN = [10, 30, 60] as const

/** The count that is spoken: it changes three times, not every second. */
export const spokenSeconds = (left: number): number =>
  SPOKEN.find(seconds => left <= seconds) ?? left
