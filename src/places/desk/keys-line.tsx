import { useSetting } from '../../parts/setting.tsx'
import type { KeysDo } from './use-answer-keys.ts'

const SAYS = {
  write: 'ui:desk.keys-write',
  answer: 'ui:desk.keys-answer',
  rest: 'ui:desk.keys-rest'
} as const

/** What letters and digits do at this moment, and the switch that keeps them from answering. */
export function KeysLine({
  on,
  onChange,
  keysDo
}: {
  on: boolean
  onChange: (on: boolean) => void
  keysDo: KeysDo
}) {
  const { words } = useSetting()
  return (
    <p class="desk-keys">
      <label class="desk-by-keys">
        <input
          type="checkbox"
          data-switch="answer-by-keys"
          checked={on}
          onChange={event => onChange(event.currentTarget.checked)}
        />
        {words.t('ui:desk.answer-by-keys')}
      </label>{' '}
      <span class="desk-keys-do">{words.t(on ? SAYS[keysDo] : 'ui:desk.keys-off')}</span>
    </p>
  )
}
