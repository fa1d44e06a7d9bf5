import type { KioskCounts } from './kiosk-counts.ts'

/** What one day at a kiosk came to: numbers, and nothing of any one visitor. */
export interface KioskDay {
  /** Outcomes that visitors came to. */
  readonly finished: number
  /** Of these, verdicts about a person. */
  readonly referred: number
  /** Visits that ended before an outcome. */
  readonly abandoned: number
  /** Visits of either kind, by language tag. */
  readonly languages: Readonly<Record<string, number>>
}

/** The sums of one day, given as YYYY-MM-DD. */
export function dayOf(counts: KioskCounts, date: string): KioskDay {
  const lines = Object.entries(counts)
    .map(([line, count]) => ({ parts: line.split(' '), count }))
    .filter(({ parts }) => parts[0] === date)
  const sum = (last: (part: string | undefined) => boolean) =>
    lines.reduce((total, { parts, count }) => (last(parts.at(-1)) ? total + count : total), 0)
  const languages: Record<string, number> = {}
  for (const { parts, count } of lines) {
    const tag = parts[1] ?? ''
    languages[tag] = (languages[tag] ?? 0) + count
  }
  return {
    finished: sum(part => part !== 'abandoned'),
    referred: sum(part => part === 'referred'),
    abandoned: sum(part => part === 'abandoned'),
    languages
  }
}
