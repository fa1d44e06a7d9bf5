import { type Answer, type Interval, isInterval } from '../tree/answers.ts'
import { WORKED_OUT } from '../tree/derived.ts'
import type { Observation } from '../tree/observation.ts'
import { volumeText } from './amount-text.ts'
import { answerLabel } from './tree-texts.ts'
import type { Words } from './words.ts'

/** An answer as a person reads it back: the label, the signs seen, or the reading and its instrument. */
export function answerText(words: Words, observation: Observation, answer: Answer): string {
  const label = (id: string) => answerLabel(words, observation.id, id)
  if (typeof answer === 'string') return label(answer)
  if (isInterval(answer)) {
    if (answer.instrument === WORKED_OUT) return workedOutRange(words, observation, answer)
    const reading = readingText(words, observation, answer.reading)
    if (!answer.instrument) return reading
    const instrument = words.t(`observations:${observation.id}.instruments.${answer.instrument}`)
    return `${reading} (${instrument})`
  }
  const signs = Object.entries(answer)
  const seen = signs.filter(([, value]) => value === 'yes').map(([sign]) => label(sign))
  const unsure = signs.filter(([, value]) => value === 'unsure').map(([sign]) => label(sign))
  if (seen.length + unsure.length === 0) return label('none')
  // Nobody reads a list of everything that is not known.
  if (unsure.length > 1 && unsure.length === signs.length) return label('unsure')
  if (unsure.length > 1 && unsure.length + seen.length === signs.length) {
    return [...seen, words.t('ui:unsure-of-rest')].join('; ')
  }
  const doubt = unsure.length > 0 ? [`${label('unsure')}: ${unsure.join('; ')}`] : []
  return [...seen, ...doubt].join('; ')
}

function readingText(words: Words, observation: Observation, value: number): string {
  if (observation.kind !== 'measure') throw new Error(`${observation.id} is not a measure`)
  if (observation.unit === 'milliliter') return volumeText(words, value)
  return words.t(`ui:units.${observation.unit}`, { count: value, value })
}

function workedOutRange(words: Words, observation: Observation, { low, high }: Interval): string {
  const text = (value: number) => readingText(words, observation, Number(value.toFixed(1)))
  return low === high
    ? text(low)
    : words.t('ui:worked-out.range', { from: text(low), to: text(high) })
}
