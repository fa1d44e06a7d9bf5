import { nameIn, textIn } from '../office/local-text.ts'
import type { Referral } from '../office/referral.ts'
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
