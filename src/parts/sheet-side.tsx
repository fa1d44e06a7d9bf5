import type { ComponentChildren } from 'preact'
import type { SheetAddress } from '../addresses/sheet-address.ts'
import { textOrEnglish } from '../office/local-text.ts'
import { referralFor } from '../office/referral.ts'
import { directionOf, inLatinDigits } from '../words/direction.ts'
import { footNumbers } from '../words/foot-numbers.ts'
import { sourcesInBrief } from '../words/known.ts'
import type { Said, Section, SectionId } from '../words/say.ts'
import { sentence } from '../words/sentence.ts'
import { cautionText } from '../words/tree-texts.ts'
import type { Words } from '../words/words.ts'
import { BringIn, Calls } from './calls.tsx'
import { DoNow } from './outcome.tsx'
import { Qr } from './qr.tsx'
import type { ToldOutcome } from './said-twice.ts'
import { SectionPart } from './section-part.tsx'
import { SeenOnPaper } from './seen-picture.tsx'
import { useSetting } from './setting.tsx'
import { Both } from './text.tsx'
import { VerdictCard } from './verdict-card.tsx'

/** What stands on every sheet, in the order in which it is needed. */
const ALWAYS: readonly SectionId[] = ['clean-up', 'keep']

/** What stands on it where there is room, the last leaving first. */
const WHERE_ROOM = {
  'starts-again': ['start-again'],
  warns: ['what-it-means', 'what-to-change', 'keep-in-mind'],
  explains: ['rules-of-thumb', 'what-is-known']
} as const satisfies Readonly<Record<string, readonly SectionId[]>>
type Room = keyof typeof WHERE_ROOM

/**
 * One side of a sheet in one language. What is marked with `data-room` leaves it where it does not fit in
 * type that can be read, the last first; the rest is on every sheet.
 */
export function SheetSide({
  said,
  seen,
  address,
  general,
  overleaf
}: Pick<ToldOutcome, 'said' | 'seen'> & {
  address: SheetAddress
  general: boolean
  /** The language on the other side, which counts. */
  overleaf: Words | null
}) {
  const { words, tree } = useSetting()
  const [first, ...rest] = said.verdicts
  if (first === undefined) return null
  const sections = (ids: readonly SectionId[]) =>
    ids.flatMap(id => said.sections.filter(section => section.id === id))
  return (
    <article class="sheet" lang={words.tag} dir={directionOf(words.tag)}>
      <Head />
      <div class="sheet-top">
        <VerdictCard onPaper verdict={{ ...first, why: null }} heading={text => <h1>{text}</h1>}>
          <p class="use">
            {said.use} {general && <span class="sheet-general">{words.t('ui:sheet.general')}</span>}
          </p>
          {/* Beside the code the card has height to spare. */}
          {seen !== null && <SeenOnPaper seen={seen} />}
        </VerdictCard>
        <Qr text={address.scanned} label={words.t('ui:sheet.scan')} />
      </div>
      {rest.map(verdict => (
        <VerdictCard
          key={verdict.id}
          onPaper
          verdict={{ ...verdict, why: null }}
          heading={text => <h2>{text}</h2>}
        />
      ))}
      <div class="sheet-columns">
        <DoNow said={said} beside={null} onPaper />
        {said.bringIn !== null && <BringIn bringIn={said.bringIn} />}
        <Calls calls={said.calls} doubt={said.officeDoubt} />
        <Reasons said={said} />
        {sections(ALWAYS).map(section => (
          <SectionPart key={section.id} {...section} beside={undefined} />
        ))}
        {sections(WHERE_ROOM['starts-again']).map(section => (
          <IfRoom key={section.id} room="starts-again">
            <SectionPart {...section} beside={undefined} />
          </IfRoom>
        ))}
        {/* What is said in brief is said beside the numbers, at the foot. */}
        {sections(['medical-help']).map(
          section =>
            section.brief === undefined && (
              <SectionPart key={section.id} {...section} beside={undefined} />
            )
        )}
        {sections(['who-must-not']).map(section => (
          <WhoMustNot key={section.id} section={section} />
        ))}
        {(['warns', 'explains'] as const).flatMap(room =>
          sections(WHERE_ROOM[room])
            .map(section => ({ ...section, lines: besidesTail(section, words, tree.id) }))
            .filter(({ lines }) => lines.length > 0)
            .map(section => (
              <IfRoom key={section.id} room={room}>
                <SectionPart {...section} beside={undefined} />
              </IfRoom>
            ))
        )}
      </div>
      <Tail said={said} address={address} overleaf={overleaf} />
    </article>
  )
}

/** What leaves a side that is too full. */
function IfRoom({ room, children }: { room: Room; children: ComponentChildren }) {
  return (
    <div class="sheet-room" data-room={room}>
      {children}
    </div>
  )
}

