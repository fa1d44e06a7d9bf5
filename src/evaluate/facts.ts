import { type Answer, type Answers, type Interval, isInterval } from '../tree/answers.ts'
import { bandsOf, isExact } from '../tree/bands.ts'
import { level, useLevel } from '../tree/caution.ts'
import { rank } from '../tree/effective.ts'
import { at } from '../tree/must.ts'
import type { MeasureObservation, Observation } from '../tree/observation.ts'
import { TRACKS } from '../tree/observation.ts'
import { rounded } from '../tree/reading.ts'
import { tell } from '../tree/tell.ts'
import type { Tree } from '../tree/tree.ts'
import { type Either, taking } from './either.ts'
import { type AtLeast, possible } from './possible.ts'

/** One thing told in a call: of a screen of signs only those named. */
export interface Fact {
  readonly observation: string
  readonly answer: Answer
}

/** What a call comes to: its answers, and where it contradicts itself. */
export interface Call {
  /** Of what contradicts itself the more worrying: what is asked next follows it. */
  readonly answers: Answers
  /** Everything that can be so of what contradicts itself: the outcome is as cautious as any of it. */
  readonly either: readonly Either[]
  readonly contradictions: readonly Contradiction[]
}

/** Facts that cannot all be so. */
export interface Contradiction {
  readonly observation: string
  /** The sign they are about; null where they are about the whole observation. */
  readonly sign: string | null
  readonly told: readonly Answer[]
}

/**
 * The answers of facts told in any order. Of two things told of one observation, or of one sign, either
 * can be so, and of two readings also all that they span together: a reading that nobody is sure of is
 * not a pass. Of two counts each between them can be so. On each track and for the use the most cautious
 * of these counts (`walkEither`).
 */
export function callOf(tree: Tree, facts: readonly Fact[]): Call {
  let answers: Answers = {}
  const tellings: Told[] = []
  for (const observation of Object.values(tree.observations)) {
    const said = facts.filter(fact => fact.observation === observation.id)
    if (said.length === 0) continue
    if (observation.kind === 'signs') {
      for (const { answer } of said) answers = tell(answers, observation, answer)
      tellings.push(...signsTold(observation.id, said))
      continue
    }
    const distinctly = distinct(said)
    const ways = waysToTake(tree, observation, distinctly)
    answers = { ...answers, [observation.id]: at(ways, 0) }
    if (distinctly.length > 1) {
      tellings.push({ observation: observation.id, sign: null, answers: ways, told: distinctly })
    }
  }
  const either = tellings.map(one => worstFirst(tree, answers, one))
  for (const one of either) answers = taking(answers, one, at(one.answers, 0))
  return {
    answers,
    either: either
      .filter(one => one.answers.length > 1)
      .map(({ observation, sign, answers: all }) => ({
        observation,
        sign,
        answers: all
      })),
    contradictions: tellings.map(({ observation, sign, told: said }) => ({
      observation,
      sign,
      told: said
    }))
  }
}

interface Told extends Either {
  /** As it was said. */
  readonly told: readonly Answer[]
}

/** Every answer that could be meant by what was told of a choice or a measure; one where all agree. */
function waysToTake(
  tree: Tree,
  observation: Observation,
  answers: readonly Answer[]
): readonly Answer[] {
  if (answers.length === 1) return answers
  if (observation.kind === 'choice') {
    const definite = answers.filter(answer => answer !== 'unsure')
    // Where the answers are listed by caution the first of them is as strict as all, which is proved.
    if (observation.unordered !== true && definite.length > 1) {
      const worst = at(
        [...definite].sort((a, b) => rank(observation, a) - rank(observation, b)),
        0
      )
      return answers.length === definite.length ? [worst] : [worst, 'unsure']
    }
    return [...answers].sort((a, b) => rank(observation, a) - rank(observation, b))
  }
  const readings = answers.filter(isInterval)
  if (readings.length < 2 || observation.kind !== 'measure') return answers
  return isExact(observation)
    ? [...answers, ...countsBetween(tree, observation, readings)]
    : [span(readings), ...answers]
}

/** Every count between some others, up to the limits that the tree sets. */
function countsBetween(
  tree: Tree,
  measure: MeasureObservation,
  counts: readonly Interval[]
): readonly Interval[] {
  const { low, high } = span(counts)
  return bandsOf(tree, measure)
    .map(({ interval }) => interval)
    .filter(({ reading }) => low < reading && reading < high)
}

function signsTold(observation: string, facts: readonly Fact[]): readonly Told[] {
  const values = new Map<string, Set<Answer>>()
  for (const [sign, value] of facts.flatMap(({ answer }) => Object.entries(answer))) {
    values.set(sign, (values.get(sign) ?? new Set()).add(value))
  }
  return [...values].flatMap(([sign, answer]) =>
    answer.size > 1 ? [{ observation, sign, answers: [...answer], told: [...answer] }] : []
  )
}

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

/** What was told with the most cautious first, all else as it was told: it is asked on from there. */
function worstFirst(tree: Tree, answers: Answers, one: Told): Told {
  // Signs keep their fixed order: seen, not sure, not seen.
  const all =
    one.sign === null
      ? one.answers
      : ['yes', 'unsure', 'no'].filter(value => one.answers.includes(value))
  const least = all.map(answer => ({
    answer,
    least: possible(tree, taking(answers, one, answer)).atLeast
  }))
  const ordered =
    one.sign === null ? [...least].sort((a, b) => worse(tree, b.least, a.least)) : least
  const { answer: counts } = at(ordered, 0)
  return { ...one, answers: [counts, ...all.filter(answer => answer !== counts)] }
}

/** How much worse one outcome is: by the person, then the container, then the batch, then the use. */
function worse(tree: Tree, a: AtLeast, b: AtLeast): number {
  for (const track of TRACKS) {
    const difference = level(tree, track, a[track]) - level(tree, track, b[track])
    if (difference !== 0) return difference
  }
  return useLevel(a.use) - useLevel(b.use)
}
