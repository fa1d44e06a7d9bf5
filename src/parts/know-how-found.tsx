import type { ComponentChildren } from 'preact'
import type { FoundAnswers } from '../know-how/found.ts'
import { numbersOf } from '../office/constants.ts'
import type { OfficePack } from '../office/office-pack.ts'
import { referralFor } from '../office/referral.ts'
import { type AnswerTwice, KnowHowAnswer } from './know-how-answer.tsx'
import { Phone } from './phone.tsx'
import { useSpeech } from './setting.tsx'
import { Text } from './text.tsx'

/** What comes of a question: an answer, the way to a tree, the emergency line, or the county office. */
export function KnowHowFound({
  found,
  answers,
  office,
  today,
  children,
  onPick
}: {
  found: FoundAnswers
  /** Those that were found, the best first. */
  answers: readonly AnswerTwice[]
  office: OfficePack | null
  today: Date
  /** The way to the questions about one jar; left out where they stand on the screen. */
  children?: ComponentChildren
  onPick: (id: string) => void
}) {
  const { words } = useSpeech()
  const [first, ...others] = answers
  if (found.lead === 'emergency') {
    return (
      <p class="alarm alarm-danger" data-lead="emergency">
        <span class="signal signal-danger">{words.t('ui:signal.danger')}</span>
        <strong>
          <Text k="ui:know-how.emergency" />
        </strong>
        <Phone number={numbersOf(office?.country).emergency} />
        <span>
          <Text k="ui:referral.emergency.say" />
        </span>
      </p>
    )
  }
  return (
    <div class="know-how-found">
      {found.lead === 'look' && (
        <section class="know-how-look" data-lead="look">
          <h2>{words.t('ui:know-how.look')}</h2>
          <p>
            <Text k="ui:know-how.look-why" />
          </p>
          {children}
        </section>
      )}
      {first === undefined && found.lead === null && <NotHere office={office} today={today} />}
      {first !== undefined && found.lead === 'look' && (
        <p class="know-how-cue">{words.t('ui:know-how.stands-anyway')}</p>
      )}
      {first !== undefined && <KnowHowAnswer key={first.said.id} {...first} />}
      {others.length > 0 && (
        <section class="know-how-others">
          <h2 class="know-how-cue">{words.t('ui:know-how.also')}</h2>
          <ul>
            {others.map(({ said: { id, ask } }) => (
              <li key={id}>
                <button type="button" class="know-how-other" onClick={() => onPick(id)}>
                  {ask}
                </button>
              </li>
            ))}
          </ul>
        </section>
      )}
    </div>
  )
}

/** That it is not answered here, with the office's own number. */
function NotHere({ office, today }: { office: OfficePack | null; today: Date }) {
  const { phone } = referralFor(office, 'office', today)
  return (
    <p class="notice" data-lead="not-here">
      <Text k="ui:know-how.not-here" /> {phone !== null && <Phone number={phone} />}
    </p>
  )
}
