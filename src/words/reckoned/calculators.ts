import { type AcidReading, USUAL_START } from '../../science/course.ts'
import type { BottleKind, Sealed } from '../../science/gas.ts'
import {
  type PhInstrument,
  type Starter,
  type StarterKind,
  shareOf,
  starterReading
} from '../../science/mix.ts'
import { type SaltKind, saltWeight, weighedSalt } from '../../science/salt.ts'
import type { Additive } from '../../science/sanitizer.ts'
import { exactly, type Span } from '../../science/span.ts'
import { inUnit } from '../../science/units.ts'
import { reckonAgree } from './agree.ts'
import { reckonBleach } from './bleach.ts'
import { reckonBrix } from './brix.ts'
import { reckonCourse } from './course.ts'
import { reckonGas } from './gas.ts'
import type {
  AmountInput,
  CalculatorInput,
  ChoiceInput,
  GivenInputs,
  PlainNumberInput,
  ReadingsInput
} from './inputs.ts'
import { reckonMix } from './mix.ts'
import type { Reckoned } from './reckoned.ts'
import { reckonSalt, type SaltedFor } from './salt.ts'

export type CalculatorId = 'mix' | 'course' | 'gas' | 'bleach' | 'salt' | 'brix' | 'agree'

/** One calculator: its inputs, in the order of its fields, and what they come to. */
export interface Calculator {
  readonly id: CalculatorId
  readonly inputs: readonly CalculatorInput[]
  /** @throws BadInput where the inputs cannot be, and whatever `given` throws. */
  reckon(given: GivenInputs): Reckoned
}

const VOLUME = { kind: 'amount', dimensions: ['volume'] } as const
const MASS = { kind: 'amount', dimensions: ['mass'] } as const

const STARTER: AmountInput<'volume'> = {
  ...VOLUME,
  id: 'starter',
  units: ['cup', 'floz', 'tbsp', 'mL', 'L', 'quart'],
  start: '2',
  slider: { from: 0.25, to: 6, step: 0.25 }
}
const BATCH: AmountInput<'volume'> = {
  ...VOLUME,
  id: 'batch',
  units: ['gal', 'quart', 'cup', 'L', 'mL'],
  start: '1'
}
const STARTER_PH: PlainNumberInput = { kind: 'number', id: 'starter-ph', unit: 'pH', start: '3.0' }
const INSTRUMENT: ChoiceInput<PhInstrument | 'unknown'> = {
  kind: 'choice',
  id: 'instrument',
  options: ['meter', 'narrow-strip', 'wide-strip', 'unknown'],
  start: 'meter',
  leftOut: 'unknown'
}
const STARTER_KIND: ChoiceInput<StarterKind> = {
  kind: 'choice',
  id: 'starter-kind',
  options: ['two-weeks-or-more', 'one-to-two-weeks', 'young-or-chilled', 'unknown'],
  start: 'unknown',
  otherwise: 'unknown'
}
const AT: AmountInput<'temperature'> = {
  kind: 'amount',
  dimensions: ['temperature'],
  id: 'at',
  units: ['F', 'C'],
  start: '75'
}
const READINGS: ReadingsInput = {
  kind: 'readings',
  id: 'readings',
  start: '0\t4.5\n3\t4.0\n7\t3.6'
}
const START_PH: PlainNumberInput = { kind: 'number', id: 'start-ph', unit: 'pH', start: '' }
const DAY: PlainNumberInput = {
  kind: 'number',
  id: 'day',
  unit: 'days',
  start: '7',
  isCommandAlone: true
}
const SUGAR: PlainNumberInput = {
  kind: 'number',
  id: 'sugar',
  unit: 'g/L',
  start: '20',
  slider: { from: 0, to: 60, step: 1 }
}
const DAYS: PlainNumberInput = { kind: 'number', id: 'days', unit: 'days', start: '3' }
const BOTTLE: ChoiceInput<BottleKind> = {
  kind: 'choice',
  id: 'bottle',
  options: [
    ...(['swing-top', 'beer', 'plastic', 'sparkling'] as const),
    ...(['square', 'canning-jar', 'wine', 'unknown'] as const)
  ],
  start: 'swing-top',
  otherwise: 'unknown'
}
const HEADSPACE: PlainNumberInput = {
  kind: 'number',
  id: 'headspace',
  unit: '%',
  start: '5',
  otherwise: '5'
}
const LABEL: PlainNumberInput = { kind: 'number', id: 'label', unit: '%', start: '7.5' }
const ADDITIVE: ChoiceInput<Additive | 'plain'> = {
  kind: 'choice',
  id: 'additive',
  options: ['plain', 'scented', 'gel', 'splashless'],
  start: 'plain',
  leftOut: 'plain'
}
const TARGET: PlainNumberInput = {
  kind: 'number',
  id: 'target',
  unit: 'ppm',
  start: '200',
  otherwise: '200'
}
const WATER: AmountInput<'volume'> = {
  ...VOLUME,
  id: 'water',
  units: ['gal', 'quart', 'L', 'cup'],
  start: '1',
  otherwise: '1gal'
}
const SALTED_FOR: ChoiceInput<SaltedFor> = {
  kind: 'choice',
  id: 'for',
  options: ['kraut', 'dill', 'kimchi', 'other'],
  start: 'kraut',
  otherwise: 'other'
}
const SALT: AmountInput<'volume' | 'mass'> = {
  kind: 'amount',
  dimensions: ['volume', 'mass'],
  id: 'salt',
  units: ['tbsp', 'tsp', 'cup', 'g', 'oz'],
  start: '3'
}
const SALT_KIND: ChoiceInput<SaltKind> = {
  kind: 'choice',
  id: 'salt-kind',
  options: ['canning', 'table', 'kosher-flake', 'coarse-sea', 'unknown'],
  start: 'canning',
  otherwise: 'unknown'
}
const VEGETABLES: AmountInput<'mass'> = {
  ...MASS,
  id: 'vegetables',
  units: ['lb', 'oz', 'kg', 'g'],
  start: '5'
}
const BEFORE: PlainNumberInput = { kind: 'number', id: 'before', unit: '°Bx', start: '6' }
const AFTER: PlainNumberInput = { kind: 'number', id: 'after', unit: '°Bx', start: '4' }
const BOTH: PlainNumberInput = { kind: 'number', id: 'both', unit: '', start: '20' }
const FIRST: PlainNumberInput = { kind: 'number', id: 'first', unit: '', start: '5' }
const SECOND: PlainNumberInput = { kind: 'number', id: 'second', unit: '', start: '10' }
const NEITHER: PlainNumberInput = { kind: 'number', id: 'neither', unit: '', start: '15' }

