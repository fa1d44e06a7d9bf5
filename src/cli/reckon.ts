import { nearestNames } from '../findings/nearest-name.ts'
import { type Kappa, kappa } from '../science/agreement.ts'
import { BadInput } from '../science/bad-input.ts'
import { reckonTable } from '../words/reckoned/agree.ts'
import { CALCULATORS, type Calculator } from '../words/reckoned/calculators.ts'
import type { Reckoned } from '../words/reckoned/reckoned.ts'
import { createWords, SOURCE_TAG } from '../words/words.ts'
import { BadUse, didYouMean } from './bad-use.ts'
import { type Command, readArguments } from './command.ts'
import { languageNamed } from './named-one.ts'
import { readName, readNumber } from './read-amount.ts'
import { type CalculatorOptions, givenBy, isOption } from './reckon-given.ts'
import { RECKON_MANUAL } from './reckon-manual.ts'
import { say } from './terminal.ts'

const TEXT = { type: 'string' } as const

/** Every input that has a name on the command line. */
const INPUTS = Object.fromEntries(
  CALCULATORS.flatMap(({ inputs }) => inputs)
    .filter(isOption)
    .map(({ id }) => [id, TEXT])
)

/** `jarside reckon`: the calculators in a terminal. */
export const reckon: Command = {
  name: 'reckon',
  summary: 'work out acidity, gas, bleach, salt, sugar, agreement',
  manual: RECKON_MANUAL,
  async run(args, terminal, open) {
    const { values, positionals } = readArguments(args, {
      ...INPUTS,
      weights: TEXT,
      lang: TEXT,
      json: { type: 'boolean', default: false },
      in: TEXT,
      help: { type: 'boolean' }
    })
    const { json, in: folder, lang = SOURCE_TAG, help: _, ...given } = values
    const [name, ...numbers] = positionals
    const calculator = CALCULATORS.find(({ id }) => id === name)
    if (calculator === undefined) {
      const names = CALCULATORS.map(({ id }) => id)
      throw new BadUse(
        `Name a calculator: ${names.join(', ')}.${didYouMean(nearestNames(name ?? '', names))}`
      )
    }
    const { loaded } = await open(folder)
    const words = createWords(loaded.words, languageNamed(lang, Object.keys(loaded.words)))
    const found = reckoned(calculator, { values: given, numbers })
    const says = found.says.map(({ key, values: of }) => words.t(key, of))
    if (json) {
      const { low, mid, high } = found.span ?? { low: null, mid: null, high: null }
      const { unit, sources, more } = found
      const whole = { low, mid, high, unit, says: says.join(' '), sources, ...more }
      say(terminal.output, JSON.stringify(whole, null, 2))
    } else say(terminal.output, ...says, '', ...found.sources.map(source => `- ${source}`))
    return 0
  }
}

/** @throws BadUse where what was asked cannot be. */
function reckoned(calculator: Calculator, options: CalculatorOptions): Reckoned {
  try {
    const table = calculator.id === 'agree' ? tableOf(options) : null
    if (calculator.id === 'brix' && (options.numbers.length === 0 || options.numbers.length > 2)) {
      throw new BadUse('Write one reading, or two: `jarside reckon brix 8.0 4.0`.')
    }
    return table === null ? calculator.reckon(givenBy(options)) : reckonTable(table)
  } catch (error) {
    if (error instanceof BadInput) throw new BadUse(error.message)
    throw error
  }
}

/** Agreement in more than two categories, which the command alone takes; null for two. */
function tableOf({ values, numbers }: CalculatorOptions): Kappa | null {
  const counts = numbers.map(text => readNumber('a count', text, ''))
  const size = Math.sqrt(counts.length)
  if (!Number.isInteger(size) || size < 2) {
    throw new BadUse('Write 4, 9, 16 … counts, row by row: `jarside reckon agree 20 5 10 15`.')
  }
  const weights = readName('--weights', values.weights ?? 'none', ['none', 'linear', 'quadratic'])
  if (size === 2) return null
  const table = Array.from({ length: size }, (_, row) => counts.slice(row * size, (row + 1) * size))
  return kappa(table, weights)
}
