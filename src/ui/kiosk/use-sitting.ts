import { useEffect, useRef, useState } from 'preact/hooks'
import { browserClock, QUIET, type Sitting, watchSitting } from './idle.ts'
import { hearInputs } from './inputs.ts'

/** Watches whether the visitor is still there: the seconds left once there is doubt, and how to dispel it. */
export function useSitting(onGone: () => void): {
  readonly left: number | null
  readonly extend: () => void
} {
  const [left, setLeft] = useState<number | null>(null)
  const sitting = useRef<Sitting | null>(null)
  const warned = useRef(false)
  useEffect(() => {
    const watched = watchSitting(
      browserClock,
      seconds => {
        warned.current = seconds !== null
        setLeft(seconds)
      },
      onGone
    )
    sitting.current = watched
    // While the warning stands it answers inputs itself: opening it must not count as one.
    const deaf = hearInputs(() => warned.current || watched.touch())
    const wake = () => watched.look()
    document.addEventListener('visibilitychange', wake)
    return () => {
      watched.end()
      deaf()
      document.removeEventListener('visibilitychange', wake)
    }
  }, [])
  return { left, extend: () => sitting.current?.touch() }
}

/** Whether the screen has stood untouched for a minute; never, while somebody is being served. */
export function useUntouched(served: boolean): boolean {
  const [untouched, setUntouched] = useState(false)
  useEffect(() => {
    setUntouched(false)
    if (served) return undefined
    let timer = 0
    const wait = () => {
      clearTimeout(timer)
      setUntouched(false)
      timer = window.setTimeout(() => setUntouched(true), QUIET)
    }
    wait()
    const deaf = hearInputs(wait)
    return () => {
      clearTimeout(timer)
      deaf()
    }
  }, [served])
  return untouched
}
