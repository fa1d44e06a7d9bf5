import type { Attempt, CallOutcome } from '../practice/attempt.ts'
import { apartOn, type PracticeScore, SIDES, type Side, type SideScore } from '../practice/score.ts'
import type { Rate } from '../science/agreement.ts'
import type { Verdict } from '../tree/tree.ts'
import type { Words } from './words.ts'

/** One line of the table of agreement. */
export interface SideLine {
  readonly side: Side
  readonly name: string
  readonly same: string
  readonly gentle: string
  readonly strict: string
  /** How many calls lie how many levels apart: `-2: 1`. */
  readonly levels: string
  readonly kappa: string
}

/** A share with its exact interval, in percent. */
export function rateText(words: Words, rate: Rate | null): string {
  if (rate === null) return words.t('ui:practice.no-rate')
  const percent = (share: number) => Math.round(share * 100)
  return words.t('ui:practice.rate', {
    hits: Math.round(rate.value * rate.of),
    of: rate.of,
    share: percent(rate.value),
    // Rounded outwards: no interval is told narrower than it is.
    low: Math.floor(rate.low * 100),
    high: Math.ceil(rate.high * 100)
  })
}

/** The table of agreement, a line for each side. */
export const sideLines = (words: Words, { sides }: PracticeScore): readonly SideLine[] =>
  SIDES.map(side => ({
    side,
    name: words.t(`ui:desk.track.${side}`),
    same: `${sides[side].same}`,
    gentle: `${sides[side].gentle}`,
    strict: `${sides[side].strict}`,
    levels: levelsText(sides[side]),
    kappa: kappaText(words, sides[side])
  }))

/** A danger that was missed, with what came out instead. */
export function missedLine(words: Words, attempt: Attempt, verdicts: readonly Verdict[]): string {
  const { day, volunteer, caller, given, expected } = attempt
  const gentler = (['person', 'container', 'batch'] as const).filter(
    track => (apartOn(track, attempt, verdicts) ?? 0) < 0
  )
  const names = (of: CallOutcome) => gentler.map(track => sideText(words, track, of)).join(', ')
  return words.t('ui:practice.missed-one', {
    day,
    number: volunteer,
    caller,
    given: names(given),
    expected: names(expected)
  })
}

/** What an outcome says on one side. */
export function sideText(words: Words, side: Side, outcome: CallOutcome): string {
  if (side === 'use') return words.t(`ui:practice.use.${outcome.use}`)
  const id = outcome[side]
  return id === null ? words.t('ui:practice.nothing') : words.t(`verdicts:${id}.name`)
}

/** How far the given outcome lies from the tree's on one side. */
export function apartText(words: Words, levels: number | null): string {
  if (levels === null) return words.t('ui:practice.not-compared')
  if (levels === 0) return words.t('ui:practice.agrees')
  const count = Math.abs(levels)
  return words.t(levels < 0 ? 'ui:practice.gentle' : 'ui:practice.strict', { count })
}

const levelsText = ({ apart }: SideScore): string =>
  Object.entries(apart)
    .map(([levels, calls]) => [Number(levels), calls] as const)
    .filter(([levels]) => levels !== 0)
    .sort(([a], [b]) => a - b)
    .map(([levels, calls]) => `${levels > 0 ? '+' : '−'}${Math.abs(levels)}: ${calls}`)
    .join(', ')

function kappaText(words: Words, { kappa }: SideScore): string {
  if (kappa === null) return words.t('ui:practice.no-kappa')
  const two = (value: number) => value.toFixed(2).replace('-', '−')
  return words.t('ui:practice.kappa-is', {
    value: two(kappa.value),
    low: two(kappa.low),
    high: two(kappa.high)
  })
}
