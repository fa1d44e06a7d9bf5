import type { OfficePack } from '../../office/office-pack.ts'
import { referralFor } from '../../office/referral.ts'
import { type AnswerTwice, KnowHowPictures } from '../../parts/know-how-answer.tsx'
import { Phone } from '../../parts/phone.tsx'
import { useSpeech } from '../../parts/setting.tsx'
import { Both, Text } from '../../parts/text.tsx'
import { ANY_FERMENT } from '../../tree/know-how.ts'
import { footNumbers } from '../../words/foot-numbers.ts'
import { type CitedSource, sourceLine } from '../../words/sources.ts'

/** The answers about one ferment as a list for a class: whoever prints the page gets this instead. */
export function ClassSheet({
  ferment,
  answers,
  office,
  today
}: {
  ferment: string
  answers: readonly AnswerTwice[]
  office: OfficePack | null
  today: Date
}) {
  const { words } = useSpeech()
  const sources = new Map<string, CitedSource>(
    answers.flatMap(({ said }) => said.sources.map(source => [source.id, source] as const))
  )
  const numbered = [...sources.keys()]
  const desk = referralFor(office, 'office', today)
  const [first] = answers
  return (
    <section class="class-sheet" aria-hidden="true">
      <h1>{words.t(ferment === ANY_FERMENT ? 'ui:know-how.any' : `${ferment}:title`)}</h1>
      <p>
        {words.t('ui:draft')} · {first?.said.due}
      </p>
      <dl>
        {answers.map(({ said, beside, drawings }) => (
          <div key={said.id} class="class-answer">
            <dt>{said.ask}</dt>
            <dd>
              <Both text={said.answer} second={beside?.answer} />{' '}
              <span class="class-cites">
                [{said.sources.map(({ id }) => numbered.indexOf(id) + 1).join(', ')}]
              </span>
              <KnowHowPictures said={said} beside={beside} drawings={drawings} />
            </dd>
          </div>
        ))}
      </dl>
      <h2>{words.t('ui:sources')}</h2>
      <ol class="class-sources">
        {[...sources.values()].map(source => (
          <li key={source.id}>{sourceLine(source)}</li>
        ))}
      </ol>
      <p class="class-numbers">
        {footNumbers(words, office?.country).map(({ name, phone }) => (
          <span key={name}>
            {name} <Phone number={phone} /> ·{' '}
          </span>
        ))}
        {office?.office.name ?? words.t('ui:referral.office-missing.name')}{' '}
        {desk.phone !== null && <Phone number={desk.phone} />}
      </p>
      <p>
        <Text k="ui:education" />
      </p>
    </section>
  )
}
