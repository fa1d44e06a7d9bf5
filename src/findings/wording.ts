import type { Facts } from './facts.ts'

/** What a finding of one code says, and how its author mends it. */
export interface Entry {
  readonly says: (facts: Facts) => string
  readonly remedy: (facts: Facts) => string
}

type Fact = Facts[string] | undefined

/** An authored name or value in backticks, shortened and without control characters. */
export function quoted(fact: Fact): string {
  const plain = clean(String(fact ?? ''))
  return `\`${plain.length > 60 ? `${plain.slice(0, 59)}…` : plain}\``
}

/** Several names in a sentence: `a`, `b` or `c`. */
export function named(fact: Fact, last: 'or' | 'and' = 'or'): string {
  const names = (Array.isArray(fact) ? fact : [fact]).map(quoted)
  if (names.length < 2) return names.join('')
  return `${names.slice(0, -1).join(', ')} ${last} ${names.at(-1)}`
}

/** ` Did you mean …?` where there is a near name, else nothing. */
export const meant = (facts: Facts): string =>
  isFilled(facts.near) ? ` Did you mean ${named(facts.near)}?` : ''

/** Whether a fact lists anything. */
export const isFilled = (fact: Fact): fact is readonly string[] =>
  Array.isArray(fact) && fact.length > 0

/** Text that cannot steer a terminal or turn the direction of writing. */
export const clean = (text: string): string => text.replace(/[\p{Cc}\p{Cf}\u2028\u2029]/gu, '·')
