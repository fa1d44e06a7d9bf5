import { type Attempt, lineOfAttempt, readAttempt } from '../../../practice/attempt.ts'
import { eachOnce } from '../../../practice/score.ts'
import type { Verdict } from '../../../tree/tree.ts'

const KEY = 'jarside-practice-calls'

/** The practice calls of this browser, as far as they can be read; none where it keeps nothing. */
export function keptAttempts(verdicts: readonly Verdict[]): readonly Attempt[] {
  try {
    const lines = (localStorage.getItem(KEY) ?? '').split('\n').filter(line => line !== '')
    return eachOnce(
      lines.flatMap(line => {
        const read = readAttempt(line, verdicts)
        return 'attempt' in read ? [read.attempt] : []
      })
    )
  } catch {
    return []
  }
}

/** Keeps a practice call beside the others; false where the browser is full or keeps nothing. */
export function keepAttempt(attempt: Attempt): boolean {
  try {
    localStorage.setItem(KEY, `${localStorage.getItem(KEY) ?? ''}${lineOfAttempt(attempt)}\n`)
    return true
  } catch {
    return false
  }
}

export function eraseAttempts(): void {
  try {
    localStorage.removeItem(KEY)
  } catch {
    // Nothing was kept.
  }
}
