/** The two numbers that stand on every screen; no office pack, link or attribute replaces them. */
export interface CountryNumbers {
  readonly emergency: string
  readonly poisonHelp: string
}

/** Emergency and poison numbers by country (ISO 3166-1 alpha-2). */
export const COUNTRY_NUMBERS: Readonly<Record<string, CountryNumbers>> = Object.freeze({
  US: Object.freeze({ emergency: '911', poisonHelp: '1-800-222-1222' })
})

const HOME: CountryNumbers = { emergency: '911', poisonHelp: '1-800-222-1222' }

/** A country's numbers. One that is not listed gets the home country's: a screen without any is worse. */
export function numbersOf(country: string | undefined): CountryNumbers {
  return country !== undefined && Object.hasOwn(COUNTRY_NUMBERS, country)
    ? (COUNTRY_NUMBERS[country] ?? HOME)
    : HOME
}
