import { useEffect, useState } from 'preact/hooks'
import type { LogEntry } from '../../contacts/contact.ts'
import type { DaySpan } from '../../contacts/day-span.ts'
import { type LogReport, reportOnLog } from '../../contacts/log-report.ts'
import type { Versions } from '../../contacts/log-store.ts'
import { notSaved, type WhyNotSaved } from '../../contacts/not-saved.ts'
import { keptFrom } from '../../contacts/retention.ts'
import type { LogInHand } from '../../parts/use-contact-log.ts'

/** What the page shows of the log. */
export interface LogView {
  readonly span: DaySpan
  readonly entries: readonly LogEntry[]
  readonly report: LogReport
  readonly edits: readonly Versions[]
  /** The first day of which single records are kept; null where all are. */
  readonly keptFrom: string | null
}

/** Reads a span of the log, and again whenever `changes` changes. Null until it has been read. */
export function useLogView(
  log: LogInHand,
  span: DaySpan,
  today: string,
  keepMonths: number | null,
  changes: number
): { readonly view: LogView | null; readonly fault: WhyNotSaved | null } {
  const [view, setView] = useState<LogView | null>(null)
  const [fault, setFault] = useState<WhyNotSaved | null>(null)
  useEffect(() => {
    let wanted = true
    const read = async () => {
      const store = await log.open()
      const first = keptFrom(today, keepMonths)
      if (first !== null) await store.foldBefore(first)
      const [entries, sums, edits] = await Promise.all([
        store.entriesIn(span),
        store.sums(),
        store.edits()
      ])
      const months = sums.map(({ report }) => report)
      const report = reportOnLog(entries, span, months)
      if (wanted) setView({ span, entries, report, edits, keptFrom: first })
      if (wanted) setFault(null)
    }
    read().catch(error => wanted && setFault(notSaved(error).why))
    return () => {
      wanted = false
    }
  }, [span.from, span.until, today, keepMonths, changes])
  return { view, fault }
}
