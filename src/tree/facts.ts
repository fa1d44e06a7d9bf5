import { type Answer, type Answers, type Interval, isInterval } from './answers.ts'
import { level, useLevel } from './caution.ts'
import { rank } from './effective.ts'
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
 * worrying counts. Of two readings, and of "not sure" beside something told, that one counts which
 * leaves the more cautious outcome possible; of readings also all that they span together: what nobody
 * is sure of is not a pass.
 */
export function callOf(tree: Tree, facts: readonly Fact[]): Call {
  const contradictions: Contradiction[] = []
  let answers: Answers = {}
  const doubtful = new Map<string, readonly [Answer, ...Answer[]]>()
  for (const observation of Object.values(tree.observations)) {
    const told = facts.filter(fact => fact.observation === observation.id)
    if (told.length === 0) continue
    if (observation.kind === 'signs') {
      for (const { answer } of told) answers = tell(answers, observation, answer)
      contradictions.push(...signsContradicted(observation.id, told, answers))
      continue
    }
    const ways = waysToTake(observation, told)
    if (ways.length === 1) answers = { ...answers, [observation.id]: ways[0] }
    else doubtful.set(observation.id, ways)
  }
  const counts = mostCautious(tree, answers, doubtful)
  for (const [id, ways] of doubtful) {
    const told = distinct(facts.filter(({ observation }) => observation === id))
    contradictions.push({ observation: id, sign: null, told, counts: counts[id] ?? ways[0] })
  }
  return { answers: { ...answers, ...counts }, contradictions }
}

/** Every answer that could be meant by what was told of a choice or a measure; one where all agree. */
function waysToTake(
  observation: Observation,
  told: readonly Fact[]
): readonly [Answer, ...Answer[]] {
  const all =
    observation.kind === 'choice'
      ? // The more worrying first: of equals it counts.
        [...distinct(told)].sort(
          (a, b) => rank(observation, a as string) - rank(observation, b as string)
        )
      : distinct(told)
  const [first, ...others] = all
  if (first === undefined) throw new Error(`nothing was told of ${observation.id}`)
  if (others.length === 0) return [first]
  const readings = all.filter(isInterval)
  return readings.length > 1 ? [span(readings), first, ...others] : [first, ...others]
}

function signsContradicted(
  observation: string,
  facts: readonly Fact[],
  answers: Answers
): Contradiction[] {
  const values = new Map<string, Set<string>>()
  for (const [sign, value] of facts.flatMap(({ answer }) => Object.entries(answer))) {
    values.set(sign, (values.get(sign) ?? new Set()).add(value))
  }
  const counts = answers[observation]
  return [...values].flatMap(([sign, told]) =>
    told.size > 1 && counts !== undefined
      ? [{ observation, sign, told: [...told], counts: valueFor(counts, sign) }]
      : []
  )
}

const valueFor = (answer: Answer, sign: string): string =>
  typeof answer === 'object' && !isInterval(answer) ? (answer[sign] ?? '') : ''

/** What was told, each once, in an order that the order of telling does not decide. */
function distinct(facts: readonly Fact[]): readonly Answer[] {
  const keys = new Map(facts.map(({ answer }) => [keyOf(answer), answer]))
  return [...keys].sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0)).map(([, answer]) => answer)
}

/** A reading is what it can truly be, with whatever it was measured. */
const keyOf = (answer: Answer): string =>
  isInterval(answer) ? `${answer.low} ${answer.reading} ${answer.high}` : JSON.stringify(answer)

/** Everything that some readings span, with its middle. */
function span(readings: readonly Interval[]): Interval {
  const low = Math.min(...readings.map(reading => reading.low))
  const high = Math.max(...readings.map(reading => reading.high))
  return { low, reading: rounded((low + high) / 2), high }
}

/** Of every way to take what is in doubt the most cautious; of equals the first told of each. */
function mostCautious(
  tree: Tree,
  answers: Answers,
  doubtful: ReadonlyMap<string, readonly Answer[]>
): Answers {
  let ways: readonly Answers[] = [{}]
  for (const [id, told] of doubtful) {
    ways = ways.flatMap(way => told.map(answer => ({ ...way, [id]: answer })))
  }
  const [first = {}, ...others] = ways
  const least = (way: Answers) => possible(tree, { ...answers, ...way }).atLeast
  let worst = { way: first, least: least(first) }
  for (const way of others) {
    const next = { way, least: least(way) }
    if (isWorse(tree, next.least, worst.least)) worst = next
  }
  return worst.way
}

/** Whether an outcome is worse: by the person, then the container, then the batch, then the use. */
function isWorse(tree: Tree, a: AtLeast, b: AtLeast): boolean {
  for (const track of TRACKS) {
    const difference = level(tree, track, a[track]) - level(tree, track, b[track])
    if (difference !== 0) return difference > 0
  }
  return useLevel(a.use) > useLevel(b.use)
}
