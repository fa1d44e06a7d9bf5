import { useState } from 'preact/hooks'
import { writeLink } from '../addresses/link.ts'
import { addressOf } from '../addresses/route.ts'
import type { Answers } from '../tree/answers.ts'
import { outcomeLines, standingLines } from '../words/outcome-lines.ts'
import type { Said } from '../words/say.ts'
import type { TextKey } from '../words/text-key.ts'
import type { Words } from '../words/words.ts'
import { askToPrint } from './print-preview.tsx'
import { useSetting } from './setting.tsx'

/** A text to take along in another form, and what is said once it is copied. */
export interface Copy {
  readonly id: string
  readonly text: () => string
  readonly label: TextKey
  readonly done: TextKey
}

/** What can be done with an outcome: print it, take it along as text, or keep a link to its answers. */
export function Actions({
  said,
  answers,
  handed,
  copies = [],
  home = location.href.split('#')[0] ?? ''
}: {
  /** The outcome in the language of whoever takes it along. */
  said: Said
  answers: Answers
  /** That language, where it is not the screen's own. */
  handed?: Words
  /** What else this place lets one copy. */
  copies?: readonly Copy[]
  /** Where whoever gets the link opens it. */
  home?: string
}) {
  const { words, tree } = useSetting()
  const [done, setDone] = useState('')
  const taken = handed ?? words
  const copy = async (text: string, sentence: string) => {
    try {
      await navigator.clipboard.writeText(text)
      setDone(sentence)
    } catch {
      // Some browsers refuse the clipboard: the text is shown to be copied by hand.
      setDone(text)
    }
  }
  const text = () => [...outcomeLines(said, taken), '', ...standingLines(said)].join('\n').trim()
  const link = () => `${home}${addressOf(null, taken.tag)}${writeLink(tree, answers)}`
  return (
    <div class="keep-it">
      <button type="button" class="secondary" onClick={askToPrint}>
        {words.t('ui:print')}
      </button>
      <button
        type="button"
        class="secondary"
        data-action="copy-text"
        onClick={() => copy(text(), words.t('ui:copied-text'))}
      >
        {words.t('ui:copy-text')}
      </button>
      <button
        type="button"
        class="secondary"
        data-action="copy-link"
        onClick={() => copy(link(), words.t('ui:copied-link'))}
      >
        {words.t('ui:copy-link')}
      </button>
      {copies.map(({ id, text: other, label, done: sentence }) => (
        <button
          key={id}
          type="button"
          class="secondary"
          data-action={`copy-${id}`}
          onClick={() => copy(other(), words.t(sentence))}
        >
          {words.t(label)}
        </button>
      ))}
      <p class="keep-it-note">{words.t('ui:link-note')}</p>
      <p class="keep-it-done" role="status">
        {done}
      </p>
    </div>
  )
}
