import { LIGHT_BESIDE_READINGS } from './lexicon.ts'
import type { Token } from './normal.ts'
import { type SpokenUnit, UNIT_WORDS } from './typed-units.ts'

interface Mark {
  readonly at: number
  /** Null: a number stands here. */
  readonly unit: SpokenUnit | null
}

/**
 * Of several numbers in a row, the unit of each: "day 9 ph 4.1 75 F". Every number has one unit beside
 * it and every unit one number, which can be in one way at most; null when it cannot.
 */
export function pairUnits(
  tokens: readonly Token[],
  numbers: readonly number[]
): ReadonlyMap<number, SpokenUnit> | null {
  const marks = tokens.flatMap((token, index): readonly Mark[] => {
    if (numbers.includes(index)) return [{ at: index, unit: null }]
    const unit = UNIT_WORDS.get(token.word)
    return unit ? [{ at: index, unit }] : []
  })
  if (marks.length !== numbers.length * 2) return null
  const pairs = new Map<number, SpokenUnit>()
  for (let i = 0; i < marks.length; i += 2) {
    const [one, two] = [marks[i], marks[i + 1]]
    if (!one || !two || !together(tokens, one.at, two.at)) return null
    const number = one.unit === null ? one : two
    const unit = one.unit ?? two.unit
    // A unit of its own kind goes before the number or after it, as people say it.
    if (unit === null || (one.unit && two.unit) || (number === two && !unit.standsFirst))
      return null
    pairs.set(number.at, unit)
  }
  return new Set([...pairs.values()].map(({ unit }) => unit)).size === pairs.size ? pairs : null
}

const together = (tokens: readonly Token[], from: number, to: number): boolean =>
  tokens.slice(from + 1, to).every(({ word }) => word === '°' || LIGHT_BESIDE_READINGS.has(word))
