import type { Report } from '../report/report.ts'

/** A publication, as the ledger in shared/sources.yaml has it. */
export interface SourceEntry {
  readonly title: string
  readonly publisher: string | null
  /** How its publisher is commonly known. */
  readonly short?: string | undefined
  readonly year: number | null
  readonly address: string | null
  /** Left out where the title alone is shown. */
  readonly kind?:
    | 'publication'
    | 'regulation'
    | 'relayed'
    | 'common-practice'
    | 'own-caution'
    | 'from-memory'
  /** How it came to be known here. */
  readonly checked?: { readonly how: 'read' | 'relayed' | 'memory' }
  /** Which text was read, and what a reviewer should know of it: for reviewers alone. */
  readonly copy?: 'original' | 'copy' | 'none'
  readonly note?: string | undefined
}

export type SourceLedger = Readonly<Record<string, SourceEntry>>
export type CitedSource = SourceEntry & { readonly id: string }

/** Every source behind the advice and the answers that raised a verdict, in the order met, each once. */
export function citedBy(report: Report, ledger: SourceLedger): readonly CitedSource[] {
  const ids = new Set([
    ...(report.advice?.because ?? []),
    ...report.trail.flatMap(({ because, raised }) => (raised.length > 0 ? because : []))
  ])
  return entriesOf([...ids], ledger)
}

/** The entries of some sources; what the ledger does not have is left out. */
export function entriesOf(ids: readonly string[], ledger: SourceLedger): readonly CitedSource[] {
  return ids.flatMap(id => {
    const source = Object.hasOwn(ledger, id) ? ledger[id] : undefined
    return source ? [{ ...source, id }] : []
  })
}

/** A source on one line: title, publisher, year, address. */
export function sourceLine({ title, publisher, year, address }: CitedSource): string {
  const origin = [publisher, year].filter(part => part !== null).join(', ')
  return [title, origin && `(${origin})`, address].filter(Boolean).join(' ')
}
