import type { SheetAddress } from '../addresses/sheet-address.ts'
import { referralFor } from '../office/referral.ts'
import { footNumbers } from '../words/foot-numbers.ts'
import { directionOf } from '../words/languages.ts'
import type { SectionId } from '../words/say.ts'
import { sourceLine } from '../words/sources.ts'
import { Calls } from './calls.tsx'
import { DoNow } from './outcome.tsx'
import { Qr } from './qr.tsx'
import type { SaidTwice, ToldOutcome } from './said-twice.ts'
import { SectionPart } from './section-part.tsx'
import { SeenOnPaper } from './seen-picture.tsx'
import { useSetting } from './setting.tsx'
import { Both, secondText, Text } from './text.tsx'
import { VerdictCard } from './verdict-card.tsx'

/** In the order in which they are needed. */
const SECTIONS: readonly SectionId[] = [
  'what-it-means',
  'clean-up',
  'keep',
  'start-again',
  'what-to-change',
  'rules-of-thumb',
  'who-must-not',
  'medical-help',
  'keep-in-mind'
]

/**
 * An outcome on one side of one sheet of paper, letter or A4, black and white. Whoever
 * prints the screen gets this instead.
 */
export function Sheet({
  said,
  beside,
  seen,
  address,
  general = false,
  size
}: ToldOutcome & {
  address: SheetAddress
  /** No jar was looked at: the sheet says so. */
  general?: boolean
  /** In points, where it is known already with which type the sheet fits. */
  size?: number
}) {
  const { words } = useSetting()
  const [first, ...rest] = said.verdicts
  if (first === undefined) return null
  return (
    <article
      class="sheet"
      lang={words.tag}
      dir={directionOf(words.tag)}
      {...(size !== undefined && { style: { '--sheet-size': `${size}pt` } })}
    >
      <Head />
      <div class="sheet-top">
        <VerdictCard
          onPaper
          verdict={{ ...first, why: null }}
          beside={beside?.verdicts[0]}
          heading={text => <h1>{text}</h1>}
        >
          {general && (
            <p class="sheet-general">
              <Text k="ui:sheet.general" />
            </p>
          )}
          {said.use !== null && (
            <p class="use">
              <Both text={said.use} second={beside?.use} />
            </p>
          )}
          {/* Beside the code the card has height to spare. */}
          {seen !== null && <SeenOnPaper seen={seen} />}
        </VerdictCard>
        <Qr text={address.scanned} label={words.t('ui:sheet.scan')} />
      </div>
      {rest.map((verdict, index) => (
        <VerdictCard
          key={verdict.id}
          onPaper
          verdict={{ ...verdict, why: null }}
          beside={beside?.verdicts[index + 1]}
          heading={text => <h2>{text}</h2>}
        />
      ))}
      <div class="sheet-columns">
        <DoNow said={said} beside={beside} onPaper />
        <Calls calls={said.calls} doubt={said.officeDoubt} beside={beside} />
        <Reasons said={said} beside={beside} />
        {SECTIONS.flatMap(id => said.sections.filter(section => section.id === id)).map(section => (
          <SectionPart
            key={section.id}
            {...section}
            beside={beside?.sections.find(({ id }) => id === section.id)}
          />
        ))}
      </div>
      <Known said={said} />
      <Sources said={said} />
      <Tail said={said} beside={beside} address={address} />
    </article>
  )
}

function Head() {
  const { words, tree, office } = useSetting()
  return (
    <p class="sheet-head">
      <span>{office?.office.name ?? 'Jarside'}</span>
      <strong>{words.t(`${tree.id}:title`)}</strong>
    </p>
  )
}

/** Why, of every verdict that says it. */
function Reasons({ said, beside }: SaidTwice) {
  const reasons = said.verdicts.flatMap(({ id, why }, index) =>
    why === null ? [] : [{ id, why, second: beside?.verdicts[index]?.why }]
  )
  if (reasons.length === 0) return null
  return (
    <section class="section" data-section="why">
      <h2>
        <Text k="ui:sheet.why" />
      </h2>
      {reasons.map(({ id, why, second }) => (
        <p key={id}>
          <Both text={why} second={second} />
        </p>
      ))}
    </section>
  )
}

/** How sure the guidance is, over its sources. */
function Known({ said }: Pick<SaidTwice, 'said'>) {
  const grounds = said.sections.find(({ id }) => id === 'what-is-known')
  if (grounds === undefined) return null
  return (
    <p class="sheet-sources">
      <strong>{grounds.title}: </strong>
      {grounds.lines.join(' ')}
    </p>
  )
}

function Sources({ said }: Pick<SaidTwice, 'said'>) {
  const { words } = useSetting()
  if (said.sources.length === 0) return null
  return (
    <p class="sheet-sources">
      <strong>{words.t('ui:sources')}: </strong>
      {/* On paper nobody presses an address: title, publisher and year find it. */}
      {said.sources.map(source => sourceLine({ ...source, address: null })).join(' · ')}
    </p>
  )
}

function Tail({ said, beside, address }: SaidTwice & { address: SheetAddress }) {
  const speech = useSetting()
  const { words, office, today, tree } = speech
  const desk = referralFor(office, 'office', today)
  const { standing } = said
  const doubts = [
    [standing.draft, beside?.standing.draft],
    [standing.overdue, beside?.standing.overdue],
    beside === null
      ? [null]
      : [words.t('ui:draft-translation'), secondText(speech, 'ui:draft-translation')]
  ].filter((doubt): doubt is [string, string | null | undefined] => typeof doubt[0] === 'string')
  const printed = new Intl.DateTimeFormat(words.tag, { dateStyle: 'long' }).format(today)
  return (
    <footer class="sheet-tail">
      <ul class="sheet-numbers">
        {footNumbers(words, office?.country).map(({ name, phone }) => (
          <li key={name}>
            {name} <strong>{phone}</strong>
          </li>
        ))}
        <li>
          {office?.office.name ?? words.t('ui:referral.office-missing.name')}{' '}
          <strong>{desk.phone}</strong>
        </li>
      </ul>
      <p>
        {words.t('ui:sheet.type')}{' '}
        <bdi class="sheet-address">{address.typed.replace(/^https?:\/\//, '')}</bdi>
        {' · '}
        {standing.edition} ({tree.fingerprint.slice(0, 6)}){' · '}
        {words.t('ui:sheet.review', { due: standing.due })}
        {' · '}
        {words.t('ui:sheet.printed', { date: printed })}
      </p>
      <p>
        <Text k="ui:education" />
        {doubts.map(([text, second]) => (
          <strong key={text}>
            {' '}
            <Both text={text} second={second} />
          </strong>
        ))}
      </p>
    </footer>
  )
}
