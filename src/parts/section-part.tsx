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

/** The same on a screen: its title in sight, its lines behind it. `brief` lines stay in sight. */
export function FoldedSection({ id, title, lines, beside, brief = 0 }: Twice & { brief?: number }) {
  const [seen, folded] = [lines.slice(0, brief), lines.slice(brief)]
  if (folded.length === 0) return <SectionPart {...{ id, title, lines, beside }} />
  return (
    <section class="section" data-section={id}>
      <details class="section-fold">
        <summary>
          <h2>
            <Both text={title} second={beside?.title} />
          </h2>
        </summary>
        <Lines lines={folded} second={beside?.lines.slice(brief)} />
      </details>
      {seen.length > 0 && <Lines lines={seen} second={beside?.lines.slice(0, brief)} />}
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
