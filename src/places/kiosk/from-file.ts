import { openersOf, type WholeBundle } from '../../opening/whole-bundle.ts'

const textIn = (id: string): string => document.getElementById(id)?.textContent ?? ''

/** What the one file holds, in place of what a server would give. */
const whole: WholeBundle = JSON.parse(textIn('jarside-trees'))

export const { catalogue, kiosk: kioskWords } = whole
export const openers = openersOf(whole)
export const officeText = textIn('jarside-office')
/** The day on which the file was written, as YYYY-MM-DD. */
export const packedOn = textIn('jarside-packed-on')
