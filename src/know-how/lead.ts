import type { FoundAnswers } from './found.ts'
import { cleaned, LANGUAGES } from './terms.ts'

const all = (of: 'emergencies' | 'judging' | 'spares') =>
  LANGUAGES.flatMap(language => language[of].map(each => new RegExp(each)))
const EMERGENCIES = all('emergencies')
const JUDGING = all('judging')
const SPARES = all('spares')

/** What has to come before any answer to a line: never an answer in its place. */
export function leadOf(line: string): FoundAnswers['lead'] {
  const text = cleaned(line)
  if (EMERGENCIES.some(each => each.test(text))) return 'emergency'
  if (SPARES.some(each => each.test(text))) return null
  return JUDGING.some(each => each.test(text)) ? 'look' : null
}
