import { useSpeech } from './setting.tsx'

/** The keys of answers in their order: digits first, then letters that no other key needs. */
const KEYS = [...'123456789abcdefghijklmnop']
export const KEY_NONE = '0'
export const KEY_UNSURE = 'u'

/** The key that gives the answer at a place; none where there are more answers than keys. */
export const keyOf = (at: number): string | undefined => KEYS[at]

/** The key of an answer, shown where answers are given by keys. */
export function Key({ of }: { of: string | undefined }) {
  const { numbered } = useSpeech()
  if (!numbered || of === undefined) return null
  return (
    <span class="key" aria-hidden="true">
      {of.toUpperCase()}
    </span>
  )
}
