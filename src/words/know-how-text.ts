import type { OfficePack } from '../office/office-pack.ts'
import { referralFor } from '../office/referral.ts'
import { isPast } from '../office/stale.ts'
import type { KnowHow } from '../tree/know-how.ts'
import { type SaidCall, saidCall } from './said-call.ts'
import { type CitedSource, entriesOf, type SourceLedger } from './sources.ts'
import type { Words } from './words.ts'

/** An answer to a how-to question in one language; every form arranges this. */
export interface SaidKnowHow {
  readonly id: string
  readonly ask: string
  readonly answer: string
  /** What is done, a drawing each, in this order. */
  readonly shows: readonly { readonly picture: string; readonly caption: string }[]
  /** What kind of ground it stands on. */
  readonly basis: string
  readonly sources: readonly CitedSource[]
  /** Whom to ask when it is beyond this answer. */
  readonly beyond: readonly SaidCall[]
  readonly draft: string | null
  /** By when it is to be reviewed, or that it should have been. */
  readonly due: string
}

/** Where an answer is said: whose office it is, and on what day. */
export interface SaidWhere {
  readonly office: OfficePack | null
  readonly today: Date
}

/** Words an answer. */
export function sayKnowHow(
  { id, because, basis, beyond, review, pictures }: KnowHow,
  words: Words,
  ledger: SourceLedger,
  { office, today }: SaidWhere
): SaidKnowHow {
  const late = isPast(review.due, today)
  return {
    id,
    ask: words.t(`know-how:${id}.ask`),
    answer: words.t(`know-how:${id}.answer`),
    shows: pictures.map(picture => ({
      picture,
      caption: words.t(`know-how:${id}.pictures.${picture}`)
    })),
    basis: words.t(`ui:know-how.basis.${basis}`),
    sources: entriesOf(because, ledger),
    beyond: beyond.map(whom =>
      whom === 'pharmacist' || whom === 'vet'
        ? {
            to: whom,
            name: words.t(`ui:know-how.${whom}.name`),
            phone: null,
            say: words.t(`ui:know-how.${whom}.say`)
          }
        : saidCall(referralFor(office, whom, today), words)
    ),
    draft: review.state === 'draft' ? words.t('ui:draft') : null,
    due: words.t(late ? 'ui:know-how.overdue' : 'ui:know-how.due', { day: review.due })
  }
}
