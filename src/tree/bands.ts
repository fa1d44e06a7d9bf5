import type { Interval } from './answers.ts'
import { linkedOf } from './linked.ts'
import { at } from './must.ts'
import type { MeasureObservation } from './observation.ts'
import { type Cut, cutsOf, sortCuts } from './range.ts'
import type { Tree } from './tree.ts'

/** A measure's answer up to the limits that the tree and its rules set: one interval stands for all alike. */
export interface Band {
  readonly label: string
  readonly interval: Interval
}

/** The limits set on a measure, by questions, rules and the catalogue's usual range. */
export function cutsOn(tree: Tree, measure: MeasureObservation): readonly Cut[] {
  return limitsOn(tree, measure).cuts
}

/** The limits of taste on a measure: they compare the reading alone. */
export function tasteCuts(tree: Tree, measure: MeasureObservation): readonly Cut[] {
  return limitsOn(tree, measure).taste
}

interface Limits {
  readonly cuts: readonly Cut[]
  readonly taste: readonly Cut[]
}

function limitsOn(tree: Tree, measure: MeasureObservation): Limits {
  const ofTree = limits.get(tree) ?? new Map<string, Limits>()
  limits.set(tree, ofTree)
  const before = ofTree.get(measure.id)
  if (before !== undefined) return before
  const taste = tasteOn(tree, measure)
  const found = { cuts: sortCuts([...allOn(tree, measure), ...taste]), taste }
  ofTree.set(measure.id, found)
  return found
}

/** Worked out at first need: they are looked up at every answer. */
const limits = new WeakMap<Tree, Map<string, Limits>>()

function allOn(tree: Tree, measure: MeasureObservation): readonly Cut[] {
  const cuts: Cut[] = measure.usual ? [...cutsOf(measure.usual)] : []
  for (const question of linkedOf(tree).questions.get(measure.id) ?? []) {
    if (question.kind !== 'measure') continue
    for (const { range } of question.ranges) cuts.push(...cutsOf(range))
  }
  const ofRules = tree.rules.flatMap(({ when, unless }) => [...when, ...unless.flat()])
  const ofPresumptions = Object.values(tree.presumptions).flat(2)
  for (const condition of [...ofRules, ...tree.askedAgain, ...ofPresumptions]) {
    if (condition.kind !== 'measure' || condition.observation !== measure.id) continue
    if (condition.is === 'unsure') continue
    if ('within' in condition.is) cuts.push(...cutsOf(condition.is.within))
    else cuts.push({ at: condition.is.straddles, side: 'above' })
  }
  return cuts
}

function tasteOn(tree: Tree, measure: MeasureObservation): readonly Cut[] {
  return Object.values(tree.questions).flatMap(question =>
    question.kind === 'measure' && question.asks === measure.id
      ? question.taste.flatMap(({ range }) => cutsOf(range))
      : []
  )
}

/**
 * Every answer that the limits tell apart: each run of neighbouring bands, and within it each side of
 * a taste limit on which the reading can lie. A count is exact: runs of one band only.
 */
export function bandsOf(tree: Tree, measure: MeasureObservation): readonly Band[] {
  const cuts = cutsOn(tree, measure)
  const taste = tasteCuts(tree, measure)
  const points = samples(cuts, isExact(measure))
  const bands = new Map<string, Band>()
  for (let from = 0; from < points.length; from++) {
    const last = isExact(measure) ? from : points.length - 1
    for (let to = from; to <= last; to++) {
      for (let read = from; read <= to; read++) {
        const [low, reading, high] = [at(points, from), at(points, read), at(points, to)]
        const interval = { low, reading, high }
        const key = keyOf(cuts, taste, interval)
        if (!bands.has(key)) bands.set(key, { label: labelOf(cuts, from, to), interval })
      }
    }
  }
  return [...bands.values()]
}

/** Equal for two intervals that no limit on the measure tells apart. */
export function bandKey(tree: Tree, measure: MeasureObservation, interval: Interval): string {
  return keyOf(cutsOn(tree, measure), tasteCuts(tree, measure), interval)
}

function keyOf(
  cuts: readonly Cut[],
  taste: readonly Cut[],
  { low, reading, high }: Interval
): string {
  return `${past(cuts, low)},${past(cuts, high)},${past(taste, reading)}`
}

/** What is neither measured nor worked out is counted: one whole number, known or not. */
export function isExact(measure: MeasureObservation): boolean {
  return measure.instruments.length === 0 && measure.derived === undefined
}

/**
 * One number in each band: a band between two cuts at the same number is that number; of a count a whole
 * number where the band holds one.
 */
function samples(cuts: readonly Cut[], counted: boolean): readonly number[] {
  // INVARIANT: cuts are sorted and stand once, so n of them part the line into n + 1 bands, one sample each.
  const first = cuts[0]
  if (first === undefined) return [0]
  const between = cuts.slice(1).map((cut, i) => {
    const start = at(cuts, i)
    const middle = (start.at + cut.at) / 2
    const whole = Math.floor(middle)
    return counted && past([start], whole) === 1 ? whole : middle
  })
  return [first.at - 1, ...between, at(cuts, cuts.length - 1).at + 1]
}

/** How many of the cuts lie before the number. */
export function past(cuts: readonly Cut[], x: number): number {
  return cuts.filter(cut => (cut.side === 'below' ? x >= cut.at : x > cut.at)).length
}

function labelOf(cuts: readonly Cut[], from: number, to: number): string {
  const start = cuts[from - 1]
  const end = cuts[to]
  const open = start && (start.side === 'below' ? `at least ${start.at}` : `over ${start.at}`)
  const close = end && (end.side === 'below' ? `under ${end.at}` : `at most ${end.at}`)
  return [open, close].filter(part => part !== undefined).join(', ') || 'any'
}
