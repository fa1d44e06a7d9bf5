import type { AcidReading } from '../science/course.ts'
import { type PhInstrument, starterReading } from '../science/mix.ts'
import type {
  CalculatorInput,
  GivenInputs,
  InputId,
  PlainNumberInput
} from '../words/reckoned/inputs.ts'
import { BadUse } from './bad-use.ts'
import { needed, readAmount, readName, readNumber } from './read-amount.ts'

/** What stands on the command line behind a calculator's name. */
export interface CalculatorOptions {
  readonly values: Readonly<Record<string, string | undefined>>
  readonly numbers: readonly string[]
}

/** The inputs that are written without an option, by where they stand, and what a message calls them. */
const UNNAMED: Readonly<Partial<Record<InputId, readonly [at: number, name: string]>>> = {
  before: [0, 'the reading'],
  after: [1, 'the later reading'],
  both: [0, 'a count'],
  first: [1, 'a count'],
  second: [2, 'a count'],
  neither: [3, 'a count']
}

/** Whether an input is an option of the command. */
export const isOption = ({ id }: CalculatorInput): boolean => UNNAMED[id] === undefined

/** The inputs of a calculator as a command line gives them. Each throws BadUse where it cannot be read. */
export function givenBy({ values, numbers }: CalculatorOptions): GivenInputs {
  const textOf = (input: CalculatorInput): string | undefined => {
    const unnamed = UNNAMED[input.id]
    return (unnamed ? numbers[unnamed[0]] : values[input.id]) ?? input.otherwise
  }
  const nameOf = ({ id }: CalculatorInput): string => UNNAMED[id]?.[1] ?? `--${id}`
  // Days are written without their unit.
  const exampleOf = ({ start, unit }: PlainNumberInput) => `${start}${unit === 'days' ? '' : unit}`
  return {
    number: input => {
      const name = nameOf(input)
      return readNumber(name, needed(name, textOf(input), exampleOf(input)), input.unit)
    },
    maybe: input => {
      const text = textOf(input)
      return text === undefined ? null : readNumber(nameOf(input), text, input.unit)
    },
    amount: input => {
      const name = nameOf(input)
      const example = `${input.start}${input.units[0] ?? ''}`
      return readAmount(name, needed(name, textOf(input), example), input.dimensions, example)
    },
    choice: input => {
      const text = textOf(input)
      if (text === undefined) return input.leftOut ?? input.start
      const names = input.options.filter(option => option !== input.leftOut)
      return readName(nameOf(input), text, names)
    },
    readings: (input, instrument) =>
      (textOf(input) ?? '')
        .split(',')
        .filter(text => text.trim() !== '')
        .map(text => readingOf(text, instrument))
        .sort((a, b) => a.day - b.day)
  }
}

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
