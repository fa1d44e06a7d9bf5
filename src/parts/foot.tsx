import type { ComponentChildren } from 'preact'
import { isOpen, noticesAt } from '../office/hours.ts'
import { type LocalText, nameIn, textIn } from '../office/local-text.ts'
import type { OfficePack } from '../office/office-pack.ts'
import { referralFor } from '../office/referral.ts'
import { footNumbers } from '../words/foot-numbers.ts'
import { Phone } from './phone.tsx'
import { useSpeech } from './setting.tsx'
import { Text } from './text.tsx'

/** The foot of every screen: the two fixed numbers in sight, the office and the rest folded. */
export function Foot({
  office,
  today,
  below,
  children
}: {
  office: OfficePack | null
  today: Date
  /** What stays in sight under it. */
  below?: ComponentChildren
  /** What this place can do besides. */
  children?: ComponentChildren
}) {
  const { words } = useSpeech()
  const desk = referralFor(office, 'office', today)
  const notices = office === null ? [] : noticesAt(office, today)
  return (
    <footer class="foot">
      <ul class="foot-numbers" aria-label={words.t('ui:who-to-call')}>
        {footNumbers(words, office?.country).map(({ name, phone }) => (
          <li key={name}>
            {name} <Phone number={phone} />
          </li>
        ))}
      </ul>
      <details class="foot-more">
        <summary>{words.t('ui:more')}</summary>
        {children}
        {notices.map(({ id, text }) => (
          <Notice key={id} text={text} />
        ))}
        <p class="foot-office">
          {office?.office.name ?? words.t('ui:referral.office-missing.name')}{' '}
          {desk.phone !== null && <Phone number={desk.phone} />}
          {office?.hours && (
            <span class="foot-open">
              {words.t(isOpen(office.hours, today) ? 'ui:open-now' : 'ui:closed-now')}
            </span>
          )}
        </p>
        {desk.standing !== 'current' && (
          <p class="foot-doubt">
            <Text k={`ui:referral.office-${desk.standing === 'stale' ? 'stale' : 'missing'}.say`} />
          </p>
        )}
        <p class="foot-standing">
          <Text k="ui:education" />
        </p>
      </details>
      {below}
    </footer>
  )
}

/** An office's notice in the language of the screen; one that it wrote in English alone says so to a reader. */
function Notice({ text }: { text: LocalText }) {
  const { words } = useSpeech()
  const own = textIn(text, words.tag)
  return (
    <p class="foot-notice" {...(own === undefined && { lang: 'en' })}>
      {own ?? nameIn(text, words.tag)}
    </p>
  )
}
