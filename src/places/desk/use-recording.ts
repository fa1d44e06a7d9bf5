import { useEffect, useRef, useState } from 'preact/hooks'
import { localTime } from '../../office/hours.ts'
import type { OfficePack } from '../../office/office-pack.ts'
import { type LogInHand, useContactLog } from '../../parts/use-contact-log.ts'
import { type SlipsInHand, useSlips } from './slips.tsx'

/** What a desk keeps from call to call to record them. */
export interface Recording {
  readonly log: LogInHand
  readonly slips: SlipsInHand
  /** YYYY-MM-DD at the office. */
  readonly today: string
  /** The number that the volunteer typed last, in memory alone. */
  readonly volunteer: string
  onVolunteer(typed: string): void
  /** Since the first key or press of this call, at least 1. */
  minutes(): number
}

/** `calls`: how many came before this one. */
export function useRecording(calls: number, office: OfficePack | null, now: Date): Recording {
  const today = localTime(now, office?.hours?.zone).date
  const log = useContactLog()
  const slips = useSlips(today)
  const [volunteer, setVolunteer] = useState('')
  const started = useRef<number | null>(null)
  useEffect(() => {
    // A desk may stand idle for hours between two calls: a call begins when somebody does something.
    started.current = null
    const begin = () => {
      started.current ??= Date.now()
    }
    addEventListener('keydown', begin, true)
    addEventListener('pointerdown', begin, true)
    return () => {
      removeEventListener('keydown', begin, true)
      removeEventListener('pointerdown', begin, true)
    }
  }, [calls])
  return {
    log,
    slips,
    today,
    volunteer,
    onVolunteer: setVolunteer,
    minutes: () => {
      const since = started.current ?? Date.now()
      return Math.min(1440, Math.max(1, Math.ceil((Date.now() - since) / 60_000)))
    }
  }
}
