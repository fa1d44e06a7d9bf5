import type { GuidanceRow } from '../../src/load/load.ts'
import type { Answers } from '../../src/tree/answers.ts'

/** What must come out; a track or `use` that is not settled is left out. */
export type Expected = GuidanceRow['expect']

/** One answer to one choice. */
export const choice =
  (observation: string) =>
  (answer: string): Answers => ({ [observation]: answer })

/** One or more signs that are there. */
export const sign =
  (observation: string) =>
  (...signs: readonly string[]): Answers => ({
    [observation]: Object.fromEntries(signs.map(one => [one, 'yes' as const]))
  })

/** One sign that nobody is sure of. */
export const doubt =
  (observation: string) =>
  (one: string): Answers => ({ [observation]: { [one]: 'unsure' } })

/** Signs about people, told as yes: who is ill or hurt, and who has had some or will. */
export const person = (...told: readonly string[]): Answers => {
  const drinkers = told.filter(name => /-(?:drank|drink)$/.test(name))
  const ill = told.filter(name => !drinkers.includes(name))
  return {
    ...(ill.length > 0 && sign('people-signs')(...ill)),
    ...(drinkers.length > 0 && sign('drinkers')(...drinkers))
  }
}

/** A reading and what its instrument may be out by. */
const reading = (middle: number, plusMinus: number) => ({
  low: rounded(middle - plusMinus),
  reading: middle,
  high: rounded(middle + plusMinus)
})
// 4.15 + 0.05 must be exactly 4.2, or a pass at the limit turns into a doubt.
const rounded = (value: number) => Math.round(value * 1e6) / 1e6

/** A pH read with a calibrated meter. */
export const meter = (ph: number) => reading(ph, 0.05)
/** A pH read with a narrow-range strip. */
export const narrowStrip = (ph: number) => reading(ph, 0.3)
/** An exact count, such as days since sweet tea was last added. */
export const days = (count: number) => reading(count, 0)
