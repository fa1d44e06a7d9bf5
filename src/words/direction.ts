/** The direction in which a language is written. */
export function directionOf(tag: string): 'ltr' | 'rtl' {
  return RIGHT_TO_LEFT.has(tag.split('-')[0] ?? '') ? 'rtl' : 'ltr'
}

/** Languages whose usual script runs from the right (Unicode CLDR, scripts Arab and Hebr). */
const RIGHT_TO_LEFT = new Set(['ar', 'dv', 'fa', 'he', 'ku', 'ps', 'sd', 'ug', 'ur', 'yi'])

/** The tag by which dates and numbers are written, in the digits that a strip, a dial and a lock show. */
export const inLatinDigits = (tag: string): string => `${tag}-u-nu-latn`
