import type { Said, Section, SectionId } from '../words/say.ts'
import { sourceLine } from '../words/sources.ts'
import { BringIn, Calls } from './calls.tsx'
import { FollowUps } from './follow-ups.tsx'
import type { SaidTwice, ToldOutcome } from './said-twice.ts'
import { FoldedSection, SectionPart } from './section-part.tsx'
import { SeenCompared, SeenPicture } from './seen-picture.tsx'
import { useSetting, useSpeech } from './setting.tsx'
import { StepHeading } from './step-heading.tsx'
import { Both, Text } from './text.tsx'
import { VerdictCard } from './verdict-card.tsx'

/** What stays in sight below the card: who must not have any, where help is, and what was asked for since. */
const IN_SIGHT: readonly SectionId[] = ['who-must-not', 'medical-help', 'what-to-change']
/** What unfolds. */
const FOLDED: readonly SectionId[] = [
  'what-it-means',
  'clean-up',
  'keep',
  'start-again',
  'rules-of-thumb',
  'keep-in-mind',
  'what-is-known'
]

/** The outcome: verdict, use, do now and whom to call at first sight; what callers ask next; the rest folded. */
export function Outcome({ said, beside, seen, quiet }: ToldOutcome & { quiet: boolean }) {
  const { atArmsLength = false, atOffice = false } = useSetting()
  const [first, ...rest] = said.verdicts
  if (first === undefined) return null
  const pictureOf = (id: string) => seen?.verdict === id && <SeenPicture seen={seen} />
  return (
    <div class="outcome">
      <VerdictCard
        verdict={first}
        beside={beside?.verdicts[0]}
        picture={pictureOf(first.id)}
        heading={text => (
          <StepHeading step="outcome" quiet={quiet}>
            {text}
          </StepHeading>
        )}
      >
        {said.use !== null && (
          <p class="use">
            <Both text={said.use} second={beside?.use} />
          </p>
        )}
        <DoNow said={said} beside={beside} />
        {atOffice && said.bringIn !== null && <BringIn bringIn={said.bringIn} beside={beside} />}
        <Calls calls={said.calls} doubt={said.officeDoubt} beside={beside} />
      </VerdictCard>
      {rest.map((verdict, at) => (
        <VerdictCard
          key={verdict.id}
          verdict={verdict}
          beside={beside?.verdicts[at + 1]}
          picture={pictureOf(verdict.id)}
          heading={text => <h2>{text}</h2>}
        />
      ))}
      {!atArmsLength && <FollowUps said={said} beside={beside} />}
      <div class="sections">
        {sectionsIn(said, IN_SIGHT).map(section => {
          // What has nothing in brief stands open: lists of signs while somebody is or may be ill.
          const Part = section.brief === undefined ? SectionPart : FoldedSection
          return <Part key={section.id} {...section} beside={besideOf(beside, section)} />
        })}
      </div>
      <div class="sections-folded">
        {atArmsLength && <FollowUps said={said} beside={beside} folded />}
        {seen !== null && <SeenCompared seen={seen} />}
        {sectionsIn(said, FOLDED).map(section => (
          <FoldedSection key={section.id} {...section} beside={besideOf(beside, section)} />
        ))}
      </div>
      <Sources said={said} />
      <StandingLine said={said} beside={beside} />
    </div>
  )
}

/** What to do now, as numbered steps, and when to look again; what comes after that is folded, but on paper. */
export function DoNow({ said, beside, onPaper = false }: SaidTwice & { onPaper?: boolean }) {
  const { words } = useSpeech()
  const count = said.later.length
  const later = <Steps steps={said.later} second={beside?.later} before={said.doNow.length} />
  return (
    <section class="do-now" aria-label={words.t('ui:do-now')}>
      <h2>
        <Text k="ui:do-now" />
      </h2>
      <Steps steps={said.doNow} second={beside?.doNow} />
      {/* On paper nothing is folded: the numbers go on. */}
      {count > 0 && onPaper && later}
      {said.recheck !== null && (
        <p class="recheck">
          <Both text={said.recheck} second={beside?.recheck} />
        </p>
      )}
      {count > 0 && !onPaper && (
        <details class="later">
          <summary>
            <Text k="ui:later-steps" values={{ count }} />
          </summary>
          {later}
        </details>
      )}
    </section>
  )
}

/** Numbered steps, which go on from those that stand before them. */
export function Steps({
  steps,
  second,
  before = 0
}: {
  steps: readonly string[]
  second: readonly string[] | undefined
  before?: number
}) {
  const { ticks = false } = useSpeech()
  return (
    <ol start={before + 1} style={{ '--before': before }}>
      {steps.map((step, at) => (
        <li key={step}>
          {ticks ? (
            <label class="step-tick">
              <input type="checkbox" />
              <Both text={step} second={second?.[at]} />
            </label>
          ) : (
            <Both text={step} second={second?.[at]} />
          )}
        </li>
      ))}
    </ol>
  )
}

const sectionsIn = (said: Said, ids: readonly SectionId[]): readonly Section[] =>
  ids.flatMap(id => said.sections.filter(section => section.id === id))

const besideOf = (beside: Said | null, { id }: Section): Section | undefined =>
  beside?.sections.find(section => section.id === id)

function Sources({ said }: { said: Said }) {
  const { words } = useSpeech()
  if (said.sources.length === 0) return null
  return (
    <details class="sources">
      <summary>{words.t('ui:sources')}</summary>
      <ul>
        {said.sources.map(source => (
          <li key={source.id}>{sourceLine(source)}</li>
        ))}
      </ul>
    </details>
  )
}

function StandingLine({ said: { standing }, beside }: SaidTwice) {
  const doubts = [
    [standing.draft, beside?.standing.draft],
    [standing.overdue, beside?.standing.overdue]
  ] as const
  return (
    <p class="standing">
      {standing.title} · {standing.edition}
      {doubts.map(
        ([text, second]) =>
          text !== null && (
            <strong key={text}>
              {' '}
              · <Both text={text} second={second} />
            </strong>
          )
      )}
    </p>
  )
}
