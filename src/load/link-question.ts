import type { ChoiceObservation, SignsObservation } from '../tree/observation.ts'
import type { ChoiceQuestion, Question, SignsQuestion } from '../tree/tree.ts'
import type { DraftQuestion } from './expand.ts'
import { KIND_WORDS } from './kind-words.ts'
import { linkBranch, linkEffect } from './link-branch.ts'
import { linkMeasure } from './link-measure.ts'
import { type Linking, linkSources, unknownName } from './linking.ts'
import { listed } from './schemas/common.ts'

/** A question put after the outcome. It leads nowhere: the gentlest end on the batch stands in. */
export function linkAfter(linking: Linking, draft: DraftQuestion): Question | null {
  const gentlest = [...linking.verdicts.values()].find(({ track }) => track === 'batch')?.id ?? ''
  const end = <T extends object>(branch: T): T & { end: string } => ({ ...branch, end: gentlest })
  const { answers, ranges, borderline, unsure, ...rest } = draft.body
  const signs = linking.observations.get(draft.body.asks)?.kind === 'signs'
  const body = {
    ...rest,
    ...(answers && { answers: mapped(answers, end) }),
    ...(ranges && { ranges: ranges.map(end) }),
    ...(borderline && { borderline: end(borderline) }),
    ...(unsure && { unsure: end(unsure) }),
    ...(signs && { end: gentlest })
  }
  return linkQuestion(linking, { ...draft, body })
}

const mapped = <T, U>(group: Readonly<Record<string, T>>, to: (value: T) => U): Record<string, U> =>
  Object.fromEntries(Object.entries(group).map(([key, value]) => [key, to(value)]))

const ALWAYS = ['asks', 'because', 'like', 'only-here']
const KEYS = {
  choice: ['answers'],
  signs: ['signs', 'unsure', 'branch', 'to', 'end', 'instead', 'volunteered'],
  measure: ['ranges', 'borderline', 'taste', 'unsure', 'volunteered']
}

/** A question with its names checked and what it leaves out made plain. Null if it asks nothing known. */
export function linkQuestion(linking: Linking, draft: DraftQuestion): Question | null {
  const { body, because } = draft
  const { report, observations } = linking
  const cited = listed(body.because)
  linkSources(linking, cited, index => draft.place(['because', index], 'value'), because)
  const observation = observations.get(body.asks)
  if (!observation) {
    const place = draft.place(['asks'], 'value')
    unknownName(report, 'unknown-observation', place, body.asks, observations.keys(), because)
    return null
  }
  const fitting = KEYS[observation.kind]
  for (const [key, value] of Object.entries(body)) {
    if (value === undefined || ALWAYS.includes(key) || fitting.includes(key)) continue
    const kind = KIND_WORDS[observation.kind]
    const facts = { question: draft.id, asks: body.asks, kind, key, known: fitting }
    report.add('key-not-for-kind', draft.place([key]), facts, because)
  }
  const base = {
    id: draft.id,
    asks: body.asks,
    because: cited,
    ...(body['only-here'] === true && { onlyHere: true })
  }
  switch (observation.kind) {
    case 'choice':
      return { ...base, kind: 'choice', answers: linkAnswers(linking, draft, observation) }
    case 'signs':
      return { ...base, kind: 'signs', ...linkSigns(linking, draft, observation) }
    case 'measure':
      return {
        ...base,
        kind: 'measure',
        ...linkMeasure(linking, draft, observation)
      }
  }
}

function linkAnswers(
  linking: Linking,
  draft: DraftQuestion,
  observation: ChoiceObservation
): ChoiceQuestion['answers'] {
  const { report } = linking
  const authored = draft.body.answers ?? {}
  const facts = { question: draft.id, asks: draft.body.asks }
  const settles = observation.settles
  const names = settles === undefined ? observation.answers.map(({ id }) => id) : []
  for (const answer of Object.keys(authored)) {
    const serves = answer === 'others' && settles === undefined
    if (answer === 'unsure' || serves || names.includes(answer)) continue
    const place = draft.place(['answers', answer])
    if (settles !== undefined && observation.answers.some(({ id }) => id === answer)) {
      report.add('settling-answer-listed', place, { ...facts, answer, settles }, draft.because)
    } else unknownName(report, 'unknown-answer', place, answer, names, draft.because)
  }
  const left = names.filter(answer => !Object.hasOwn(authored, answer))
  // A misspelt answer is reported itself: that the right one is missing says nothing more.
  const misspelt = Object.keys(authored).filter(
    answer => answer !== 'unsure' && answer !== 'others' && !names.includes(answer)
  )
  if (left.length > misspelt.length && !authored.others) {
    report.add(
      'missing-answer',
      draft.place(['answers']),
      { ...facts, answers: left },
      draft.because
    )
  }
  if (!authored.unsure) report.add('missing-unsure', draft.place([]), facts, draft.because)
  const linked = new Map(
    Object.entries(authored).map(([answer, branch]) => [
      answer,
      linkBranch(linking, draft, branch, ['answers', answer], answer)
    ])
  )
  return Object.fromEntries(
    [...names, 'unsure'].flatMap(answer => {
      const branch = linked.get(answer) ?? (answer === 'unsure' ? undefined : linked.get('others'))
      return branch ? [[answer, branch]] : []
    })
  )
}

function linkSigns(
  linking: Linking,
  draft: DraftQuestion,
  observation: SignsObservation
): Omit<SignsQuestion, 'id' | 'asks' | 'because' | 'kind'> {
  const { report } = linking
  const { body, because } = draft
  const names = observation.signs.map(({ id }) => id)
  const isKnown = (sign: string, keys: readonly (string | number)[]): boolean => {
    if (names.includes(sign)) return true
    unknownName(report, 'unknown-sign', draft.place(keys, 'value'), sign, names, because)
    return false
  }
  const unsure = body.unsure && linkEffect(linking, draft, body.unsure, ['unsure'])
  const signs = Object.entries(body.signs ?? {}).flatMap(([sign, authored]) => {
    const keys = ['signs', sign]
    const yes = linkEffect(linking, draft, authored, keys)
    const own = authored.unsure && linkEffect(linking, draft, authored.unsure, [...keys, 'unsure'])
    const doubt = own ?? unsure
    if (!isKnown(sign, keys)) return []
    if (doubt) return [[sign, { yes, unsure: doubt }] as const]
    report.add('missing-unsure', draft.place(keys), { question: draft.id, sign }, because)
    return []
  })
  const turns = (body.branch ?? []).map((turn, index) => {
    for (const [place, sign] of turn.signs.entries())
      isKnown(sign, ['branch', index, 'signs', place])
    const branch = linkBranch(linking, draft, turn, ['branch', index], turn.signs.join(', '))
    return { signs: turn.signs, orUnsure: turn['or-unsure'] ?? false, ...branch }
  })
  const { to, end } = body
  const otherwise = linkBranch(
    linking,
    draft,
    draft.reads?.none ?? { to, end },
    [],
    'none of these'
  )
  return {
    volunteered: body.volunteered ?? false,
    signs: Object.fromEntries(signs),
    turns,
    otherwise
  }
}
