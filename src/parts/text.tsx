import type { ComponentChildren } from 'preact'
import { directionOf } from '../words/direction.ts'
import { kindOf, type TextKind } from '../words/kinds.ts'
import type { TextKey } from '../words/text-key.ts'
import type { TextValues } from '../words/words.ts'
import { type Speech, useSpeech } from './setting.tsx'

/** A second language longer than this starts a line of its own even where room is short. */
const LONG = 110

/** The kinds of text that are never left to a draft translation alone. */
const NEVER_ALONE: ReadonlySet<TextKind> = new Set(['action', 'referral', 'caution'])

/** A text by its key, with the second language under it where one belongs there. */
export function Text({ k, values }: { k: TextKey; values?: TextValues }) {
  const speech = useSpeech()
  return <Both text={speech.words.t(k, values)} second={secondText(speech, k, values)} />
}

/** A text and, unless there is none or it says the same, its second language. */
export function Both({ text, second }: { text: string; second: string | null | undefined }) {
  const speech = useSpeech()
  if (!second || second === text) return <>{whole(text)}</>
  // The English already stands in place of the translation, with the reason behind it.
  if (text.startsWith(second)) {
    return (
      <>
        <span {...inItsOwn(speech)}>{whole(second)}</span>
        {whole(text.slice(second.length))}
      </>
    )
  }
  return (
    <>
      {/* One box each: a number in a sentence stays in it where the two stand side by side. */}
      <span class="first">{whole(text)}</span>{' '}
      <span class={second.length > LONG ? 'second second-long' : 'second'} {...inItsOwn(speech)}>
        {whole(second)}
      </span>
    </>
  )
}

/** The language of the second text, and the direction in which it is written. */
function inItsOwn({ second }: Speech) {
  return second ? { lang: second.words.tag, dir: directionOf(second.words.tag) } : {}
}

/** What stands under a text in the second language; null where none is shown. */
export function secondText({ second }: Speech, k: TextKey, values?: TextValues): string | null {
  if (second === null) return null
  const [namespace = '', key = ''] = k.split(':')
  const shown = second.shows === 'everything' || NEVER_ALONE.has(kindOf(namespace, key))
  return shown ? second.words.t(k, values) : null
}

/** A phone number in a sentence: it is read out in one breath, and stands on one line. */
const PHONE = /(\b(?:1-)?\d{3}-\d{3}-\d{4}\b|\b\d{3}-\d{4}\b)/

function whole(text: string): ComponentChildren {
  const parts = text.split(PHONE)
  if (parts.length === 1) return text
  return parts.map((part, index) =>
    index % 2 === 1 ? (
      // A text never changes its parts: where one stands is what tells it apart.
      <span key={index} class="whole">
        {part}
      </span>
    ) : (
      part
    )
  )
}
