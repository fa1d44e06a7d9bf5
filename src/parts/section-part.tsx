import type { Section } from '../words/say.ts'
import { Both } from './text.tsx'

/** One section under an outcome: its title and its lines. */
export function SectionPart({
  id,
  title,
  lines,
  beside
}: Section & { beside: Section | undefined }) {
  return (
    <section class="section" data-section={id}>
      <h2>
        <Both text={title} second={beside?.title} />
      </h2>
      {lines.length === 1 ? (
        <p>
          <Both text={lines[0] ?? ''} second={beside?.lines[0]} />
        </p>
      ) : (
        <ul>
          {lines.map((line, at) => (
            <li key={line}>
              <Both text={line} second={beside?.lines[at]} />
            </li>
          ))}
        </ul>
      )}
    </section>
  )
}
