import { useState } from 'preact/hooks'
import { useSpeech } from '../../../parts/setting.tsx'
import {
  DIFFICULTIES,
  type Difficulty,
  type PracticeCaller
} from '../../../tree/practice-caller.ts'

/** So much of what somebody tells is enough to find them again. */
const WORDS = 7

/** Who is on the line: chosen from the list, or drawn among those that are as hard as one likes. */
export function PickCaller({
  callers,
  caller,
  onCaller,
  onDraw,
  volunteer,
  onVolunteer
}: {
  callers: readonly PracticeCaller[]
  caller: PracticeCaller
  onCaller: (caller: PracticeCaller) => void
  onDraw: (among: readonly PracticeCaller[]) => void
  volunteer: string
  onVolunteer: (typed: string) => void
}) {
  const { words } = useSpeech()
  const [hard, setHard] = useState<Difficulty | 'any'>('any')
  const among = callers.filter(({ difficulty }) => hard === 'any' || difficulty === hard)
  return (
    <div class="practice-pick">
      <label>
        {words.t('ui:practice.volunteer')}
        <input
          class="practice-number"
          name="volunteer"
          inputMode="numeric"
          autocomplete="off"
          maxLength={4}
          value={volunteer}
          onInput={event => onVolunteer(event.currentTarget.value)}
        />
      </label>
      <label>
        {words.t('ui:practice.difficulty.label')}
        <select
          name="difficulty"
          value={hard}
          onChange={event => {
            const { value } = event.currentTarget
            setHard(DIFFICULTIES.find(each => each === value) ?? 'any')
          }}
        >
          {(['any', ...DIFFICULTIES] as const).map(each => (
            <option key={each} value={each}>
              {words.t(`ui:practice.difficulty.${each}`)}
            </option>
          ))}
        </select>
      </label>
      <button type="button" class="secondary" data-action="draw" onClick={() => onDraw(among)}>
        {words.t('ui:practice.draw')}
      </button>
      <label class="practice-who">
        {words.t('ui:practice.choose')}
        <select
          name="caller"
          value={caller.id}
          onChange={event => {
            const chosen = callers.find(({ id }) => id === event.currentTarget.value)
            if (chosen) onCaller(chosen)
          }}
        >
          {/* The one on the line stays in the list, however hard it is. */}
          {callers.map(each =>
            among.includes(each) || each === caller ? (
              <option key={each.id} value={each.id}>
                {words.t('ui:practice.caller', {
                  number: callers.indexOf(each) + 1,
                  words: words.t(`practice:${each.id}`).split(' ').slice(0, WORDS).join(' ')
                })}
              </option>
            ) : null
          )}
        </select>
      </label>
    </div>
  )
}
