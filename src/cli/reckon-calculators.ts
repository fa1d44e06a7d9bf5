import { kappa } from '../science/agreement.ts'
import { type AcidReading, USUAL_START } from '../science/course.ts'
import { BOTTLES, type BottleKind } from '../science/gas.ts'
import {
  INSTRUMENTS,
  type PhInstrument,
  STARTER_KINDS,
  type Starter,
  type StarterKind,
  starterReading
} from '../science/mix.ts'
import { type SaltKind, saltWeight, TABLESPOON, weighedSalt } from '../science/salt.ts'
import type { Additive } from '../science/sanitizer.ts'
import { exactly } from '../science/span.ts'
import { inUnit } from '../science/units.ts'
import { reckonAgree, reckonTable } from '../words/reckoned/agree.ts'
import { reckonBleach } from '../words/reckoned/bleach.ts'
import { reckonBrix } from '../words/reckoned/brix.ts'
import { reckonCourse } from '../words/reckoned/course.ts'
import { reckonGas } from '../words/reckoned/gas.ts'
import { reckonMix } from '../words/reckoned/mix.ts'
import type { Reckoned } from '../words/reckoned/reckoned.ts'
import { reckonSalt, type SaltedFor } from '../words/reckoned/salt.ts'
import { BadUse } from './bad-use.ts'
import { needed, readAmount, readName, readNumber } from './read-amount.ts'

/** What stands on the command line behind a calculator's name. */
export interface CalculatorOptions {
  readonly values: Readonly<Record<string, string | undefined>>
  readonly numbers: readonly string[]
}

const namesOf = <N extends string>(of: Readonly<Record<N, unknown>>) => Object.keys(of) as N[]

/** Every calculator by its name. @throws BadUse or BadInput where what was asked cannot be. */
export const CALCULATORS: Readonly<Record<string, (asked: CalculatorOptions) => Reckoned>> = {
  mix: ({ values }) =>
    reckonMix(
      starterOf(values),
      readAmount('--starter', needed('--starter', values.starter, '2cup'), 'volume', '2cup'),
      readAmount('--batch', needed('--batch', values.batch, '1gal'), 'volume', '1gal')
    ),
  course: ({ values }) => {
    const instrument = instrumentOf(values.instrument)
    const readings = (values.readings ?? '')
      .split(',')
      .filter(text => text.trim() !== '')
      .map(text => readingOf(text, instrument))
      .sort((a, b) => a.day - b.day)
    const start =
      values['start-ph'] === undefined
        ? (readings[0]?.ph ?? USUAL_START)
        : starterReading(readNumber('--start-ph', values['start-ph'], 'pH'), instrument)
    const last = readings.at(-1)?.day
    const day = values.day ?? (last === undefined ? undefined : `${last - (readings[0]?.day ?? 0)}`)
    return reckonCourse(
      start,
      celsiusOf(values.at),
      readNumber('--day', needed('--day', day, '8'), 'days'),
      readings
    )
  },
  gas: ({ values }) =>
    reckonGas({
      sugar: exactly(readNumber('--sugar', needed('--sugar', values.sugar, '20g/L'), 'g/L')),
      days: values.days === undefined ? null : readNumber('--days', values.days, 'days'),
      celsius: celsiusOf(values.at),
      headspace: readNumber('--headspace', values.headspace ?? '5', '%') / 100,
      bottle: readName<BottleKind>('--bottle', values.bottle ?? 'unknown', namesOf(BOTTLES))
    }),
  bleach: ({ values }) =>
    reckonBleach(
      {
        strength: values.label === undefined ? null : readNumber('--label', values.label, '%'),
        additives:
          values.additive === undefined
            ? []
            : [readName<Additive>('--additive', values.additive, ['scented', 'gel', 'splashless'])]
      },
      readNumber('--target', values.target ?? '200', 'ppm'),
      readAmount('--water', values.water ?? '1gal', 'volume', '1gal')
    ),
  salt: ({ values }) => {
    const written = needed('--salt', values.salt, '3tbsp')
    const kind = readName<SaltKind>(
      '--salt-kind',
      values['salt-kind'] ?? 'unknown',
      namesOf(TABLESPOON)
    )
    const salt = /(g|kg|oz|lbs?|grams?|ounces?|pounds?)$/i.test(written.trim())
      ? weighedSalt(readAmount('--salt', written, 'mass', '45g'))
      : saltWeight(readAmount('--salt', written, 'volume', '3tbsp'), kind)
    const vegetables = needed('--vegetables', values.vegetables, '5lb')
    return reckonSalt(
      salt,
      readAmount('--vegetables', vegetables, 'mass', '5lb'),
      readName<SaltedFor>('--for', values.for ?? 'other', ['kraut', 'dill', 'kimchi', 'other'])
    )
  },
  brix: ({ numbers }) => {
    const [before, after, ...rest] = numbers
    if (before === undefined || rest.length > 0) {
      throw new BadUse('Write one reading, or two: `jarside reckon brix 8.0 4.0`.')
    }
    return reckonBrix(
      readNumber('the reading', before, '°Bx'),
      after === undefined ? undefined : readNumber('the later reading', after, '°Bx')
    )
  },
  agree: ({ values, numbers }) => {
    const counts = numbers.map(text => readNumber('a count', text, ''))
    const size = Math.sqrt(counts.length)
    if (!Number.isInteger(size) || size < 2) {
      throw new BadUse('Write 4, 9, 16 … counts, row by row: `jarside reckon agree 20 5 10 15`.')
    }
    const weights = readName('--weights', values.weights ?? 'none', ['none', 'linear', 'quadratic'])
    const [both = 0, first = 0, second = 0, neither = 0] = counts
    if (size === 2) return reckonAgree(both, first, second, neither)
    const table = Array.from({ length: size }, (_, row) =>
      counts.slice(row * size, (row + 1) * size)
    )
    return reckonTable(kappa(table, weights))
  }
}

function starterOf(values: CalculatorOptions['values']): Starter {
  const { 'starter-ph': ph, 'starter-kind': kind } = values
  if (ph !== undefined) {
    return {
      ph: starterReading(readNumber('--starter-ph', ph, 'pH'), instrumentOf(values.instrument))
    }
  }
  return {
    kind: readName<StarterKind>('--starter-kind', kind ?? 'unknown', namesOf(STARTER_KINDS))
  }
}

const instrumentOf = (text: string | undefined): PhInstrument | undefined =>
  text === undefined
    ? undefined
    : readName<PhInstrument>('--instrument', text, namesOf(INSTRUMENTS))

const celsiusOf = (text: string | undefined): number =>
  inUnit(readAmount('--at', needed('--at', text, '75F'), 'temperature', '75F'), 'C')

function readingOf(text: string, instrument: PhInstrument | undefined): AcidReading {
  const [day = '', ph, ...rest] = text.split(':')
  if (ph === undefined || rest.length > 0) {
    throw new BadUse(
      `\`${text}\` is no reading: write the day, a colon and the pH, like \`4:4.1\`.`
    )
  }
  return {
    day: readNumber('a day', day, 'days'),
    ph: starterReading(readNumber('a pH', ph, 'pH'), instrument)
  }
}
