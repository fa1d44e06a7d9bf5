import { GRACE } from './idle.ts'

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
