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

/** Whether the numbers of a country are known here. */
export const isKnownCountry = (country: string | undefined): country is string =>
  country !== undefined && Object.hasOwn(COUNTRY_NUMBERS, country)

/**
 * The numbers of an office's country; without an office the home country's, because a screen without
 * any is worse. A pack of a country that is not listed is refused where it is read.
 */
export function numbersOf(country: string | undefined): CountryNumbers {
  return isKnownCountry(country) ? (COUNTRY_NUMBERS[country] ?? HOME) : HOME
}
