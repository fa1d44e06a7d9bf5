import type { ComponentChildren } from 'preact'
import { type AcidReading, USUAL_START } from '../../science/course.ts'
import type { BottleKind, Sealed } from '../../science/gas.ts'
import {
  type PhInstrument,
  type Starter,
  type StarterKind,
  starterReading
} from '../../science/mix.ts'
import { type SaltKind, saltWeight, weighedSalt } from '../../science/salt.ts'
import type { Additive } from '../../science/sanitizer.ts'
import { exactly, type Span } from '../../science/span.ts'
import { inUnit, UNITS } from '../../science/units.ts'
import { reckonAgree } from '../../words/reckoned/agree.ts'
import { reckonBleach } from '../../words/reckoned/bleach.ts'
import { reckonBrix } from '../../words/reckoned/brix.ts'
import { reckonCourse } from '../../words/reckoned/course.ts'
import { reckonGas } from '../../words/reckoned/gas.ts'
import { reckonMix } from '../../words/reckoned/mix.ts'
import { readPasted } from '../../words/reckoned/pasted-readings.ts'
import type { Reckoned } from '../../words/reckoned/reckoned.ts'
import { reckonSalt, type SaltedFor } from '../../words/reckoned/salt.ts'
import { CourseChart } from './charts/course-chart.tsx'
import { MixChart } from './charts/mix-chart.tsx'
import { PressureChart } from './charts/pressure-chart.tsx'
import { amountIn, choiceIn, type Field, maybeIn, numberIn, type TypedFields } from './fields.ts'

export type CalculatorId = 'mix' | 'course' | 'gas' | 'bleach' | 'salt' | 'brix' | 'agree'

/** One calculator: its inputs, what they come to, and its picture where it has one. */
export interface Calculator {
  readonly id: CalculatorId
  readonly fields: readonly Field[]
  /** @throws NotANumber or BadInput where the inputs cannot be. */
  reckon(values: TypedFields): Reckoned
  chart?(values: TypedFields, says: string): ComponentChildren
  /** Lines of pasted text that no reading was found in. */
  notUnderstood?(values: TypedFields): readonly string[]
}

const INSTRUMENT: Field = {
  kind: 'choice',
  id: 'instrument',
  options: ['meter', 'narrow-strip', 'wide-strip', 'unknown'],
  start: 'meter'
}
const AT: Field = { kind: 'number', id: 'at', units: ['F', 'C'], start: '75' }

