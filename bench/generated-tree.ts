import type { Observation, Range } from '../src/tree/observation.ts'
import type { Branch, Effect, Question, SignsQuestion, Tree } from '../src/tree/tree.ts'
import { VERDICTS } from '../tests/helpers/verdicts.ts'
import { generatedRules } from './generated-rules.ts'
import { type Pick, picks } from './pick.ts'

/** How large a generated tree is, and whether it has the shape of a real one. */
export interface Size {
  readonly questions: number
  readonly observations: number
  readonly seed?: number
  /** No order between observations, every one read again anywhere. */
  readonly hostile?: boolean
}

const SIGNS = 8
const NOTHING: Effect = { raise: [], use: 'as-directed', notes: [] }

/**
 * A tree in the shape of the shipped one: screens of signs first, each asked of everybody; then choices
 * and measures, spread over more and more questions; a twentieth of the questions are gates that read a
 * screen again, a twentieth ask again silently what the first choice was, and a twentieth are tails that
 * read the people's screen again and end. @throws RangeError when the questions cannot ask so much.
 */
export function generatedTree(size: Size): Tree {
  const pick = picks(size.seed ?? 1)
  const observations = observationsOf(size.observations)
  const made = size.hostile ? hostile(size, observations, pick) : shaped(size, observations, pick)
  const tree: Tree = {
    id: 'generated',
    edition: 1,
    review: { state: 'draft', by: [], reviewed: null, due: '2027-11-01' },
    verdicts: VERDICTS,
    observations: Object.fromEntries(observations.map(one => [one.id, one])),
    start: 'q0',
    questions: Object.fromEntries(made.map(question => [question.id, question])),
    after: [],
    rules: [],
    advice: {
      verdicts: {},
      notes: {},
      whileIll: { drops: [], adds: [], atADistance: [], touching: [], refer: [] },
      unsureNote: {}
    },
    fingerprint: '',
    wordsFingerprint: ''
  }
  return { ...tree, rules: generatedRules(tree, pick) }
}

/** A fifth are screens of signs, at least three; of the rest two thirds choices, one third measures. */
function observationsOf(count: number): readonly Observation[] {
  const screens = Math.max(3, Math.round(count / 5))
  return Array.from({ length: count }, (_, at): Observation => {
    const id = `o${at}`
    if (at < screens) {
      const about = at === 0 ? 'person' : at === 1 ? 'container' : 'batch'
      const signs = Array.from({ length: SIGNS }, (_, sign) => ({
        id: `s${sign}`,
        danger: sign < 2,
        volunteered: at === 2 && sign === SIGNS - 1
      }))
      return { kind: 'signs', id, about, signs }
    }
    if (at % 3 === 2) {
      const instruments = at % 2 === 0 ? [] : [{ id: 'meter', plusMinus: 0.05 }]
      const span = { from: 0, to: 14 }
      const unit = instruments.length === 0 ? 'day' : 'ph'
      return { kind: 'measure', id, about: 'batch', unit, instruments, span, usual: { atMost: 4 } }
    }
    const answers = Array.from({ length: 4 + (at % 4) }, (_, answer) => ({
      id: `a${answer}`,
      danger: answer === 0,
      usual: answer >= 2
    }))
    return { kind: 'choice', id, about: 'batch', answers }
  })
}

type Leads = () => Branch['leads']

function shaped({ questions }: Size, observations: readonly Observation[], pick: Pick): Question[] {
  const screens = observations.filter(({ kind }) => kind === 'signs')
  const body = observations.slice(screens.length)
  const some = Math.max(1, Math.floor(questions / 20))
  const layers = layersOf(body.length, questions - screens.length - 3 * some)
  const names = namesOf(screens.length, layers, some)
  const first = body.find(({ kind }) => kind === 'choice') as Observation
  const tail = (): Branch['leads'] => ({ to: pick.from(names.tails) })
  const made: Question[] = screens.map((screen, at) => {
    const next = names.all[at + 1] as string
    return signsQuestion(names.all[at] as string, screen, { to: next }, tail, pick)
  })
  for (const [depth, layer] of names.layers.entries()) {
    for (const [column, id] of layer.entries()) {
      let turn = 0
      const leads: Leads = () => onward(names, depth, column, turn++, pick, tail)
      made.push(questionOf(id, body[depth] as Observation, leads, tail, pick))
    }
  }
  for (const [at, id] of names.gates.entries()) {
    made.push(gate(id, screens[1] as Observation, { to: names.afterGate[at] as string }, tail))
  }
  for (const [at, id] of names.again.entries()) {
    made.push(askedAgain(id, first, { to: names.afterAgain[at] as string }, tail))
  }
  for (const id of names.tails) made.push(tailQuestion(id, screens[0] as Observation))
  return made
}

