import { useEffect, useState } from 'preact/hooks'

const MINUTE = 60_000

/**
 * The present day and minute, as long as the page stands: hours, review dates and the date on a sheet
 * go by what it is when they are shown.
 */
export function useToday(): Date {
  const [today, setToday] = useState(() => new Date())
  useEffect(() => {
    const renew = () => setToday(new Date())
    const timer = setInterval(renew, MINUTE)
    // A page that slept may have slept for days.
    document.addEventListener('visibilitychange', renew)
    return () => {
      clearInterval(timer)
      document.removeEventListener('visibilitychange', renew)
    }
  }, [])
  return today
}
