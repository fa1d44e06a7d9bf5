import { numbersOf } from '../office/constants.ts'
import type { Referral } from '../office/referral.ts'
import { type Making, section } from './making.ts'
import type { Report } from './report.ts'

/** Whom to call, with what is to be said about an office whose numbers are missing or old. */
export function callText(report: Report, making: Making): string[] {
  const { words, paint } = making
  const lines = report.referrals.flatMap(referral => referralLines(referral, making))
  const doubt =
    report.office === 'current' ? [] : [words.t(`ui:referral.office-${report.office}.say`)]
  // Nothing competes with an emergency: what is wrong with the office's numbers can wait.
  const said = report.emergency ? lines : [...lines, ...doubt]
  return section(paint, words.t('ui:who-to-call'), said)
}

/** The two numbers that stand at the foot of every screen. */
export function footText({ words, office }: Making): string {
  const { emergency, poisonHelp } = numbersOf(office?.country)
  const line = (to: string, phone: string) => withPhone(words.t(`ui:referral.${to}.name`), phone)
  return [line('emergency', emergency), line('poison-help', poisonHelp)].join(' · ')
}

function referralLines({ to, name, phone, say }: Referral, { words, paint }: Making): string[] {
  const who = withPhone(name ?? words.t(`ui:referral.${to}.name`), phone)
  return [`- ${paint.strong(who)}`, `  ${say ?? words.t(`ui:referral.${to}.say`)}`]
}

/** A name and its number; a name that says the number already says it once. */
const withPhone = (name: string, phone: string | null): string =>
  phone === null || name.includes(phone) ? name : `${name}: ${phone}`
