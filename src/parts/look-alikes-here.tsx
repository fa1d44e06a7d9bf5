import { lookAlikesFor } from '../tree/look-alikes.ts'
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
        // One pair at a time: opening another folds it.
        <details key={pair.id} name="look-alike" open={pair === pairs[0]}>
          <summary>{words.t(`look-alikes:${pair.id}.title`)}</summary>
          <LookAlike pair={pair} drawings={drawings} />
        </details>
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
