import { useSpeech } from '../../parts/setting.tsx'
import type { TextKey } from '../../words/text-key.ts'

function Way({ page, k }: { page: string; k: TextKey }) {
  const { words } = useSpeech()
  return (
    <p class={`way-${page}`}>
      <a href={`./${page}.html#lang=${words.tag}`}>{words.t(k)}</a>
    </p>
  )
}

/** The ways from the choice of a ferment to other pages, in the language spoken. */
export const WAYS = {
  above: <Way page="how-to" k="ui:ask-how" />,
  below: <Way page="look-alikes" k="ui:look-alikes.see-all" />
}
