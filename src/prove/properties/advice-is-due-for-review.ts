import type { Review } from '../../tree/tree.ts'
import { found } from '../found.ts'
import type { Property } from '../property.ts'
import { standing } from '../proved.ts'

const MONTHS = 24

/**
 * The advice has a day on which its review is due: after the day of the last review, and at most 24
 * months later. It is about the file: that a review is overdue is said when the advice is given.
 */
export const adviceIsDueForReview: Property = {
  id: 'advice-is-due-for-review',
  kind: 'shape',
  needsWalks: false,
  prove({ tree: { review } }, places) {
    const wants = wanted(review)
    if (wants === null) return standing(this.id, this.kind, [[]])
    const place = places['review/due'] ?? places.review
    const { state, due, reviewed } = review
    const facts = { state, due, reviewed: reviewed ?? '', wants }
    return standing(this.id, this.kind, [[found('review-day-unfit', place, facts)]])
  }
}

/** What is meant in place of what the file says, or null where that is right. */
function wanted({ state, due, reviewed }: Review): string | null {
  const isDay = (day: string) => !Number.isNaN(Date.parse(`${day}T00:00:00Z`))
  if (!isDay(due)) return 'a day on which the review is due'
  if (reviewed === null) {
    return state === 'signed' ? 'the day of the review, since the tree is signed' : null
  }
  if (!isDay(reviewed)) return 'the day of the review'
  // Days written as year-month-day sort as text.
  if (due <= reviewed) return `a day after the review of ${reviewed}`
  const latest = later(reviewed, MONTHS)
  return due > latest ? `a day at most ${MONTHS} months after the review, by ${latest}` : null
}

/** The same day so many months later; of a month that has no such day, its last. */
function later(day: string, months: number): string {
  const [year = 0, month = 1, date = 1] = day.split('-').map(Number)
  const last = new Date(Date.UTC(year, month + months, 0)).getUTCDate()
  return new Date(Date.UTC(year, month - 1 + months, Math.min(date, last)))
    .toISOString()
    .slice(0, 10)
}
