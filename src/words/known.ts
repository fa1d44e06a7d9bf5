import type { Report } from '../report/report.ts'
import { type CitedSource, entriesOf, type SourceEntry, type SourceLedger } from './sources.ts'
import type { Words } from './words.ts'

/** What a sentence of the guidance rests on, the firmest first. */
export const GROUNDS = ['published', 'relayed', 'common-practice', 'own-caution', 'memory'] as const
export type Ground = (typeof GROUNDS)[number]

/** What a source is good for: a text that somebody here read counts as published, one known through others as relayed. */
export function groundOf({ kind, checked }: Pick<SourceEntry, 'kind' | 'checked'>): Ground {
  if (kind === 'common-practice' || kind === 'own-caution') return kind
  // What nobody noted a ground for is no firmer than memory.
  if (kind === undefined || kind === 'from-memory' || checked?.how !== 'read') {
    return checked?.how === 'relayed' ? 'relayed' : 'memory'
  }
  return kind === 'relayed' ? 'relayed' : 'published'
}

/**
 * How sure the guidance behind an outcome is: what the verdict rests on and what the steps rest on, the
 * firmest ground first; then what is not known. Nothing is claimed that the cited sources do not carry.
 */
export function knownLines(report: Report, ledger: SourceLedger, words: Words): readonly string[] {
  const raising = report.trail.flatMap(({ because, raised }) => (raised.length > 0 ? because : []))
  const of = (ids: readonly string[]) => {
    const found = new Set(entriesOf([...new Set(ids)], ledger).map(groundOf))
    return GROUNDS.filter(ground => found.has(ground))
  }
  const verdict = of(raising)
  const steps = of(report.advice?.because ?? [])
  const all = GROUNDS.filter(ground => verdict.includes(ground) || steps.includes(ground))
  const list = new Intl.ListFormat(words.tag, { type: 'conjunction' })
  const line = (key: 'verdict' | 'steps', grounds: readonly Ground[]) =>
    grounds.length === 0
      ? []
      : [
          words.t(`ui:known.${key}`, {
            grounds: list.format(grounds.map(ground => words.t(`ui:known.ground.${ground}`)))
          })
        ]
  const doubts = all.flatMap(ground =>
    ground === 'published' ? [] : [words.t(`ui:known.doubt.${ground}`)]
  )
  return [...line('verdict', verdict), ...line('steps', steps), ...doubts]
}

/** Sources for paper, where room is short: each publisher once, then what stands in no publication. */
export function sourcesInBrief(sources: readonly CitedSource[], words: Words): string {
  const names = sources.map(source => {
    const { short, publisher, title } = source
    const ground = groundOf(source)
    const isPrinted = ground === 'published' || ground === 'relayed'
    return {
      isPrinted,
      name: isPrinted ? (short ?? publisher ?? title) : words.t(`ui:known.ground.${ground}`)
    }
  })
  const inOrder = [
    ...names.filter(each => each.isPrinted),
    ...names.filter(each => !each.isPrinted)
  ]
  return [...new Set(inOrder.map(({ name }) => name))].join(' · ')
}
