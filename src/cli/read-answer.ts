import { nearestNames } from '../findings/nearest-name.ts'
import type { Answer, Signs, SignValue } from '../tree/answers.ts'
import type {
  ChoiceObservation,
  MeasureObservation,
  Observation,
  SignsObservation
} from '../tree/observation.ts'
import { measured } from '../tree/reading.ts'
import { BadUse, didYouMean } from './bad-use.ts'

const SIGN_WORDS: readonly SignValue[] = ['yes', 'no', 'unsure']

/**
 * Reads what was said of an observation: an answer id, `sign:no`, or a number and its instrument.
 *
 * @throws BadUse that names the nearest answer, or the readings and instruments there are.
 */
export function readAnswer(observation: Observation, said: string): Answer {
  switch (observation.kind) {
    case 'choice':
      return readChoice(observation, said)
    case 'signs':
      return readSign(observation, said)
    case 'measure':
      return readMeasure(observation, said)
  }
}

function readChoice({ id, answers }: ChoiceObservation, said: string): Answer {
  const names = [...answers.map(answer => answer.id), 'unsure']
  if (names.includes(said)) return said
  throw unknown(`\`${id}\` has no answer \`${said}\`.`, said, names)
}

/** Reads what was said of one sign: `sign`, or `sign:no`. @throws BadUse that names the nearest sign. */
export function readSign({ id, signs }: SignsObservation, said: string): Signs {
  const [sign = '', value = 'yes', ...rest] = said.split(':')
  if (['none', 'unsure'].includes(sign)) {
    throw new BadUse(`For the open signs of \`${id}\` use \`--${sign} ${id}\`.`)
  }
  const names = signs.map(each => each.id)
  if (!names.includes(sign)) throw unknown(`\`${id}\` has no sign \`${sign}\`.`, sign, names)
  const word = SIGN_WORDS.find(each => each === value)
  if (word === undefined || rest.length > 0) {
    throw new BadUse(`\`${id}=${said}\` is not clear. After \`:\` stands yes, no or unsure.`)
  }
  return { [sign]: word }
}

function readMeasure(measure: MeasureObservation, said: string): Answer {
  if (said === 'unsure') return 'unsure'
  const [digits = '', instrument, ...rest] = said.split('@')
  const value = readNumber(measure, digits)
  const names = measure.instruments.map(each => each.id)
  if (instrument !== undefined && (rest.length > 0 || !names.includes(instrument))) {
    if (names.length === 0) {
      throw new BadUse(
        `\`${measure.id}\` is counted without an instrument: \`${measure.id}=${digits}\`.`
      )
    }
    const named = [instrument, ...rest].join('@')
    throw unknown(`\`${measure.id}\` has no instrument \`${named}\`.`, named, names)
  }
  return measured(measure, value, instrument)
}

/** A number within the measure's span. @throws BadUse that says which numbers there are. */
export function readNumber(measure: MeasureObservation, digits: string): number {
  const { id, unit, span } = measure
  const written = digits.trim()
  // Number() would also take '', '0x9' and '1e3': nobody reads those off an instrument.
  if (!/^-?\d+(\.\d+)?$/.test(written)) {
    throw new BadUse(`\`${id}\` needs a number such as ${example(unit)}, not \`${digits}\`.`)
  }
  const value = Number(written)
  if (unit === 'day' && !Number.isInteger(value)) {
    throw new BadUse(`\`${id}\` counts whole days: give ${Math.floor(value)}, not ${written}.`)
  }
  if (value < span.from || value > span.to) {
    throw new BadUse(
      `\`${id}\` lies between ${span.from} and ${span.to}, so not ${written}: read it again.`
    )
  }
  return value
}

const example = (unit: MeasureObservation['unit']): string =>
  ({
    ph: '3.9',
    day: '9',
    fahrenheit: '75',
    percent: '10',
    milliliter: '473',
    gram: '45',
    'gram-per-liter': '20',
    'ph-difference': '0.2'
  })[unit]

function unknown(sentence: string, said: string, names: readonly string[]): BadUse {
  const near = nearestNames(said, names)
  return new BadUse(
    `${sentence}${near.length > 0 ? didYouMean(near) : ` There are: ${names.join(', ')}.`}`
  )
}
