import { coverage, isEmpty } from '../tree/coverage.ts'
import type { MeasureObservation, Range } from '../tree/observation.ts'
import type { MeasureQuestion } from '../tree/tree.ts'
import { rangeOf } from './build-observations.ts'
import type { DraftQuestion } from './expand.ts'
import { linkBranch, linkEffect } from './link-branch.ts'
import type { Linking } from './linking.ts'

/** The ranges of a measure's question, held to cover its line once. */
export function linkMeasure(
  linking: Linking,
  draft: DraftQuestion,
  observation: MeasureObservation
): Omit<MeasureQuestion, 'id' | 'asks' | 'because' | 'kind'> {
  const { report } = linking
  const { body, because } = draft
  const facts = { question: draft.id, asks: observation.id }
  const ranges = (body.ranges ?? []).map((authored, index) => {
    const branch = linkBranch(linking, draft, authored, ['ranges', index], `range ${index + 1}`)
    return { range: rangeOf(authored), ...branch }
  })
  const taste = (body.taste ?? []).map((authored, index) => ({
    range: rangeOf(authored),
    ...linkEffect(linking, draft, authored, ['taste', index])
  }))
  const checkEmpty = (place: string) => (range: Range, index: number) => {
    if (!isEmpty(range, observation.span)) return false
    const { from, to } = observation.span
    report.add('range-empty', draft.place([place, index]), { ...facts, from, to }, because)
    return true
  }
  taste.map(({ range }) => range).forEach(checkEmpty('taste'))
  const lines = ranges.map(({ range }) => range)
  const empty = lines.map(checkEmpty('ranges'))
  if (lines.length === 0) {
    const wants = 'with the parts of its line'
    report.add('missing-key', draft.place([]), { key: 'ranges', group: draft.id, wants }, because)
  } else if (!empty.includes(true)) {
    const { gaps, overlaps } = coverage(lines)
    for (const { index, words } of gaps) {
      report.add('range-gap', draft.place(['ranges', index]), { ...facts, gap: words }, because)
    }
    for (const { index, words } of overlaps) {
      report.add(
        'range-overlap',
        draft.place(['ranges', index]),
        { ...facts, both: words },
        because
      )
    }
  }
  if (!body.unsure) report.add('missing-unsure', draft.place([]), facts, because)
  const unsure = linkBranch(linking, draft, body.unsure ?? { to: '' }, ['unsure'], 'unsure')
  const borderline = body.borderline
    ? linkBranch(linking, draft, body.borderline, ['borderline'], 'borderline')
    : unsure
  return { ranges, taste, borderline, unsure, ...(body.volunteered && { volunteered: true }) }
}
