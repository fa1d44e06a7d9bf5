import { nearestNames } from '../findings/nearest-name.ts'
import { BadInput } from '../science/bad-input.ts'
import type { Reckoned } from '../words/reckoned/reckoned.ts'
import { createWords, SOURCE_TAG } from '../words/words.ts'
import { BadUse, didYouMean } from './bad-use.ts'
import { type Command, readArguments } from './command.ts'
import { CALCULATORS } from './reckon-calculators.ts'
import { RECKON_MANUAL } from './reckon-manual.ts'
import { say } from './terminal.ts'

const TEXT = { type: 'string' } as const

/** `jarside reckon`: the calculators in a terminal. */
export const reckon: Command = {
  name: 'reckon',
  summary: 'work out acidity, gas, bleach, salt, sugar, agreement',
  manual: RECKON_MANUAL,
  async run(args, terminal, open) {
    const { values, positionals } = readArguments(args, {
      starter: TEXT,
      batch: TEXT,
      'starter-ph': TEXT,
      'starter-kind': TEXT,
      instrument: TEXT,
      'start-ph': TEXT,
      at: TEXT,
      day: TEXT,
      readings: TEXT,
      sugar: TEXT,
      days: TEXT,
      headspace: TEXT,
      bottle: TEXT,
      label: TEXT,
      target: TEXT,
      water: TEXT,
      additive: TEXT,
      salt: TEXT,
      'salt-kind': TEXT,
      vegetables: TEXT,
      for: TEXT,
      weights: TEXT,
      lang: TEXT,
      json: { type: 'boolean', default: false },
      in: TEXT,
      help: { type: 'boolean' }
    })
    const { json, in: folder, lang = SOURCE_TAG, help: _, ...given } = values
    const [name, ...numbers] = positionals
    const calculator = Object.hasOwn(CALCULATORS, name ?? '') ? CALCULATORS[name ?? ''] : undefined
    if (calculator === undefined) {
      const names = Object.keys(CALCULATORS)
      throw new BadUse(
        `Name a calculator: ${names.join(', ')}.${didYouMean(nearestNames(name ?? '', names))}`
      )
    }
    const { loaded } = await open(folder)
    const languages = Object.keys(loaded.words)
    if (!languages.includes(lang)) {
      throw new BadUse(`There are no words in \`${lang}\`. Languages: ${languages.join(', ')}.`)
    }
    const words = createWords(loaded.words, lang)
    const found = reckoned(() => calculator({ values: given, numbers }))
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

function reckoned(work: () => Reckoned): Reckoned {
  try {
    return work()
  } catch (error) {
    if (error instanceof BadInput) throw new BadUse(error.message)
    throw error
  }
}