/** The lines of a section without the one that is at the foot of every sheet. */
const besidesTail = ({ lines }: Section, words: Words, tree: string) =>
  lines.filter(line => line !== cautionText(words, tree, 'not-proof'))

/** Who must not have any, always; how much the others may, where there is room. */
function WhoMustNot({ section }: { section: Section }) {
  const [who, ...others] = section.lines
  return (
    <section class="section" data-section={section.id}>
      <h2>{section.title}</h2>
      <p>{who}</p>
      {others.length > 0 && (
        <IfRoom room="warns">
          {others.map(line => (
            <p key={line}>{line}</p>
          ))}
        </IfRoom>
      )}
    </section>
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
function Reasons({ said }: { said: Said }) {
  const { words } = useSetting()
  const reasons = said.verdicts.flatMap(({ id, why }) => (why === null ? [] : [{ id, why }]))
  if (reasons.length === 0) return null
  return (
    <section class="section" data-section="why">
      <h2>{words.t('ui:sheet.why')}</h2>
      {reasons.map(({ id, why }) => (
        <p key={id}>{why}</p>
      ))}
    </section>
  )
}

/** The numbers that nothing replaces, and the office's own. */
export function SheetNumbers() {
  const { words, office, today } = useSetting()
  const desk = {
    name: office?.office.name ?? words.t('ui:referral.office-missing.name'),
    phone: referralFor(office, 'office', today).phone
  }
  return (
    <ul class="sheet-numbers">
      {[...footNumbers(words, office?.country), desk].map(({ name, phone }) => (
        <li key={name}>
          {name} <strong>{phone !== null && <bdi>{phone}</bdi>}</strong>
        </li>
      ))}
    </ul>
  )
}

/** Whom the office serves, in its own words: in English where it gave none in the language of the sheet. */
export function NonDiscrimination() {
  const { words, office } = useSetting()
  const own = textOrEnglish(office?.nonDiscrimination ?? null, words.tag)
  return (
    own && (
      <span class="sheet-serves" lang={own.tag} dir={directionOf(own.tag)}>
        {own.text}
      </span>
    )
  )
}

function Tail({
  said,
  address,
  overleaf
}: {
  said: Said
  address: SheetAddress
  overleaf: Words | null
}) {
  const { words, office, today, tree } = useSetting()
  const { phone } = referralFor(office, 'office', today)
  const desk = office?.office.name ?? words.t('ui:referral.office-missing.name')
  const { standing } = said
  const translation =
    overleaf === null
      ? null
      : words.t('ui:sheet.overleaf', { language: languageIn(words.tag, overleaf.tag) })
  const ifIll = said.sections.find(({ id }) => id === 'medical-help')?.brief
  const doubts = [translation, standing.draft, standing.overdue].filter(doubt => doubt !== null)
  const printed = new Intl.DateTimeFormat(inLatinDigits(words.tag), { dateStyle: 'medium' }).format(
    today
  )
  return (
    <footer class="sheet-tail">
      {ifIll === undefined ? (
        <SheetNumbers />
      ) : (
        // The line names 911 and Poison Help: they are given once.
        <p class="sheet-if-ill">
          <Both text={ifIll} second={null} /> {desk}{' '}
          <strong>{phone !== null && <bdi>{phone}</bdi>}</strong>.
        </p>
      )}
      <p>
        {doubts.map(doubt => (
          <strong key={doubt}>{sentence(doubt)} </strong>
        ))}
        {cautionText(words, tree.id, 'not-proof')} {words.t('ui:sheet.local-first')}{' '}
        <NonDiscrimination />
      </p>
      <p>
        {address.showsOutcome ? (
          <>
            <span class="sheet-rest">{words.t('ui:sheet.rest')} </span>
            <span class="sheet-rest sheet-again">{words.t('ui:sheet.rest-again')} </span>
          </>
        ) : (
          <span class="sheet-rest">{words.t('ui:sheet.rest-elsewhere')} </span>
        )}
        {words.t('ui:sheet.type')}{' '}
        <bdi class="sheet-address">{address.typed.replace(/^https?:\/\//, '')}</bdi>
        {' · '}
        {standing.edition} ({tree.fingerprint.slice(0, 6)}){' · '}
        {words.t('ui:sheet.review', { due: standing.due })}
        {' · '}
        {words.t('ui:sheet.printed', { date: printed })}
      </p>
      {said.sources.length > 0 && (
        <p class="sheet-sources">
          {words.t('ui:sources')}: {sourcesInBrief(said.sources, words)}
        </p>
      )}
    </footer>
  )
}

/** A language as another one calls it. */
export const languageIn = (tag: string, named: string): string =>
  new Intl.DisplayNames([tag], { type: 'language' }).of(named) ?? named
