import { lookAlikesFor } from '../../tree/look-alikes.ts'
import { LookAlike, LookAlikesNever } from './look-alike.tsx'
import { useSetting } from './setting.tsx'

/** The pairs that callers mix up at this question, folded until wanted. */
export function LookAlikesHere({ observation }: { observation: string }) {
  const { words, lookAlikes, drawings, photoPage } = useSetting()
  const pairs = lookAlikesFor(lookAlikes, observation)
  if (pairs.length === 0) return null
  return (
    <details class="look-alikes-here">
      <summary>{words.t('ui:look-alikes.open')}</summary>
      {pairs.map(pair => (
        <section key={pair.id}>
          <h2>{words.t(`look-alikes:${pair.id}.title`)}</h2>
          <LookAlike pair={pair} drawings={drawings} />
        </section>
      ))}
      <LookAlikesNever />
      {photoPage !== null && (
        <p>
          <a
            href={`${photoPage}#lang=${words.tag}&pair=${pairs[0]?.id}`}
            target="_blank"
            rel="noopener"
          >
            {words.t('ui:look-alikes.with-photo')}
          </a>
        </p>
      )}
    </details>
  )
}
