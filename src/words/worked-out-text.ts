import type { Worked } from '../tree/derived.ts'
import { volumeText } from './amount-text.ts'
import type { Words } from './words.ts'

const VOLUMES = new Set(['starter', 'batch'])

/** The arithmetic behind a worked-out measure in one line, or why there is none. */
export function workedOutText(words: Words, worked: Worked | null): string {
  if (worked === null) return words.t('ui:worked-out.not-yet')
  switch (worked.standing) {
    case 'unsure':
      return words.t('ui:worked-out.unsure')
    case 'no-published-range':
      return words.t('ui:worked-out.no-range')
    case 'bad-input':
      return words.t('ui:worked-out.bad-input', worked.shows)
    case 'worked':
      return words.t(`ui:worked-out.${worked.by}`, shownNumbers(words, worked.shows))
  }
}

function shownNumbers(words: Words, shows: Worked['shows']) {
  // With the decimal point of the texts, of strips and of meters, whatever a country writes in prose.
  const format = new Intl.NumberFormat('en-US', { maximumFractionDigits: 2 })
  return Object.fromEntries(
    Object.entries(shows).map(([name, value]) => [
      name,
      VOLUMES.has(name) ? volumeText(words, value) : format.format(value)
    ])
  )
}