/** Every calculator of the workbench. */
export const CALCULATORS: readonly Calculator[] = [
  {
    id: 'mix',
    fields: [
      {
        kind: 'number',
        id: 'starter',
        units: ['cup', 'floz', 'tbsp', 'mL', 'L', 'quart'],
        start: '2',
        slider: { from: 0.25, to: 6, step: 0.25 }
      },
      { kind: 'number', id: 'batch', units: ['gal', 'quart', 'cup', 'L', 'mL'], start: '1' },
      { kind: 'number', id: 'starter-ph', units: ['pH'], start: '3.0' },
      INSTRUMENT,
      {
        kind: 'choice',
        id: 'starter-kind',
        options: ['two-weeks-or-more', 'one-to-two-weeks', 'young-or-chilled', 'unknown'],
        start: 'unknown'
      }
    ],
    reckon: values =>
      reckonMix(starterIn(values), amountIn(values, 'starter'), amountIn(values, 'batch')),
    chart: (values, says) => {
      const share =
        inUnit(amountIn<'volume'>(values, 'starter'), 'mL') /
        inUnit(amountIn<'volume'>(values, 'batch'), 'mL')
      return <MixChart starter={starterIn(values)} share={share} says={says} />
    }
  },
  {
    id: 'course',
    fields: [
      AT,
      { kind: 'text', id: 'readings', start: '0\t4.5\n3\t4.0\n7\t3.6' },
      INSTRUMENT,
      { kind: 'number', id: 'start-ph', units: ['pH'], start: '' }
    ],
    reckon: values => {
      const { start, readings, celsius } = courseIn(values)
      const day = (readings.at(-1)?.day ?? 7) - (readings[0]?.day ?? 0)
      return reckonCourse(start, celsius, day, readings)
    },
    chart: (values, says) => <CourseChart {...courseIn(values)} says={says} />,
    notUnderstood: values => readPasted(values.readings ?? '', instrumentIn(values)).notUnderstood
  },
  {
    id: 'gas',
    fields: [
      {
        kind: 'number',
        id: 'sugar',
        units: ['g/L'],
        start: '20',
        slider: { from: 0, to: 60, step: 1 }
      },
      { kind: 'number', id: 'days', units: ['days'], start: '3' },
      AT,
      {
        kind: 'choice',
        id: 'bottle',
        options: [
          'swing-top',
          'beer',
          'plastic',
          'sparkling',
          'square',
          'canning-jar',
          'wine',
          'unknown'
        ],
        start: 'swing-top'
      },
      { kind: 'number', id: 'headspace', units: ['%'], start: '5' }
    ],
    reckon: values => reckonGas(sealedIn(values)),
    chart: (values, says) => <PressureChart sealed={sealedIn(values)} says={says} />
  },
  {
    id: 'bleach',
    fields: [
      { kind: 'number', id: 'label', units: ['%'], start: '7.5' },
      {
        kind: 'choice',
        id: 'additive',
        options: ['plain', 'scented', 'gel', 'splashless'],
        start: 'plain'
      },
      { kind: 'number', id: 'target', units: ['ppm'], start: '200' },
      { kind: 'number', id: 'water', units: ['gal', 'quart', 'L', 'cup'], start: '1' }
    ],
    reckon: values => {
      const additive = choiceIn<Additive | 'plain'>(values, 'additive')
      return reckonBleach(
        {
          strength: maybeIn(values, 'label'),
          additives: additive === 'plain' ? [] : [additive]
        },
        numberIn(values, 'target'),
        amountIn(values, 'water')
      )
    }
  },
  {
    id: 'salt',
    fields: [
      {
        kind: 'choice',
        id: 'for',
        options: ['kraut', 'dill', 'kimchi', 'other'],
        start: 'kraut'
      },
      { kind: 'number', id: 'salt', units: ['tbsp', 'tsp', 'cup', 'g', 'oz'], start: '3' },
      {
        kind: 'choice',
        id: 'salt-kind',
        options: ['canning', 'table', 'kosher-flake', 'coarse-sea', 'unknown'],
        start: 'canning'
      },
      { kind: 'number', id: 'vegetables', units: ['lb', 'oz', 'kg', 'g'], start: '5' }
    ],
    reckon: values =>
      reckonSalt(saltIn(values), amountIn(values, 'vegetables'), choiceIn<SaltedFor>(values, 'for'))
  },
  {
    id: 'brix',
    fields: [
      { kind: 'number', id: 'before', units: ['°Bx'], start: '6' },
      { kind: 'number', id: 'after', units: ['°Bx'], start: '4' }
    ],
    reckon: values => reckonBrix(numberIn(values, 'before'), maybeIn(values, 'after') ?? undefined)
  },
  {
    id: 'agree',
    fields: (['both', 'first', 'second', 'neither'] as const).map((id, at) => ({
      kind: 'number',
      id,
      units: [],
      start: ['20', '5', '10', '15'][at] ?? ''
    })),
    reckon: values =>
      reckonAgree(
        numberIn(values, 'both'),
        numberIn(values, 'first'),
        numberIn(values, 'second'),
        numberIn(values, 'neither')
      )
  }
]

/** Without a reading the starter's kind counts. */
function starterIn(values: TypedFields): Starter {
  const ph = maybeIn(values, 'starter-ph')
  return ph === null
    ? { kind: choiceIn<StarterKind>(values, 'starter-kind') }
    : { ph: starterReading(ph, instrumentIn(values)) }
}

function instrumentIn(values: TypedFields): PhInstrument | undefined {
  const named = choiceIn<PhInstrument | 'unknown'>(values, 'instrument')
  return named === 'unknown' ? undefined : named
}

function courseIn(values: TypedFields): {
  start: Span
  celsius: number
  readings: readonly AcidReading[]
} {
  const { readings } = readPasted(values.readings ?? '', instrumentIn(values))
  const told = maybeIn(values, 'start-ph')
  return {
    start:
      told === null ? (readings[0]?.ph ?? USUAL_START) : starterReading(told, instrumentIn(values)),
    celsius: inUnit(amountIn<'temperature'>(values, 'at'), 'C'),
    readings
  }
}

const sealedIn = (values: TypedFields): Sealed => ({
  sugar: exactly(numberIn(values, 'sugar')),
  days: maybeIn(values, 'days'),
  celsius: inUnit(amountIn<'temperature'>(values, 'at'), 'C'),
  headspace: numberIn(values, 'headspace') / 100,
  bottle: choiceIn<BottleKind>(values, 'bottle')
})

function saltIn(values: TypedFields): Span {
  const unit = values['salt-unit'] as keyof typeof UNITS
  return UNITS[unit].dimension === 'mass'
    ? weighedSalt(amountIn(values, 'salt'))
    : saltWeight(amountIn(values, 'salt'), choiceIn<SaltKind>(values, 'salt-kind'))
}
