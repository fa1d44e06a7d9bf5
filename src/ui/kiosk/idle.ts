/** How long a visitor may sit still before being asked, and how long the question then stands. */
export const QUIET = 60_000
export const GRACE = 60_000
/** The seconds left at which the countdown is spoken. */
const SPOKEN = [10, 30, 60] as const

const TICK = 1000

/** What this module needs of time. */
export interface Clock {
  /** Starts a stopwatch, read in milliseconds. */
  start(): () => number
  /** Calls again and again; what it gives back ends that. */
  every(milliseconds: number, tick: () => void): () => void
}

/** A visitor's sitting, watched until nobody is there any more. */
export interface Sitting {
  /** Somebody did something: the time starts anew, unless it had run out already. */
  touch(): void
  /** Looks at the clock now: after a sleep no tick came. */
  look(): void
  end(): void
}

/**
 * Watches for a visitor who has gone. `onLeft` hears the seconds left while the warning stands, and
 * null when somebody has answered it; `onGone` is called once, and then nothing is any more.
 */
export function watchSitting(
  clock: Clock,
  onLeft: (seconds: number | null) => void,
  onGone: () => void
): Sitting {
  let elapsed = clock.start()
  let told: number | null = null
  let over = false
  const end = () => {
    over = true
    stop()
  }
  const look = () => {
    if (over) return
    const left = secondsLeft(elapsed())
    if (left !== null && left <= 0) {
      end()
      onGone()
    } else if (left !== told) {
      told = left
      onLeft(left)
    }
  }
  const stop = clock.every(TICK, look)
  return {
    touch() {
      // Whoever wakes a sleeping tablet is somebody else: the time that ran out stays run out.
      look()
      if (over) return
      elapsed = clock.start()
      look()
    },
    look,
    end
  }
}

/** The seconds that the warning still has to run; null while it does not stand. */
function secondsLeft(elapsed: number): number | null {
  return elapsed < QUIET ? null : Math.ceil((QUIET + GRACE - elapsed) / 1000)
}

/** The count that is spoken: it changes three times, not every second. */
export const spokenSeconds = (left: number): number =>
  SPOKEN.find(seconds => left <= seconds) ?? left

/**
 * The browser's clock: of its two the one that has run further. The wall clock may be set back, and
 * the other stands still while a tablet sleeps.
 */
export const browserClock: Clock = {
  start() {
    const wall = Date.now()
    const steady = performance.now()
    return () => Math.max(Date.now() - wall, performance.now() - steady)
  },
  every(milliseconds, tick) {
    const timer = setInterval(tick, milliseconds)
    return () => clearInterval(timer)
  }
}
