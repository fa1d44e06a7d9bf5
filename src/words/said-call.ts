import { nameIn, textIn } from '../office/local-text.ts'
import type { MeasuringPlace, Referral } from '../office/referral.ts'
import { hoursText } from './hours-text.ts'
import type { Words } from './words.ts'

export interface SaidCall {
  readonly to: string
  readonly name: string
  readonly phone: string | null
  readonly say: string
}

export function saidCall({ to, name, phone, say: sentence }: Referral, words: Words): SaidCall {
  return {
    to,
    name: nameIn(name, words.tag) ?? words.t(`ui:referral.${to}.name`),
    phone,
    // What an office wrote in one language is not read out in another.
    say: textIn(sentence, words.tag) ?? words.t(`ui:referral.${to}.say`)
  }
}

/** Where something can be brought in, and when. */
export interface SaidBringIn {
  readonly title: string
  readonly lines: readonly string[]
  /** Null where the office itself says it. */
  readonly callFirst: string | null
}

export function saidBringIn({ name, phone, hours }: MeasuringPlace, words: Words): SaidBringIn {
  return {
    title: words.t('ui:bring-in.title'),
    lines: [
      words.t('ui:bring-in.where', { office: name }),
      ...(hours === null
        ? []
        : [words.t('ui:bring-in.hours', { hours: hoursText(hours, words.tag) })])
    ],
    callFirst: words.t('ui:bring-in.call-first', { phone })
  }
}
