import { numbersOf } from '../office/constants.ts'
import type { Words } from './words.ts'

/** The two numbers that stand at the foot of every screen, whatever the office. */
export function footNumbers(
  words: Words,
  country: string | undefined
): readonly { readonly name: string; readonly phone: string }[] {
  const { emergency, poisonHelp } = numbersOf(country)
  return [
    { name: words.t('ui:referral.emergency.name'), phone: emergency },
    { name: words.t('ui:referral.poison-help.name'), phone: poisonHelp }
  ]
}
