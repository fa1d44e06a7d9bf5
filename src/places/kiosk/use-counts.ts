import { useEffect, useRef } from 'preact/hooks'
import {
  countAbandoned,
  countOutcome,
  keepCounts,
  readCounts
} from '../../contacts/kiosk-counts.ts'
import { subjectOf, toldOfCall } from '../../contacts/what-to-record.ts'
import type { Evaluation } from '../../evaluate/evaluate.ts'

/**
 * Counts visits: each outcome once for every ferment that was chosen, and a visit that ended without one.
 * Gives back what is called with an outcome.
 */
export function useCounts(
  language: string | null,
  chosen: number,
  today: string
): (evaluation: Evaluation) => void {
  const counted = useRef(0)
  const spoken = useRef<string | null>(null)
  useEffect(() => {
    if (language !== null) {
      spoken.current = language
      return
    }
    // Nobody was there when the kiosk was opened; and who came to an outcome left nothing early.
    if (spoken.current !== null && counted.current === 0) {
      keepCounts(countAbandoned(readCounts(), today, spoken.current))
    }
    spoken.current = null
    counted.current = 0
  }, [language])
  return evaluation => {
    if (language === null || counted.current === chosen) return
    counted.current = chosen
    const standing = toldOfCall(evaluation)
    keepCounts(countOutcome(readCounts(), today, language, subjectOf(evaluation.tree), standing))
  }
}
