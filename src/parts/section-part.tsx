import { listedText } from '../words/listed.ts'
import type { Section } from '../words/say.ts'
import { useSpeech } from './setting.tsx'
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

/** The same on a screen, folded: behind its title, or, where it says something in brief, behind "more". */
export function FoldedSection({ id, title, lines, brief, beside }: Twice) {
  const { words } = useSpeech()
  const heading = (
    <h2>
      <Both text={title} second={beside?.title} />
    </h2>
  )
  const rest = lines
    .map((line, at) => ({ line, second: beside?.lines[at] ?? '' }))
    .filter(({ line }) => line !== brief)
  const folded = (
    <Lines lines={rest.map(({ line }) => line)} second={rest.map(({ second }) => second)} />
  )
  if (brief === undefined) {
    return (
      <section class="section" data-section={id}>
        <details class="section-fold">
          <summary>{heading}</summary>
          {folded}
        </details>
      </section>
    )
  }
  return (
    <section class="section" data-section={id}>
      {heading}
      <Lines lines={[brief]} second={[beside?.brief ?? '']} />
      {rest.length > 0 && (
        <details>
          <summary>{words.t('ui:more')}</summary>
          {folded}
        </details>
      )}
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
  const [only] = lines
  if (only !== undefined && lines.length === 1 && listedText(only) === null) {
    return (
      <p>
        <Both text={only} second={second?.[0]} />
      </p>
    )
  }
  return (
    <ul>
      {lines.map((line, at) => (
        <li key={line}>
          <Line text={line} second={second?.[at]} />
        </li>
      ))}
    </ul>
  )
}

/** A line; where it is a list in a sentence, a list, each part with its second language. */
function Line({ text, second }: { text: string; second: string | undefined }) {
  const list = listedText(text)
  const beside = second ? listedText(second) : null
  if (list === null || (second && beside?.parts.length !== list.parts.length)) {
    return <Both text={text} second={second} />
  }
  return (
    <>
      <Both text={list.lead} second={beside?.lead} />{' '}
      <ul class="listed">
        {list.parts.map((part, index) => (
          <li key={part}>
            <Both text={part} second={beside?.parts[index]} />
          </li>
        ))}
      </ul>
    </>
  )
}
