import { useId, useState } from 'preact/hooks'
import { useSpeech } from '../../parts/setting.tsx'

/** A question in one's own words. It stays on this page: it is in no address and is not kept. */
export function AskField({ onAsk }: { onAsk: (line: string) => void }) {
  const { words } = useSpeech()
  const [line, setLine] = useState('')
  const id = useId()
  return (
    <search>
      <form
        class="ask-field"
        onSubmit={event => {
          event.preventDefault()
          if (line.trim() !== '') onAsk(line)
        }}
      >
        <label for={id}>{words.t('ui:know-how.field')}</label>
        <div class="ask-line">
          <input
            id={id}
            type="search"
            autocomplete="off"
            enterkeyhint="search"
            aria-describedby={`${id}-how`}
            value={line}
            onInput={event => setLine(event.currentTarget.value)}
          />
          <button type="submit" class="primary">
            {words.t('ui:know-how.find')}
          </button>
        </div>
        <p class="ask-how" id={`${id}-how`}>
          {words.t('ui:know-how.example')}
        </p>
      </form>
    </search>
  )
}
