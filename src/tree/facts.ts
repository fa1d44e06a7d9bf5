import { type Answer, type Answers, type Interval, isInterval } from './answers.ts'
import { level, useLevel } from './caution.ts'
import { type Observation, TRACKS } from './observation.ts'
import { type AtLeast, possible } from './possible.ts'
import { rounded } from './range.ts'
import { tell } from './tell.ts'
import type { Tree } from './tree.ts'

/** One thing told in a call: of a screen of signs only those named. */
export interface Fact {
  readonly observation: string
  readonly answer: Answer
}

/** What a call comes to: its answers, and where it contradicts itself. */
export interface Call {
  readonly answers: Answers
  readonly contradictions: readonly Contradiction[]
}

/** Facts that cannot all be so, and the one that counts: the more cautious. */
export interface Contradiction {
  readonly observation: string
  /** The sign they are about; null where they are about the whole observation. */
  readonly sign: string | null
  readonly told: readonly Answer[]
  readonly counts: Answer
}

/**
 * The answers of facts told in any order. Of two answers to a choice and of two to a sign the more
 * worrying counts. Of two readings that one counts which leaves the more cautious outcome possible;
 * where neither does, all that they span: what nobody is sure of is not a pass.
 */
export function callOf(tree: Tree, facts: readonly Fact[]): Call {
  const contradictions: Contradiction[] = []
  let answers: Answers = {}
  const readings = new Map<string, Interval[]>()
  for (const { observation: id, answer } of facts) {
    const observation = tree.observations[id]
    if (observation === undefined) continue
    if (isInterval(answer)) readings.set(id, [...(readings.get(id) ?? []), answer])
    else answers = tell(answers, observation, answer)
  }
  for (const observation of Object.values(tree.observations)) {
    const told = facts.filter(fact => fact.observation === observation.id)
    contradictions.push(...contradicted(observation, told, answers))
  }
  const doubtful = new Map<string, readonly Interval[]>()
  for (const id of Object.keys(tree.observations)) {
    const [only, ...others] = distinct(readings.get(id) ?? [])
    if (only === undefined) continue
    if (others.length === 0) answers = { ...answers, [id]: only }
    else doubtful.set(id, [only, ...others])
  }
  const counts = mostCautious(tree, answers, doubtful)
  for (const [id, told] of doubtful) {
    contradictions.push({ observation: id, sign: null, told, counts: counts[id] as Interval })
  }
  return { answers: { ...answers, ...counts }, contradictions }
}

function contradicted(
  { id, kind }: Observation,
  facts: readonly Fact[],
  answers: Answers
): Contradiction[] {
  const counts = answers[id]
  if (counts === undefined || kind === 'measure') return []
  if (kind === 'choice') {
    const told = [...new Set(facts.map(({ answer }) => answer))]
    return told.length > 1 ? [{ observation: id, sign: null, told, counts }] : []
  }
  const values = new Map<string, Set<string>>()
  for (const [sign, value] of facts.flatMap(({ answer }) => Object.entries(answer))) {
    values.set(sign, (values.get(sign) ?? new Set()).add(value))
  }
  return [...values].flatMap(([sign, told]) =>
    told.size > 1
      ? [{ observation: id, sign, told: [...told], counts: valueFor(counts, sign) }]
      : []
  )
}

const valueFor = (answer: Answer, sign: string): string =>
  typeof answer === 'object' && !isInterval(answer) ? (answer[sign] ?? '') : ''

function distinct(readings: readonly Interval[]): readonly Interval[] {
  const keys = new Map(readings.map(one => [`${one.low} ${one.reading} ${one.high}`, one]))
  return [...keys.values()].sort((a, b) => a.reading - b.reading || a.low - b.low)
}

/** Everything that some readings span, with its middle. */
function span(readings: readonly Interval[]): Interval {
  const low = Math.min(...readings.map(reading => reading.low))
  const high = Math.max(...readings.map(reading => reading.high))
  return { low, reading: rounded((low + high) / 2), high }
}

/** Of every way to take doubtful readings, each as told or all that they span, the most cautious. */
function mostCautious(
  tree: Tree,
  answers: Answers,
  doubtful: ReadonlyMap<string, readonly Interval[]>
): Answers {
  let ways: readonly Answers[] = [{}]
  for (const [id, told] of doubtful) {
    ways = ways.flatMap(way => [span(told), ...told].map(reading => ({ ...way, [id]: reading })))
  }
  let [worst = {}] = ways
  for (const way of ways.slice(1)) {
    const least = (readings: Answers) => possible(tree, { ...answers, ...readings }).atLeast
    if (isWorse(tree, least(way), least(worst))) worst = way
  }
  return worst
}

/** Whether an outcome is worse: by the person, then the container, then the batch, then the use. */
function isWorse(tree: Tree, a: AtLeast, b: AtLeast): boolean {
  for (const track of TRACKS) {
    const difference = level(tree, track, a[track]) - level(tree, track, b[track])
    if (difference !== 0) return difference > 0
  }
  return useLevel(a.use) > useLevel(b.use)
}
