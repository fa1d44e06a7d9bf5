import type { Section } from '../words/say.ts'
import { Both } from './text.tsx'

type Twice = Section & { beside: Section | undefined }

/** One section under an outcome: its title and its lines. */
export function SectionPart({ id, title, lines, beside }: Twice) {
  return (
    <section class="section" data-section={id}>
      <h2>
        <Both text={title} second={beside?.title} />
      </h2>
      <Lines lines={lines} second={beside?.lines} />
    </section>
  )
}

/** The same on a screen: its title and what it says in brief in sight, the rest behind it. */
export function FoldedSection({ id, title, lines, brief, beside }: Twice) {
  const besideLines = beside?.lines ?? []
  const folded = lines.map((line, at) => ({ line, second: besideLines[at] }))
  const rest = folded.filter(({ line }) => line !== brief)
  const seen = brief !== undefined && <Lines lines={[brief]} second={[beside?.brief ?? '']} />
  return (
    <section class="section" data-section={id}>
      {rest.length === 0 ? (
        <h2>
          <Both text={title} second={beside?.title} />
        </h2>
      ) : (
        <details class="section-fold">
          <summary>
            <h2>
              <Both text={title} second={beside?.title} />
            </h2>
          </summary>
          <Lines
            lines={rest.map(({ line }) => line)}
            second={beside && rest.map(({ second }) => second ?? '')}
          />
        </details>
      )}
      {seen}
    </section>
  )
}

function Lines({
  lines,
  second
}: {
  lines: readonly string[]
  second: readonly string[] | undefined
}) {
  if (lines.length === 1) {
    return (
      <p>
        <Both text={lines[0] ?? ''} second={second?.[0]} />
      </p>
    )
  }
  return (
    <ul>
      {lines.map((line, at) => (
        <li key={line}>
          <Both text={line} second={second?.[at]} />
        </li>
      ))}
    </ul>
  )
}
