import type { Said, SaidCall, SectionId } from '../../words/say.ts'
import { sourceLine } from '../../words/sources.ts'
import { Phone } from './phone.tsx'
import { useSetting } from './setting.tsx'
import { StepHeading } from './step-heading.tsx'
import { VerdictCard } from './verdict-card.tsx'

/** What stands on the first card beside its steps, and what below it. */
const BELOW: readonly SectionId[] = [
  'what-it-means',
  'clean-up',
  'keep',
  'start-again',
  'what-to-change',
  'rules-of-thumb'
]
const ALWAYS: readonly SectionId[] = ['who-must-not', 'medical-help', 'keep-in-mind']

/** The outcome: person, container, batch; do now; whom to call; the rest; sources folded. */
export function Outcome({ said, quiet }: { said: Said; quiet: boolean }) {
  const [first, ...rest] = said.verdicts
  if (first === undefined) return null
  return (
    <div class="outcome">
      <VerdictCard
        verdict={first}
        heading={text => (
          <StepHeading step="outcome" quiet={quiet}>
            {text}
          </StepHeading>
        )}
      >
        {said.use !== null && <p class="use">{said.use}</p>}
        <DoNow said={said} />
        <Calls calls={said.calls} doubt={said.officeDoubt} />
      </VerdictCard>
      {rest.map(verdict => (
        <VerdictCard key={verdict.id} verdict={verdict} heading={text => <h2>{text}</h2>} />
      ))}
      <div class="sections">
        <Sections said={said} ids={BELOW} />
      </div>
      <div class="sections sections-always">
        <Sections said={said} ids={ALWAYS} />
      </div>
      <Sources said={said} />
      <StandingLine said={said} />
    </div>
  )
}

function DoNow({ said }: { said: Said }) {
  const { words } = useSetting()
  return (
    <section class="do-now" aria-label={words.t('ui:do-now')}>
      <h2>{words.t('ui:do-now')}</h2>
      <ol>
        {said.doNow.map(step => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      {said.recheck !== null && <p class="recheck">{said.recheck}</p>}
    </section>
  )
}

/** Whom to call, with the number to press. */
export function Calls({ calls, doubt }: { calls: readonly SaidCall[]; doubt: string | null }) {
  const { words } = useSetting()
  if (calls.length === 0) return null
  return (
    <section class="calls">
      <h2>{words.t('ui:who-to-call')}</h2>
      <ul>
        {calls.map(({ to, name, phone, say }) => (
          <li key={to}>
            <span class="calls-name">
              {name} {phone !== null && <Phone number={phone} />}
            </span>
            <span class="calls-say">{say}</span>
          </li>
        ))}
      </ul>
      {doubt !== null && <p class="calls-doubt">{doubt}</p>}
    </section>
  )
}

function Sections({ said, ids }: { said: Said; ids: readonly SectionId[] }) {
  const shown = ids.flatMap(id => said.sections.filter(section => section.id === id))
  return (
    <>
      {shown.map(({ id, title, lines }) => (
        <section key={id} class="section" data-section={id}>
          <h2>{title}</h2>
          {lines.length === 1 ? (
            <p>{lines[0]}</p>
          ) : (
            <ul>
              {lines.map(line => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          )}
        </section>
      ))}
    </>
  )
}

function Sources({ said }: { said: Said }) {
  const { words } = useSetting()
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

function StandingLine({ said: { standing } }: { said: Said }) {
  return (
    <p class="standing">
      {standing.title} · {standing.edition}
      {standing.draft !== null && <strong> · {standing.draft}</strong>}
      {standing.overdue !== null && <strong> · {standing.overdue}</strong>}
    </p>
  )
}
