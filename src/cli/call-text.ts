import { numbersOf } from '../office/constants.ts'
import type { Making } from './making.ts'

/** The two numbers that stand at the foot of every screen. */
export function footText({ words, office }: Making): string {
  const { emergency, poisonHelp } = numbersOf(office?.country)
  const line = (to: string, phone: string) => withPhone(words.t(`ui:referral.${to}.name`), phone)
  return [line('emergency', emergency), line('poison-help', poisonHelp)].join(' · ')
}

/** A name and its number; a name that says the number already says it once. */
export const withPhone = (name: string, phone: string | null): string =>
  phone === null || name.includes(phone) ? name : `${name}: ${phone}`