/** How many questions ask each observation of the body: one the first, at most twice as many each next. */
function layersOf(depth: number, budget: number): readonly number[] {
  const widths = (cap: number) => {
    let width = 1
    return Array.from({ length: depth }, (_, at) => {
      width = at === 0 ? 1 : Math.min(cap, width * 2)
      return width
    })
  }
  const sum = (all: readonly number[]) => all.reduce((total, one) => total + one, 0)
  if (budget < depth) throw new RangeError(`${budget} questions cannot ask ${depth} observations`)
  let cap = 1
  while (sum(widths(cap + 1)) <= budget && cap < budget) cap++
  const made = [...widths(cap)]
  // What is left over widens the last layers, one by one and round again.
  const widest = made.filter(width => width < cap).length
  for (let left = budget - sum(made), at = depth - 1; left > 0; left--, at--) {
    if (at <= widest) at = depth - 1
    made[at] = (made[at] as number) + 1
  }
  return made
}

interface Names {
  readonly all: readonly string[]
  readonly layers: readonly (readonly string[])[]
  readonly gates: readonly string[]
  readonly again: readonly string[]
  readonly tails: readonly string[]
  /** Where the gates and the questions asked again lead when nothing is wrong, in a row over the body. */
  readonly afterGate: readonly string[]
  readonly afterAgain: readonly string[]
  /** Body questions whose usual way leads through a gate or a question asked again. */
  readonly through: ReadonlyMap<string, string>
}

function namesOf(screens: number, widths: readonly number[], some: number): Names {
  let next = 0
  const take = (count: number) => Array.from({ length: count }, () => `q${next++}`)
  const first = take(screens)
  const layers = widths.map(take)
  const [gates, again, tails] = [take(some), take(some), take(some)]
  // From the second layer to the last but one, spread evenly.
  const inner = layers.slice(2).flat()
  const spread = (count: number, shift: number) =>
    Array.from(
      { length: count },
      (_, at) =>
        inner[Math.floor(((at + shift) * inner.length) / (count + 1)) % inner.length] as string
    )
  const [afterGate, afterAgain] = [spread(some, 0.4), spread(some, 0.8)]
  const through = new Map<string, string>()
  for (const [at, to] of afterGate.entries()) through.set(to, gates[at] as string)
  for (const [at, to] of afterAgain.entries()) {
    if (!through.has(to)) through.set(to, again[at] as string)
  }
  return {
    all: [...first, ...layers.flat()],
    layers,
    gates,
    again,
    tails,
    afterGate,
    afterAgain,
    through
  }
}

/** The usual way on: to the next layer, a few times further; now and then to an end. */
function onward(
  { layers, through }: Names,
  depth: number,
  column: number,
  turn: number,
  pick: Pick,
  tail: Leads
): Branch['leads'] {
  const here = layers[depth] as readonly string[]
  const below = layers[depth + 1]
  if (below === undefined) return turn === 0 ? tail() : { end: pick.from(GENTLE_ENDS) }
  const wanted =
    below.length > here.length ? column * Math.ceil(below.length / here.length) + turn : column
  // Each question of the next layer is led to by one above it, whatever else is picked.
  const owed = turn < Math.ceil(below.length / here.length) && wanted < below.length
  const further = layers[depth + 1 + pick.below(3)] ?? below
  const to = owed ? (below[wanted] as string) : pick.from(further)
  return { to: through.get(to) ?? to }
}

const GENTLE_ENDS = ['normal-growth', 'normal-growth', 'wait-and-recheck'] as const
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

function signsQuestion(
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

function questionOf(
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
  const ranges: Range[] = limits.map((at, index) =>
    index === 0 ? { atMost: at } : { over: limits[index - 1] as number, atMost: at }
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
function gate(id: string, { id: asks }: Observation, next: Branch['leads'], tail: Leads): Question {
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
function askedAgain(id: string, first: Observation, next: Branch['leads'], tail: Leads): Question {
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
function tailQuestion(id: string, { id: asks }: Observation): Question {
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

/** Every question asks anything, and leads to any of the next twenty. */
function hostile(
  { questions }: Size,
  observations: readonly Observation[],
  pick: Pick
): Question[] {
  return Array.from({ length: questions }, (_, at) => {
    let turn = 0
    const leads: Leads = () =>
      at === questions - 1
        ? { end: pick.from(GENTLE_ENDS) }
        : { to: `q${Math.min(questions - 1, at + 1 + (turn++ === 0 ? 0 : pick.below(20)))}` }
    const observation = pick.from(observations)
    return observation.kind === 'signs'
      ? signsQuestion(`q${at}`, observation, leads(), leads, pick)
      : questionOf(`q${at}`, observation, leads, leads, pick)
  })
}
