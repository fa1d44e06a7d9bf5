import type { PatternPart } from '../../tables/patterns.ts'
import { isInterval } from '../../tree/answers.ts'
import { cutsOn, isExact, past } from '../../tree/bands.ts'
import { must } from '../../tree/must.ts'
import type { MeasureObservation, Range } from '../../tree/observation.ts'
import type { Cut } from '../../tree/range.ts'
import type { Condition, Tree } from '../../tree/tree.ts'
import { answerLabel } from '../../words/tree-texts.ts'
import type { Words } from '../../words/words.ts'
import { observationText } from '../table-words.ts'

const SIGN_SAID: Readonly<Record<string, string>> = {
  yes: 'yes',
  no: 'no',
  unsure: 'not sure',
  'unsure yes': 'yes or not sure',
  'no unsure': 'no or not sure',
  'no yes': 'yes or no'
}

const NOT_KNOWN = 'not measured or not known'

/** What a rule asks, a line for each thing that is told. */
export function conditionLines(
  words: Words,
  tree: Tree,
  conditions: readonly Condition[]
): readonly string[] {
  return byObservation(words, conditions, condition => {
    const { observation } = condition
    switch (condition.kind) {
      case 'choice':
        return { text: anyOf(words, tree, observation, condition.among) }
      case 'sign':
        return { sign: condition.sign, said: signSaid(condition.among) }
      case 'measure': {
        const { is } = condition
        if (is === 'unsure') return { text: NOT_KNOWN }
        if ('straddles' in is) return { text: `reaches to both sides of ${is.straddles}` }
        const measure = tree.observations[observation]
        const counted = measure?.kind === 'measure' && isExact(measure)
        return { text: `${counted ? '' : 'surely '}${rangeWords(is.within)}` }
      }
    }
  })
}

/** What a pattern has in common, a line for each thing that is told. */
export function patternLines(
  words: Words,
  tree: Tree,
  parts: readonly PatternPart[]
): readonly string[] {
  return byObservation(words, parts, ({ observation, sign, values }) => {
    if (sign !== null) return { sign, said: signSaid(values.map(({ answer }) => String(answer))) }
    const measure = tree.observations[observation]
    if (measure?.kind === 'measure') return { text: measureText(tree, measure, values) }
    const answers = values.map(({ answer }) => String(answer))
    return { text: anyOf(words, tree, observation, answers) }
  })
}

type LinePart = { readonly text: string } | { readonly sign: string; readonly said: string }

function byObservation<T extends { readonly observation: string }>(
  words: Words,
  all: readonly T[],
  wordsOf: (one: T) => LinePart
): readonly string[] {
  const observations = [...new Set(all.map(({ observation }) => observation))]
  return observations.map(observation => {
    const parts = all.filter(one => one.observation === observation).map(wordsOf)
    const texts = parts.flatMap(part => ('text' in part ? [part.text] : []))
    const signs = new Map<string, string[]>()
    for (const part of parts) {
      if ('text' in part) continue
      const label = `“${answerLabel(words, observation, part.sign)}”`
      signs.set(part.said, [...(signs.get(part.said) ?? []), label])
    }
    const ofSigns = [...signs].map(([said, labels]) => `${labels.join(', ')}: ${said}`)
    return `${observationText(words, observation)}: ${[...texts, ...ofSigns].join('; ')}`
  })
}

const signSaid = (among: readonly string[]): string =>
  SIGN_SAID[[...among].sort().join(' ')] ?? among.join(' or ')

/** Answers to a choice; where that is shorter, those that it is not. */
function anyOf(words: Words, tree: Tree, observation: string, answers: readonly string[]): string {
  const choice = tree.observations[observation]
  const all = choice?.kind === 'choice' ? [...choice.answers.map(({ id }) => id), 'unsure'] : []
  const others = all.filter(answer => !answers.includes(answer))
  const quoted = (some: readonly string[], word: string) =>
    some.map(answer => `“${answerLabel(words, observation, answer)}”`).join(word)
  return others.length > 0 && others.length < answers.length
    ? `anything but ${quoted(others, ' and ')}`
    : quoted(answers, ' or ')
}

