import { type Kappa, kappa, kappaSpan, type Rate } from '../science/agreement.ts'
import { exactRate } from '../science/exact.ts'
import { EMERGENCY } from '../tree/emergency.ts'
import { TRACKS } from '../tree/observation.ts'
import { USES, type Verdict } from '../tree/tree.ts'
import type { Attempt, CallOutcome } from './attempt.ts'

/** What is compared of two outcomes. */
export const SIDES = [...TRACKS, 'use'] as const
export type Side = (typeof SIDES)[number]

/** How the outcomes of one side agree, and which way they do not. */
export interface SideScore {
  readonly compared: number
  readonly same: number
  readonly gentle: number
  readonly strict: number
  /** Calls by levels apart: below 0 too gentle, above 0 too strict. */
  readonly apart: Readonly<Record<string, number>>
  /** Cohen's kappa, linear weights: the verdicts of a side are in order. Null of few calls, and where chance alone agrees. */
  readonly kappa: ReturnType<typeof kappaSpan>
}

/** How a volunteer, or an office, does on practice calls. */
export interface PracticeScore {
  readonly calls: number
  /** Of the calls that the tree finds dangerous, those that were seen so: the exact interval. */
  readonly seen: Rate | null
  /** Of the calls in which nothing is dangerous, those in which a danger was told. */
  readonly falseAlarms: Rate | null
  /** The dangerous calls that were not seen so, in the order in which they were played. */
  readonly missed: readonly Attempt[]
  /** Calls that were taken for another ferment to the end. */
  readonly otherTree: number
  readonly sides: Readonly<Record<Side, SideScore>>
}

/** Of fewer calls a kappa tells nothing: one call more would turn it round (own caution, no source). */
const FEWEST_FOR_KAPPA = 10

/** The signal words of a danger: what comes of it cannot be taken back. */
const DANGEROUS: readonly Verdict['signal'][] = ['danger', 'warning']

/** @throws RangeError for a verdict that is not among `verdicts`, which are gentlest first on each track. */
export function practiceScore(
  attempts: readonly Attempt[],
  verdicts: readonly Verdict[]
): PracticeScore {
  const dangersIn = (judged: CallOutcome) =>
    TRACKS.filter(track =>
      verdicts.some(({ id, signal }) => id === judged[track] && DANGEROUS.includes(signal))
    )
  const isDangerous = ({ expected }: Attempt) => dangersIn(expected).length > 0
  const isSeen = ({ given, expected }: Attempt) =>
    dangersIn(expected).every(
      track => levelOf(verdicts, track, given) >= levelOf(verdicts, track, expected)
    )
  const dangerous = attempts.filter(isDangerous)
  const harmless = attempts.filter(each => !isDangerous(each))
  const alarms = harmless.filter(({ given }) => dangersIn(given).length > 0)
  const rate = (hits: number, of: number) => (of === 0 ? null : exactRate(hits, of))
  const side = (name: Side) => sideScore(attempts, name, verdicts)
  return {
    calls: attempts.length,
    seen: rate(dangerous.filter(isSeen).length, dangerous.length),
    falseAlarms: rate(alarms.length, harmless.length),
    missed: dangerous.filter(each => !isSeen(each)),
    otherTree: attempts.filter(({ tree, took }) => tree !== took).length,
    sides: {
      person: side('person'),
      container: side('container'),
      batch: side('batch'),
      use: side('use')
    }
  }
}

/** Attempts by volunteer, each once, in the order of the numbers. */
export function byVolunteer(
  attempts: readonly Attempt[]
): readonly (readonly [number, readonly Attempt[]])[] {
  const groups = new Map<number, Attempt[]>()
  for (const attempt of attempts) {
    groups.set(attempt.volunteer, [...(groups.get(attempt.volunteer) ?? []), attempt])
  }
  return [...groups].sort(([a], [b]) => a - b)
}

/** Attempts of several files, each counted once. */
export const eachOnce = (attempts: readonly Attempt[]): readonly Attempt[] => [
  ...new Map(attempts.map(attempt => [attempt.id, attempt])).values()
]

/** How many levels the given outcome lies above the expected one: below 0 it is too gentle. */
export function apartOn(
  side: Side,
  { given, expected }: Pick<Attempt, 'given' | 'expected'>,
  verdicts: readonly Verdict[]
): number | null {
  // In an emergency jar and batch are not spoken of: there is nothing to compare them with.
  const emergency = given.person === EMERGENCY || expected.person === EMERGENCY
  if (emergency && side !== 'person') return null
  return levelOf(verdicts, side, given) - levelOf(verdicts, side, expected)
}

function sideScore(
  attempts: readonly Attempt[],
  side: Side,
  verdicts: readonly Verdict[]
): SideScore {
  const size =
    side === 'use' ? USES.length : verdicts.filter(each => each.track === side).length + 1
  const table = Array.from({ length: size }, () => Array.from({ length: size }, () => 0))
  const apart: Record<string, number> = {}
  for (const attempt of attempts) {
    const levels = apartOn(side, attempt, verdicts)
    if (levels === null) continue
    apart[levels] = (apart[levels] ?? 0) + 1
    const row = table[levelOf(verdicts, side, attempt.given)]
    const column = levelOf(verdicts, side, attempt.expected)
    if (row) row[column] = (row[column] ?? 0) + 1
  }
  const calls = (of: (levels: number) => boolean) =>
    Object.entries(apart).reduce((sum, [levels, n]) => (of(Number(levels)) ? sum + n : sum), 0)
  const compared = calls(() => true)
  const agreed: Kappa | null = compared < FEWEST_FOR_KAPPA ? null : kappa(table, 'linear')
  return {
    compared,
    same: calls(levels => levels === 0),
    gentle: calls(levels => levels < 0),
    strict: calls(levels => levels > 0),
    apart,
    kappa: agreed && kappaSpan(agreed)
  }
}

/** 0 for nothing said on a track, and for the freest use. */
function levelOf(verdicts: readonly Verdict[], side: Side, judged: CallOutcome): number {
  if (side === 'use') return USES.indexOf(judged.use)
  const id = judged[side]
  if (id === null) return 0
  const place = verdicts.filter(({ track }) => track === side).findIndex(each => each.id === id)
  if (place < 0) throw new RangeError(`There is no verdict ${id} on ${side}.`)
  return place + 1
}
