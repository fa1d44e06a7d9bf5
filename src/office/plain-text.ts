/** A text that says something, with no markup and nothing that steers a screen or turns its direction. */
export const PLAIN_TEXT =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for.
  /^(?=[\s\S]*\S)(?![\s\S]*(?:<[A-Za-z/!?]|[\u0000-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]))[\s\S]{1,600}$/

/** A phone number as it is dialed: digits with what parts them, and an extension where there is one. */
export const PHONE = /^\+?\(?\d[\d ().-]{1,22}\d(?: ?(?:x|ext\.?) ?\d{1,6})?$/

/** A county by its digits: two for the state, three for the county (INCITS 31). */
export const COUNTY_CODE = /^\d{5}$/

/** A time of day, from 00:00 to 23:59. */
export const CLOCK = /^(?:[01]\d|2[0-3]):[0-5]\d$/

/** Where plain pages lie: a folder as seen from the pages, or a web address. */
export const PAGES_FOLDER = /^(?=.)(?:https?:\/\/[\w.-]+(?::\d+)?\/|\/)?(?:[\w~.-]+\/)*[\w~.-]*$/

const DAY = /^\d{4}-\d\d-\d\d$/

/** Whether a text is a day of the calendar, written YYYY-MM-DD. */
export function isDay(text: string): boolean {
  const moment = DAY.test(text) ? Date.parse(`${text}T00:00:00Z`) : Number.NaN
  return !Number.isNaN(moment) && new Date(moment).toISOString().startsWith(text)
}

/** Whether the clocks of this device know a time zone by this name. */
export function isZone(name: string): boolean {
  try {
    new Intl.DateTimeFormat('en', { timeZone: name })
    return true
  } catch {
    return false
  }
}

/** What a phone dials for a number: its digits, and the extension as the form for addresses has it. */
export function dialed(phone: string): string {
  const [number = '', extension] = phone.split(/ ?(?:x|ext\.?) ?/)
  const digits = number.replace(/[^+\d]/g, '')
  return `tel:${digits}${extension === undefined ? '' : `;ext=${extension}`}`
}
