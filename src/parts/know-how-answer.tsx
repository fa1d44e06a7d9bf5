import type { SaidKnowHow } from '../words/know-how-text.ts'
import { sourceLine } from '../words/sources.ts'
import { Edge } from './edge.tsx'
import { Phone } from './phone.tsx'
import { useSpeech } from './setting.tsx'
import { Both, Text } from './text.tsx'

/** An answer to a how-to question, in the language spoken and in the one that stands beside it. */
export interface AnswerTwice {
  readonly said: SaidKnowHow
  readonly beside: SaidKnowHow | null
  /** By picture id. */
  readonly drawings: Readonly<Record<string, string>>
}

/** The answer to a how-to question as a card: what it stands on and whom else to ask are folded under it. */
export function KnowHowAnswer({ said, beside, drawings }: AnswerTwice) {
  const { words, second } = useSpeech()
  return (
    <article class="verdict know-how" data-know-how={said.id}>
      <Edge verdict="ask-specialist" track="batch" signal="none" onPaper={false} />
      <div class="verdict-body">
        <h2>
          <Both text={said.ask} second={second?.shows === 'everything' ? beside?.ask : null} />
        </h2>
        <p class="know-how-answer">
          <Both text={said.answer} second={beside?.answer} />
        </p>
        <KnowHowPictures said={said} beside={beside} drawings={drawings} />
        <p class="know-how-standing">
          {said.basis} {said.draft}
        </p>
        <details class="know-how-more">
          <summary>{words.t('ui:sources')}</summary>
          <KnowHowGround said={said} />
        </details>
      </div>
    </article>
  )
}

/** What an answer stands on, by when it is reviewed, and whom to ask when it is beyond it. */
export function KnowHowGround({ said }: { said: SaidKnowHow }) {
  return (
    <div class="know-how-ground">
      <ul class="know-how-sources">
        {said.sources.map(source => (
          <li key={source.id}>{sourceLine(source)}</li>
        ))}
      </ul>
      <p>{said.due}</p>
      <p class="know-how-beyond">
        <Text k="ui:know-how.beyond" />
      </p>
      <ul class="know-how-sources">
        {said.beyond.map(({ to, name, phone }) => (
          <li key={to}>
            {name} {phone !== null && <Phone number={phone} />}
          </li>
        ))}
      </ul>
    </div>
  )
}

/** What is done, drawn step by step; nothing where nothing is drawn. */
export function KnowHowPictures({ said, beside, drawings }: AnswerTwice) {
  if (said.shows.length === 0) return null
  return (
    <ol class="know-how-shows">
      {said.shows.map(({ picture, caption }, index) => (
        <li key={picture}>
          <span
            class="picture"
            aria-hidden="true"
            // The drawings are the project's own files, checked at build; nothing from outside is put here.
            dangerouslySetInnerHTML={{ __html: drawings[picture] ?? '' }}
          />
          <span>
            <Both text={caption} second={beside?.shows[index]?.caption} />
          </span>
        </li>
      ))}
    </ol>
  )
}
