import type { Finding } from '../findings/finding.ts'
import { must } from '../tree/must.ts'
import type { Authored } from './authored.ts'
import { unknownName } from './linking.ts'
import type { FindingReport } from './report.ts'
import type { AuthoredQuestion } from './schemas/question.ts'

interface Copied {
  readonly body: AuthoredQuestion
  /** The question in whose lines a key of the body stands. */
  readonly from: (key: string | number | undefined) => string
}

/** A question with the answers and ways on of the one it is `like`; its own keys win. */
export function likeAnother(
  name: string,
  questions: Readonly<Record<string, AuthoredQuestion>>,
  doc: Authored,
  because: Finding['because'],
  report: FindingReport
): Copied {
  const own = must(questions[name], 'question')
  const { like } = own
  if (like === undefined) return { body: own, from: () => name }
  const place = doc.place(['questions', name, 'like'], 'value')
  const other = Object.hasOwn(questions, like) ? questions[like] : undefined
  if (!other) {
    unknownName(report, 'unknown-question', place, like, Object.keys(questions), because)
    return { body: own, from: () => name }
  }
  if (other.like !== undefined || other.asks !== own.asks) {
    const facts = { question: name, like, other: other.asks, asks: own.asks }
    report.add('like-another-kind', place, facts, because)
    return { body: own, from: () => name }
  }
  // `to` and `end` are one choice: an own one replaces either.
  const { to, end, volunteered: _, ...rest } = other
  const leads = own.to === undefined && own.end === undefined ? { to, end } : {}
  return {
    body: { ...rest, ...leads, ...own },
    from: key => (key === undefined || Object.hasOwn(own, key) ? name : like)
  }
}
