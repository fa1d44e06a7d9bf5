import type { Observation, Range } from '../src/tree/observation.ts'
import type { Branch, Effect, Question, SignsQuestion } from '../src/tree/tree.ts'
import type { Leads } from './generated-layout.ts'
import type { Pick } from './pick.ts'

/** How many signs stand on a screen. */
export const SIGNS = 8
const NOTHING: Effect = { raise: [], use: 'as-directed', notes: [] }
const NOTES = ['note-a', 'note-b', 'note-c'] as const

function effect(pick: Pick, worry: 'danger' | 'unsure' | 'usual'): Effect {
  if (worry === 'usual')
    return pick.below(4) === 0 ? { ...NOTHING, notes: [pick.from(NOTES)] } : NOTHING
  if (worry === 'unsure') return { raise: ['wait-and-recheck'], use: 'not-yet', notes: [] }
  return {
    raise: [pick.from(['likely-mold', 'discard-and-sanitize'])],
    use: 'never',
    notes: [pick.from(NOTES)]
  }
}

/** A screen of signs: half of them raise a verdict, the others nothing. */
export function signsQuestion(
  id: string,
  { id: asks, about }: Observation,
  next: Branch['leads'],
  tail: Leads,
  pick: Pick
): SignsQuestion {
  const raise =
    about === 'person' ? 'doctor-today' : about === 'container' ? 'pressure-hazard' : 'likely-mold'
  const signs = Object.fromEntries(
    Array.from({ length: SIGNS }, (_, sign) => {
      const yes: Effect = sign < 4 ? { raise: [raise], use: 'never', notes: [] } : NOTHING
      const unsure: Effect = { ...NOTHING, use: sign < 6 ? 'not-yet' : 'as-directed' }
      return [`s${sign}`, { yes, unsure }]
    })
  )
  const turns =
    about === 'batch' ? [{ ...NOTHING, signs: ['s0', 's1'], orUnsure: false, leads: tail() }] : []
  const notes = pick.below(2) === 0 ? [] : [pick.from(NOTES)]
  return {
    id,
    asks,
    kind: 'signs',
    because: [],
    volunteered: false,
    signs,
    turns,
    otherwise: { ...NOTHING, notes, leads: next }
  }
}

/** A choice or a measure. */
export function questionOf(
  id: string,
  observation: Observation,
  leads: Leads,
  tail: Leads,
  pick: Pick
): Question {
  const base = { id, asks: observation.id, because: [] }
  const dangerous = (): Branch => ({
    ...effect(pick, 'danger'),
    leads: pick.below(2) === 0 ? tail() : leads()
  })
  const unsure = (): Branch => ({ ...effect(pick, 'unsure'), leads: leads() })
  const usual = (): Branch => ({ ...effect(pick, 'usual'), leads: leads() })
  if (observation.kind === 'choice') {
    const answers = observation.answers.map(({ id: answer, danger }) => [
      answer,
      danger ? dangerous() : usual()
    ])
    return {
      ...base,
      kind: 'choice',
      answers: { ...Object.fromEntries(answers), unsure: unsure() }
    }
  }
  const limits = pick.below(2) === 0 ? [4] : [4, 7]
  const ranges: Range[] = limits.map((limit, index) =>
    index === 0 ? { atMost: limit } : { over: limits[index - 1] as number, atMost: limit }
  )
  // Made first: what is owed a way may not lie behind a borderline that a count never has.
  const notSure = unsure()
  return {
    ...base,
    kind: 'measure',
    ranges: [
      ...ranges.map(range => ({ ...usual(), range })),
      { ...dangerous(), range: { over: limits.at(-1) as number } }
    ],
    taste: [],
    borderline: unsure(),
    unsure: notSure
  }
}

/** Reads the container's screen again: what it raised already needs no more questions. */
export function gate(
  id: string,
  { id: asks }: Observation,
  next: Branch['leads'],
  tail: Leads
): Question {
  const turn = { ...NOTHING, signs: ['s0', 's1', 's2', 's3'], orUnsure: false, leads: tail() }
  return {
    id,
    asks,
    kind: 'signs',
    because: [],
    volunteered: false,
    signs: {},
    turns: [turn],
    otherwise: { ...NOTHING, leads: next }
  }
}

/** Reads the first choice again: unsure goes its own way. */
export function askedAgain(
  id: string,
  first: Observation,
  next: Branch['leads'],
  tail: Leads
): Question {
  const answers = first.kind === 'choice' ? first.answers.map(answer => answer.id) : []
  return {
    id,
    asks: first.id,
    kind: 'choice',
    because: [],
    answers: {
      ...Object.fromEntries(answers.map(answer => [answer, { ...NOTHING, leads: next }])),
      unsure: { raise: ['wait-and-recheck'], use: 'not-yet', notes: [], leads: tail() }
    }
  }
}

/** Who drank from what is thrown out: the people's screen once more, and the end. */
export function tailQuestion(id: string, { id: asks }: Observation): Question {
  const drank: Effect = { raise: ['poison-help'], use: 'never', notes: ['note-a'] }
  return {
    id,
    asks,
    kind: 'signs',
    because: [],
    volunteered: false,
    signs: {
      s5: { yes: drank, unsure: { ...NOTHING, notes: ['note-a'] } },
      s6: { yes: { ...NOTHING, notes: ['note-a'] }, unsure: NOTHING }
    },
    turns: [],
    otherwise: { ...NOTHING, leads: { end: 'discard-and-sanitize' } }
  }
}
