import { answerLabel } from '../words/tree-texts.ts'
import { AnswerName } from './answer-name.tsx'
import { LookAlike, LookAlikesNever } from './look-alike.tsx'
import type { SeenAnswer } from './seen-answer.ts'
import { useSetting } from './setting.tsx'

/** The drawing of what a caller saw, under its name. */
export function SeenPicture({ seen }: { seen: SeenAnswer }) {
  const { words } = useSetting()
  const { observation, answer, picture, general } = seen
  return (
    <figure class="seen" data-observation={observation} data-seen={answer}>
      <Drawing id={picture} name={answerLabel(words, observation, answer)} />
      <figcaption>
        <span class="seen-cue">{words.t(general ? 'ui:seen.such' : 'ui:seen.yours')}</span>{' '}
        <AnswerName observation={observation} answer={answer} />
      </figcaption>
    </figure>
  )
}

/** On paper: the drawing of what was seen beside the one to compare it with, each with the surest sign. */
export function SeenOnPaper({ seen }: { seen: SeenAnswer }) {
  const { words } = useSetting()
  const { observation, answer, picture, compare, general } = seen
  const pair = compare && (`look-alikes:${compare.pair.id}` as const)
  const other = compare?.seen === 'one' ? 'other' : 'one'
  const sign = pair && (`${pair}.differences.${compare.pair.differs[0]}` as const)
  return (
    <div class="sheet-seen">
      <figure data-observation={observation} data-seen={answer}>
        <Drawing id={picture} name={answerLabel(words, observation, answer)} />
        <figcaption>
          <span class="seen-cue">{words.t(general ? 'ui:seen.such' : 'ui:seen.yours')}</span>{' '}
          <strong>{answerLabel(words, observation, answer)}</strong>
          {sign && <span class="seen-sign">{words.t(`${sign}.${compare?.seen}`)}</span>}
        </figcaption>
      </figure>
      {pair && sign && compare && (
        <figure data-compare={compare.pair.id}>
          <Drawing id={compare.picture} name={words.t(`${pair}.${other}`)} />
          <figcaption>
            <span class="seen-cue">{words.t('ui:seen.compare')}</span>{' '}
            <strong>{words.t(`${pair}.${other}`)}</strong>
            <span class="seen-sign">{words.t(`${sign}.${other}`)}</span>
          </figcaption>
        </figure>
      )}
    </div>
  )
}

/** What was seen and what it is mixed up with, folded: how the two differ, and how to make sure. */
export function SeenCompared({ seen }: { seen: SeenAnswer }) {
  const { words, drawings } = useSetting()
  const pair = seen.compare?.pair
  if (pair === undefined) return null
  return (
    <section class="section" data-section="compare">
      <details class="section-fold">
        <summary>
          <h2>{words.t(`look-alikes:${pair.id}.title`)}</h2>
        </summary>
        <LookAlike pair={pair} drawings={drawings} />
        <LookAlikesNever />
      </details>
    </section>
  )
}

/** A drawing with its alternative text: its own description where there is one, else its name. */
function Drawing({ id, name }: { id: string; name: string }) {
  const { words, drawings } = useSetting()
  const own = `pictures:${id}.short` as const
  return (
    <span
      class="seen-drawing"
      role="img"
      aria-label={words.has(own) ? words.t(own) : words.t('ui:seen.drawing', { name })}
      // The project's own file, checked at build.
      dangerouslySetInnerHTML={{ __html: drawings[id] ?? '' }}
    />
  )
}
