import { type Kind, kindOf } from '../../words/kinds.ts'
import type { TextKey } from '../../words/text-key.ts'
import type { Values } from '../../words/words.ts'
import { type Speech, useSpeech } from './setting.tsx'

/** A second language longer than this starts a line of its own even where room is short. */
const LONG = 110

/** The kinds of text that are never left to a draft translation alone. */
const NEVER_ALONE: ReadonlySet<Kind> = new Set(['action', 'referral', 'caution'])

/** A text by its key, with the second language under it where one belongs there. */
export function Text({ k, values }: { k: TextKey; values?: Values }) {
  const speech = useSpeech()
  return <Both text={speech.words.t(k, values)} second={secondText(speech, k, values)} />
}

/** A text and, unless there is none or it says the same, its second language. */
export function Both({ text, second }: { text: string; second: string | null | undefined }) {
  const speech = useSpeech()
  if (!second || second === text) return <>{text}</>
  return (
    <>
      {text}{' '}
      <span
        class={second.length > LONG ? 'second second-long' : 'second'}
        lang={speech.second?.words.tag}
      >
        {second}
      </span>
    </>
  )
}

/** What stands under a text in the second language; null where none is shown. */
export function secondText({ second }: Speech, k: TextKey, values?: Values): string | null {
  if (second === null) return null
  const [namespace = '', key = ''] = k.split(':')
  const shown = second.shows === 'everything' || NEVER_ALONE.has(kindOf(namespace, key))
  return shown ? second.words.t(k, values) : null
}
