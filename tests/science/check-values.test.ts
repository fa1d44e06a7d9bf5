import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { phOf } from '../../src/science/acid.ts'
import { kappa, wilson } from '../../src/science/agreement.ts'
import { partialPressure, solubility, VOLUME } from '../../src/science/gas.ts'
import { dilute, partsPerMillion } from '../../src/science/sanitizer.ts'
import { gravityOfBrix, sugarOfBrix } from '../../src/science/sugar.ts'
import { amount, inUnit } from '../../src/science/units.ts'

/**
 * One published or reproduced value; its source stands beside it. `status`: seen (read at the source),
 * memory (not read), run (computed by a reference program), calc.
 */
interface CheckValue {
  readonly id: string
  readonly model: string
  // biome-ignore lint/suspicious/noExplicitAny: each model has inputs of its own
  readonly input: any
  readonly expected: number | readonly number[]
  readonly tol: number
  readonly source: string
  readonly status: string
}

const VALUES: readonly CheckValue[] = JSON.parse(
  readFileSync(new URL('check-values.json', import.meta.url), 'utf8')
)

const UNITS: Readonly<Record<string, Parameters<typeof amount>[1]>> = {
  'US gal': 'gal',
  'US quart': 'quart',
  'US cup': 'cup',
  'US floz': 'floz',
  'US tbsp': 'tbsp',
  'US tsp': 'tsp',
  'Imp gal': 'imperial-gal'
}
/** An entry by its id; what was not read at its source says so. */
const named = (value: CheckValue) =>
  [value.status === 'seen' ? value.id : `${value.id} (${value.status})`, value] as const
const celsius = (fahrenheit: number) => inUnit(amount(fahrenheit, 'F'), 'C')
const PSI = 14.695949
/** A keg: no air above the drink, so the gauge shows what exceeds one atmosphere. */
const kegPsi = ({ F, vol }: { F: number; vol: number }, solids: number) =>
  (partialPressure(vol / VOLUME, celsius(F), 0, solids) - 1) * PSI
/** g of water in a mL: a Bunsen coefficient speaks of volumes (Kell 1975, from memory). */
const density = (t: number) => 0.99984 + 6e-5 * t - 8e-6 * t * t

/** mL of bleach for a liter at a target. */
function bleachFor({ pct, ppm, target, L = 1 }: Record<string, number>): number {
  const found = dilute({ strength: pct as number }, (ppm ?? target) as number, amount(L, 'L'))
  return found.standing === 'dilution' ? found.perLiter * L : Number.NaN
}

const MODELS: Readonly<Record<string, (value: CheckValue) => readonly number[]>> = {
  pH: ({ input }) => [
    phOf({ acids: [{ pKa: input.pKa, molar: input.M }], strongIons: input.sid ?? 0 })
  ],
  mL: ({ input }) => [
    input.unit === undefined
      ? bleachFor(input)
      : inUnit(amount(1, UNITS[input.unit] as 'cup'), 'mL')
  ],
  K0: ({ input }) => [solubility(input.tC, input.S)],
  bunsen: ({ input }) => [solubility(input.tC) * density(input.tC) * VOLUME],
  // Mole fraction at 100 kPa: K0 over the moles of water in a kilogram.
  '1000x at 100 kPa': ({ input }) => [(1000 * (solubility(input.tC) / 1.01325)) / 55.508],
  'SG20/20': ({ input }) => [gravityOfBrix(input.brix)],
  'lb sucrose/US gal': ({ input }) => [
    (sugarOfBrix(input.brix) * inUnit(amount(1, 'gal'), 'L')) / inUnit(amount(1, 'lb'), 'g')
  ],
  proportion: ({ input }) => [wilson(input.k, input.n).value],
  wilson95: ({ input }) => {
    const { low, high } = wilson(input.k, input.n)
    return [low, high]
  },
  'kappa,SE': ({ input }) => {
    const found = kappa(input.table, input.weights ?? 'none')
    return [found.kappa ?? Number.NaN, found.standardError ?? Number.NaN]
  },
  ppm: ({ input }) =>
    input.ratio === undefined
      ? [
          partsPerMillion(
            input.pct,
            inUnit(amount(1, 'tbsp'), 'mL'),
            inUnit(amount(1, 'gal'), 'mL')
          )
        ]
      : [partsPerMillion(input.pct, 1, 9)],
  // Both dose a gallon: 0.05 mL to a drop, which cancels out.
  ratio: () => [partsPerMillion(8.25, 6, 75_708) / partsPerMillion(6, 8, 75_708)]
}

describe('every published check value comes out', () => {
  test('all 71 of them are here, with a source and a model', () => {
    expect(VALUES).toHaveLength(71)
    expect(VALUES.filter(({ source }) => source.length < 4)).toEqual([])
  })

  test.each(VALUES.filter(({ model }) => !model.startsWith('gauge psi')).map(named))(
    '%s',
    (_, value) => {
      const found = MODELS[value.model]?.(value) ?? []
      const expected = [value.expected].flat() as number[]
      expect(found).toHaveLength(expected.length)
      for (const [at, one] of expected.entries()) {
        expect(Math.abs((found[at] as number) - one), value.source).toBeLessThanOrEqual(value.tol)
      }
    }
  )

  test.each(VALUES.filter(({ model }) => model.startsWith('gauge psi')).map(named))(
    '%s lies between water and a drink with solids',
    (_, { input, expected, tol, source }) => {
      expect(input.F).toBeLessThanOrEqual(60)
      expect(expected as number, source).toBeGreaterThanOrEqual(kegPsi(input, 1) - tol)
      expect(expected as number, source).toBeLessThanOrEqual(kegPsi(input, 0.92) + tol)
    }
  )
})
