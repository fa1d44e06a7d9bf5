/** The direction in which a language is written. */
export const directionOf = (tag: string): 'ltr' | 'rtl' => (RIGHT_TO_LEFT.test(tag) ? 'rtl' : 'ltr')

/** Languages whose usual script runs from the right (Unicode CLDR, scripts Arab and Hebr). */
const RIGHT_TO_LEFT = /^(ar|dv|fa|he|ku|ps|sd|ug|ur|yi)\b/

/** The tag by which dates and numbers are written, in the digits that a strip, a dial and a lock show. */
export const inLatinDigits = (tag: string): string => `${tag}-u-nu-latn`
