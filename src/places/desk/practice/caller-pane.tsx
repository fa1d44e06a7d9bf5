import { useState } from 'preact/hooks'
import { useSpeech } from '../../../parts/setting.tsx'
import { fullAnswers } from '../../../practice/caller-facts.ts'
import type { PracticeCaller } from '../../../tree/practice-caller.ts'
import type { Tree } from '../../../tree/tree.ts'
import { answerText } from '../../../words/answer-text.ts'
import type { SheetSeen } from '../watched.ts'

/** What the caller tells unasked, what the caller sees, and what the caller answers to the question on the sheet. */
export function CallerPane({
  caller,
  telling,
  english,
  language,
  drawings,
  home,
  seen
}: {
  caller: PracticeCaller
  telling: string
  /** The same in English, where the caller speaks another language. */
  english: string | null
  /** The name of the caller's language. */
  language: string
  drawings: Readonly<Record<string, string>>
  /** The caller's tree, once it has arrived. */
  home: Tree | null
  seen: SheetSeen | null
}) {
  const { words } = useSpeech()
  const [asked, setAsked] = useState<string | null>(null)
  const asks = seen?.asks ?? null
  return (
    <>
      <section class="practice-tells">
        <h2>{words.t('ui:practice.tells')}</h2>
        {english !== null && (
          <p class="practice-intro">{words.t('ui:practice.speaks', { language })}</p>
        )}
        <blockquote lang={caller.speaks}>{telling}</blockquote>
        {english !== null && <blockquote class="practice-english">{english}</blockquote>}
      </section>
      {caller.pictures.length > 0 && (
        <section class="practice-sees" aria-label={words.t('ui:practice.sees')}>
          {caller.pictures.map(id => (
            <figure key={id}>
              <span
                class="picture"
                role="img"
                aria-label={words.t(`pictures:${id}.long`)}
                // The drawings are the project's own files, checked at build; nothing from outside is put here.
                dangerouslySetInnerHTML={{ __html: drawings[id] ?? '' }}
              />
            </figure>
          ))}
        </section>
      )}
      <section class="practice-asks">
        <button
          type="button"
          class="secondary"
          data-action="ask-caller"
          disabled={asks === null || home === null}
          onClick={() => setAsked(asks)}
        >
          {words.t('ui:practice.ask')}
        </button>
        <p role="status">
          {asked !== null && asked === asks && home !== null && seen !== null && (
            <>
              {words.t('ui:practice.says')}: <strong>{reply(home, caller, seen, asked)}</strong>
            </>
          )}
        </p>
      </section>
    </>
  )

  /** As the sheet words it, in the caller's language where it stands beside the English. */
  function reply(
    tree: Tree,
    { answers, speaks }: PracticeCaller,
    on: SheetSeen,
    id: string
  ): string {
    const answer = fullAnswers(tree, answers)[id]
    const observation = on.tree.observations[id]
    if (answer === undefined || observation === undefined) return words.t('ui:practice.cannot-say')
    const english = answerText(on.words, observation, answer)
    if (on.second === null || speaks === on.words.tag) return english
    return `${answerText(on.second, observation, answer)} (${english})`
  }
}
