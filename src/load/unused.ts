import type { Place } from '../findings/place.ts'
import type { Effect, Question, Verdict } from '../tree/tree.ts'
import type { Draft, DraftNote } from './expand.ts'
import type { Linking } from './linking.ts'

/** Reports what a tree asks and has no use for, and danger signs from which nothing follows. */
export function checkUse(
  linking: Linking,
  questions: readonly Question[],
  asked: ReadonlySet<string>,
  draft: Draft
): void {
  const { report, observations } = linking
  for (const observation of asked) {
    const found = observations.get(observation)
    const asking = questions.filter(question => question.asks === observation)
    if (!found || asking.length === 0) continue
    const place = firstAsking(draft, observation)
    if (found.kind === 'signs') {
      const mentioned = new Set(asking.flatMap(mentions))
      for (const { id: sign, danger } of found.signs) {
        if (!mentioned.has(sign)) report.add('sign-unmentioned', place, { observation, sign })
        else if (danger && !asking.some(question => raisesOn(linking, question, sign))) {
          report.add('danger-raises-nothing', place, { observation, sign })
        }
      }
    } else if (found.kind === 'choice') {
      for (const { id: sign, danger } of found.answers) {
        if (danger && !asking.some(question => raisesOn(linking, question, sign))) {
          report.add('danger-raises-nothing', place, { observation, sign })
        }
      }
      const { settles } = found
      if (settles !== undefined && !asked.has(settles)) {
        report.add('settled-never-asked', place, { observation, settles })
      }
    }
  }
  checkAfter(linking, draft.after)
  for (const note of unusedNotes(linking, draft.notes)) {
    report.add('note-unused', note.place([]), { note: note.id })
  }
}

function firstAsking({ questions }: Draft, observation: string): Place | null {
  const first = [...questions.values()].find(({ body }) => body.asks === observation)
  return first?.place(['asks'], 'value') ?? null
}

function checkAfter({ report, observations }: Linking, after: Draft['after']): void {
  for (const { body, place } of after) {
    const observation = observations.get(body.asks)
    if (observation?.kind !== 'signs') continue
    for (const { id: sign } of observation.signs) {
      if (body.signs && Object.hasOwn(body.signs, sign)) continue
      report.add('sign-unmentioned', place([]), { observation: body.asks, sign })
    }
  }
}

function unusedNotes(
  { notesAdded }: Linking,
  notes: ReadonlyMap<string, DraftNote>
): readonly DraftNote[] {
  return [...notes.values()].filter(({ id }) => !notesAdded.has(id))
}

function mentions(question: Question): readonly string[] {
  if (question.kind !== 'signs') return []
  return [...Object.keys(question.signs), ...question.turns.flatMap(({ signs }) => signs)]
}

function raisesOn({ verdicts }: Linking, question: Question, answer: string): boolean {
  const raises = (effect: Effect | undefined): boolean => (effect?.raise.length ?? 0) > 0
  const withholds = (end: string): boolean => isCautious(verdicts.get(end))
  if (question.kind === 'signs') {
    const turns = question.turns.filter(({ signs }) => signs.includes(answer))
    return raises(question.signs[answer]?.yes) || turns.some(raises)
  }
  if (question.kind === 'measure') return false
  const branch = question.answers[answer]
  return raises(branch) || (!!branch && 'end' in branch.leads && withholds(branch.leads.end))
}

const isCautious = (verdict: Verdict | undefined): boolean =>
  verdict !== undefined && verdict.ceiling !== 'as-directed'