/** Some answers to a measure: the part of its line that they hold, and whether they need be known. */
function measureText(
  tree: Tree,
  measure: MeasureObservation,
  values: PatternPart['values']
): string {
  const intervals = values.flatMap(({ answer }) => (isInterval(answer) ? [answer] : []))
  const cuts = cutsOn(tree, measure)
  const ends = intervals.map(({ low, high }) => ({ low: past(cuts, low), high: past(cuts, high) }))
  const unsure = values.length > intervals.length ? [NOT_KNOWN] : []
  if (intervals.length === 0) return NOT_KNOWN
  const texts = isExact(measure)
    ? runsOf(ends.map(({ low }) => low)).map(([from, to]) => bandText(cuts, from, to))
    : intervalTexts(cuts, ends)
  return [...texts, ...unsure].join(' or ')
}

interface Ends {
  readonly low: number
  readonly high: number
}

/**
 * By where the lowest and the highest lie that it can be, where that says it all; else by what is left
 * out, where that does; else band by band.
 */
function intervalTexts(cuts: readonly Cut[], ends: readonly Ends[]): readonly string[] {
  const given = new Set(ends.map(keyOf))
  const all = placesUpTo(cuts.length)
  const own = boxText(cuts, ends)
  if (own !== null) return [own]
  const others = all.filter(place => !given.has(keyOf(place)))
  const without = boxText(cuts, others)
  if (without !== null) return [`anything but ${without}`]
  return [...given].map(key => {
    const [low = 0, high = 0] = key.split(' ').map(Number)
    return low === high
      ? `surely ${bandText(cuts, low, high)}`
      : `somewhere in ${bandText(cuts, low, high)}`
  })
}

const keyOf = ({ low, high }: Ends): string => `${low} ${high}`

/** Every place that an interval can have among so many cuts. */
const placesUpTo = (last: number): readonly Ends[] =>
  Array.from({ length: last + 1 }, (_, low) =>
    Array.from({ length: last + 1 - low }, (_, more) => ({ low, high: low + more }))
  ).flat()

/** Places that are all those with their lowest and highest between two bands each; null for others. */
function boxText(cuts: readonly Cut[], ends: readonly Ends[]): string | null {
  const last = cuts.length
  const lows = ends.map(({ low }) => low)
  const highs = ends.map(({ high }) => high)
  const [from, lowTo] = [Math.min(...lows), Math.max(...lows)]
  const [highFrom, to] = [Math.min(...highs), Math.max(...highs)]
  const given = new Set(ends.map(keyOf))
  const inside = placesUpTo(last).filter(
    ({ low, high }) => low >= from && low <= lowTo && high >= highFrom && high <= to
  )
  if (given.size !== inside.length || inside.some(place => !given.has(keyOf(place)))) return null
  const texts = [
    ...(from > 0 || to < last ? [`surely ${bandText(cuts, from, to)}`] : []),
    ...(highFrom > from ? [`perhaps ${bandText(cuts, highFrom, last)}`] : []),
    ...(lowTo < to ? [`perhaps ${bandText(cuts, 0, lowTo)}`] : [])
  ]
  return texts.length === 0 ? 'measured, whatever it is' : texts.join(' and ')
}

/** Whole numbers in rows of neighbors. */
function runsOf(numbers: readonly number[]): readonly (readonly [number, number])[] {
  const runs: [number, number][] = []
  for (const number of [...new Set(numbers)].sort((one, other) => one - other)) {
    const run = runs.at(-1)
    if (run !== undefined && run[1] === number - 1) run[1] = number
    else runs.push([number, number])
  }
  return runs
}

/** The part of a line between two bands, both included. */
function bandText(cuts: readonly Cut[], from: number, to: number): string {
  const start = from === 0 ? undefined : must(cuts[from - 1], 'cut')
  const end = cuts[to]
  const range: Range = {
    ...(start && (start.side === 'below' ? { atLeast: start.at } : { over: start.at })),
    ...(end && (end.side === 'below' ? { under: end.at } : { atMost: end.at }))
  }
  return start === undefined && end === undefined ? 'any number' : rangeWords(range)
}

/** A part of a measure's line. */
export function rangeWords({ atLeast, over, under, atMost }: Range): string {
  const from =
    atLeast !== undefined ? `${atLeast} or more` : over !== undefined ? `over ${over}` : null
  const to =
    atMost !== undefined ? `${atMost} or less` : under !== undefined ? `under ${under}` : null
  return [from, to].filter(end => end !== null).join(' and ')
}
