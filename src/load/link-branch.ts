import type { Branch, Destination, Effect } from '../tree/tree.ts'
import type { Keys } from './authored.ts'
import type { DraftQuestion } from './expand.ts'
import { type Linking, unknownName } from './linking.ts'
import { listed } from './schemas/common.ts'
import type { AuthoredBranch, AuthoredEffect } from './schemas/question.ts'

/** An effect with its verdicts and notes checked. */
export function linkEffect(
  linking: Linking,
  draft: DraftQuestion,
  authored: AuthoredEffect,
  keys: Keys
): Effect {
  const { report, verdicts, notes } = linking
  const raise = listed(authored.raise)
  raise.forEach((id, index) => {
    if (verdicts.has(id)) return
    const place = draft.place([...keys, 'raise', index], 'value')
    unknownName(report, 'unknown-verdict', place, id, verdicts.keys(), draft.because)
  })
  const added = listed(authored.note)
  added.forEach((id, index) => {
    linking.notesAdded.add(id)
    if (notes.has(id)) return
    const place = draft.place([...keys, 'note', index], 'value')
    unknownName(report, 'unknown-note', place, id, notes, draft.because)
  })
  return { raise, use: authored.use ?? 'as-directed', notes: added }
}

/** An effect and where it leads; `answer` names it in what is said of it. */
export function linkBranch(
  linking: Linking,
  draft: DraftQuestion,
  authored: AuthoredBranch,
  keys: Keys,
  answer: string
): Branch {
  const effect = linkEffect(linking, draft, authored, keys)
  return { ...effect, leads: linkLeads(linking, draft, authored, keys, answer) }
}

/** Where an answer leads. */
export function linkLeads(
  { report, verdicts }: Linking,
  draft: DraftQuestion,
  { to, end }: AuthoredBranch,
  keys: Keys,
  answer: string
): Destination {
  const facts = { question: draft.id, answer }
  if (to !== undefined && end !== undefined) {
    report.add('two-destinations', draft.place(keys), facts, draft.because)
  } else if (to !== undefined) {
    const lead = draft.leads.get(to)
    if (lead !== undefined) return { to: lead }
    const place = draft.place([...keys, 'to'], 'value')
    unknownName(report, 'unknown-question', place, to, draft.leads.keys(), draft.because)
  } else if (end !== undefined) {
    const place = draft.place([...keys, 'end'], 'value')
    const verdict = verdicts.get(end)
    if (!verdict) {
      const batch = [...verdicts.values()].filter(({ track }) => track === 'batch')
      const near = report.near(
        end,
        batch.map(({ id }) => id)
      )
      report.add('unknown-verdict', place, { name: end, near }, draft.because)
    } else if (verdict.track !== 'batch') {
      report.add('end-not-batch', place, { verdict: end, track: verdict.track }, draft.because)
    }
    return { end }
  } else report.add('leads-nowhere', draft.place(keys), facts, draft.because)
  return { to: '' }
}
