import { sourceLine } from '../words/sources.ts'
import type { SaidTwice } from './said-twice.ts'
import { useSpeech } from './setting.tsx'
import { Both } from './text.tsx'

/** "But what about…": what callers ask once they have heard the verdict, each answered where it stands. */
export function FollowUps({
  said,
  beside,
  folded = false
}: SaidTwice & {
  /** Behind the title, as one of the folded sections. */
  folded?: boolean
}) {
  const { words } = useSpeech()
  if (said.followUps.length === 0) return null
  const title = <h2>{words.t('ui:follow-ups.title')}</h2>
  const all = said.followUps.map(({ id, ask, answer, sources }, index) => (
    <details key={id} data-follow-up={id}>
      <summary>{ask}</summary>
      <p>
        <Both text={answer} second={beside?.followUps[index]?.answer} />
      </p>
      <p class="follow-up-sources">
        {words.t('ui:sources')}: {sources.map(sourceLine).join('; ')}
      </p>
    </details>
  ))
  if (folded) {
    return (
      <section class="section follow-ups">
        <details class="section-fold">
          <summary>{title}</summary>
          {all}
        </details>
      </section>
    )
  }
  return (
    <section class="follow-ups">
      {title}
      {all}
    </section>
  )
}