/** Every calculator, in the order in which the workbench and the command name them. */
export const CALCULATORS: readonly [Calculator, ...Calculator[]] = [
  {
    id: 'mix',
    inputs: [STARTER, BATCH, STARTER_PH, INSTRUMENT, STARTER_KIND],
    reckon: given => reckonMix(starterOf(given), given.amount(STARTER), given.amount(BATCH))
  },
  {
    id: 'course',
    inputs: [AT, READINGS, INSTRUMENT, START_PH, DAY],
    reckon: given => {
      const { start, celsius, readings } = courseOf(given)
      const last = readings.at(-1)?.day
      const passed = last === undefined ? null : last - (readings[0]?.day ?? 0)
      const day = given.maybe(DAY) ?? passed ?? given.number(DAY)
      return reckonCourse(start, celsius, day, readings)
    }
  },
  {
    id: 'gas',
    inputs: [SUGAR, DAYS, AT, BOTTLE, HEADSPACE],
    reckon: given => reckonGas(sealedOf(given))
  },
  {
    id: 'bleach',
    inputs: [LABEL, ADDITIVE, TARGET, WATER],
    reckon: given => {
      const strength = given.maybe(LABEL)
      const additive = given.choice(ADDITIVE)
      return reckonBleach(
        { strength, additives: additive === 'plain' ? [] : [additive] },
        given.number(TARGET),
        given.amount(WATER)
      )
    }
  },
  {
    id: 'salt',
    inputs: [SALTED_FOR, SALT, SALT_KIND, VEGETABLES],
    reckon: given => {
      const salt = given.amount(SALT)
      const kind = given.choice(SALT_KIND)
      const weight = salt.dimension === 'mass' ? weighedSalt(salt) : saltWeight(salt, kind)
      return reckonSalt(weight, given.amount(VEGETABLES), given.choice(SALTED_FOR))
    }
  },
  {
    id: 'brix',
    inputs: [BEFORE, AFTER],
    reckon: given => reckonBrix(given.number(BEFORE), given.maybe(AFTER) ?? undefined)
  },
  {
    id: 'agree',
    inputs: [BOTH, FIRST, SECOND, NEITHER],
    reckon: given =>
      reckonAgree(
        given.number(BOTH),
        given.number(FIRST),
        given.number(SECOND),
        given.number(NEITHER)
      )
  }
]

/** Without a reading the starter's kind counts. */
export function starterOf(given: GivenInputs): Starter {
  const ph = given.maybe(STARTER_PH)
  return ph === null
    ? { kind: given.choice(STARTER_KIND) }
    : { ph: starterReading(ph, instrumentOf(given)) }
}

/** Starter as a share of the batch, from 0 to 1. */
export const starterShareOf = (given: GivenInputs): number =>
  shareOf(inUnit(given.amount(STARTER), 'mL'), inUnit(given.amount(BATCH), 'mL'))

export function instrumentOf(given: GivenInputs): PhInstrument | undefined {
  const instrument = given.choice(INSTRUMENT)
  return instrument === 'unknown' ? undefined : instrument
}

/** Without a pH to start from the first reading counts, and without that what is usual. */
export function courseOf(given: GivenInputs): {
  start: Span
  celsius: number
  readings: readonly AcidReading[]
} {
  const instrument = instrumentOf(given)
  const readings = given.readings(READINGS, instrument)
  const ph = given.maybe(START_PH)
  const start = ph === null ? (readings[0]?.ph ?? USUAL_START) : starterReading(ph, instrument)
  return { start, celsius: celsiusOf(given), readings }
}

export const sealedOf = (given: GivenInputs): Sealed => ({
  sugar: exactly(given.number(SUGAR)),
  days: given.maybe(DAYS),
  celsius: celsiusOf(given),
  headspace: given.number(HEADSPACE) / 100,
  bottle: given.choice(BOTTLE)
})

const celsiusOf = (given: GivenInputs): number => inUnit(given.amount(AT), 'C')
