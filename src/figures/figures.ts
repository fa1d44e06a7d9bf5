import { mostScreens } from '../evaluate/progress.ts'
import type { Tree } from '../tree/tree.ts'
import { entropy, fewestScreens } from './bound.ts'
import { Course } from './course.ts'
import { askedObservations, type Counted, type Shares, sharesOf, sureShares } from './shares.ts'
import { LIMITS, type Limits, type Method, takeWalks } from './take-walks.ts'
import { type Length, lengthOf, type Tally } from './tally.ts'

/** How many screens a tree asks, under some shares of answers. */
export interface Figures {
  readonly tree: string
  readonly edition: number
  /** The observations whose shares were counted; every other is answered evenly. */
  readonly counted: readonly string[]
  readonly method: Method
  /** To the end of the walk. */
  readonly screens: Mean
  /** The most that any answers could lead to: never fewer than the longest. */
  readonly mostPossible: number
  /** Until person, container, batch and use are decided. */
  readonly settled: Mean
  readonly byVerdict: readonly ByVerdict[]
  /** Bits in the outcome, and the mean number of screens that no order of asking goes below. */
  readonly bound: { readonly outcomeBits: number; readonly fewestScreens: number }
  /** Observations that no walk is asked. */
  readonly neverAsked: readonly string[]
  /** Questions that no walk comes to, silent ones included. */
  readonly neverMet: readonly string[]
  /** Shares of walks: batch to be looked at again; something asked stayed unsure; one or both. */
  readonly waits: number
  readonly unsure: number
  readonly waitsOrUnsure: number
  /** With one observation asked before all others, the soonest settled first. */
  readonly askedFirst: readonly AskedFirst[]
}

/** Of a sample with the standard error of its mean; 0 where every walk is counted. */
export interface Mean {
  readonly mean: number
  readonly standardError: number
  readonly longest: number
}

/** The walks on which one verdict is said first. */
export interface ByVerdict {
  readonly verdict: string
  readonly share: number
  readonly screens: Mean
  readonly settled: Mean
}

/** What comes of asking one observation before all others: means with that first screen counted. */
export interface AskedFirst {
  readonly observation: string
  readonly method: Method['kind']
  readonly screens: Mean
  readonly settled: Mean
}

/** The figures of a tree under counted shares, or even ones where nothing was counted. */
export function figuresOf(tree: Tree, counted: Counted = {}, limits: Limits = LIMITS): Figures {
  const shares = sharesOf(tree, counted)
  const course = new Course(tree)
  return {
    ...asItAsks(course, counted, shares, limits),
    askedFirst: Object.keys(shares)
      .map(observation => {
        const taken = takeWalks(course, shares, limits, observation)
        return {
          observation,
          method: taken.method.kind,
          screens: meanOf(lengthOf(taken.tally.ended), taken.method),
          settled: meanOf(lengthOf(taken.tally.settled), taken.method)
        }
      })
      .sort((a, b) => a.settled.mean - b.settled.mean)
  }
}

/** The same but for what comes of asking something else first, which takes the walks as often again. */
export function figuresAsAsked(tree: Tree, limits: Limits = LIMITS): Omit<Figures, 'askedFirst'> {
  return asItAsks(new Course(tree), {}, sharesOf(tree, {}), limits)
}

function asItAsks(
  course: Course,
  counted: Counted,
  shares: Shares,
  limits: Limits
): Omit<Figures, 'askedFirst'> {
  const { tree } = course
  const { tally, method } = takeWalks(course, shares, limits)
  const met = new Set(course.routes.met)
  const sure = takeWalks(course, sureShares(tree, shares), limits).tally
  const outcomeBits = entropy(tally.outcomes.values())
  return {
    tree: tree.id,
    edition: tree.edition,
    counted: Object.keys(shares).filter(id => Object.hasOwn(counted, id)),
    method,
    screens: meanOf(lengthOf(tally.ended), method),
    mostPossible: mostScreens(tree),
    settled: meanOf(lengthOf(tally.settled), method),
    byVerdict: byVerdict(tree, tally, method),
    bound: { outcomeBits, fewestScreens: fewestScreens(outcomeBits, shares) },
    neverAsked: askedObservations(tree)
      .map(({ id }) => id)
      .filter(id => !tally.asked.has(id)),
    neverMet: Object.keys(tree.questions).filter(id => !met.has(id)),
    ...openEnds(tally, sure)
  }
}

/** Walks that wait, and walks on which something stayed unsure: all but those of the sure answers. */
function openEnds(tally: Tally, sure: Tally) {
  const certain = lengthOf(sure.ended).share - sure.unsure
  const unsure = Math.max(0, 1 - certain)
  return { waits: tally.waits, unsure, waitsOrUnsure: unsure + sure.waits - sure.waitsUnsure }
}

/** Most cautious first, as they are listed on their tracks from the person to the batch. */
function byVerdict(tree: Tree, tally: Tally, method: Method): readonly ByVerdict[] {
  const order = ['person', 'container', 'batch'].flatMap(track =>
    tree.verdicts
      .filter(verdict => verdict.track === track)
      .map(({ id }) => id)
      .reverse()
  )
  return [...order, 'nothing']
    .filter(verdict => tally.ended.has(verdict))
    .map(verdict => ({
      verdict,
      share: lengthOf(tally.ended, verdict).share,
      screens: meanOf(lengthOf(tally.ended, verdict), method),
      settled: meanOf(lengthOf(tally.settled, verdict), method)
    }))
}

function meanOf({ mean, longest, deviation, share }: Length, method: Method): Mean {
  const walks = method.kind === 'exact' ? Number.POSITIVE_INFINITY : method.walks * share
  return { mean, longest, standardError: walks > 0 ? deviation / Math.sqrt(walks) : 0 }
}
