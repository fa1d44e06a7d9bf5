import { useState } from 'preact/hooks'
import { workOut } from '../machine/derived/derive.ts'
import type { Answers } from '../tree/answers.ts'
import { inputsOf } from '../tree/derived.ts'
import type { MeasureObservation } from '../tree/observation.ts'
import { workedOutText } from '../words/worked-out-text.ts'
import { InputField } from './input-field.tsx'
import { useSetting } from './setting.tsx'
import { TYPED_UNITS } from './units.ts'

/** A measure worked out from plain quantities: a field for each, and the arithmetic in one line. */
export function WorkOut({
  observation,
  told,
  onInputs
}: {
  observation: MeasureObservation
  told: Answers
  onInputs: (inputs: Answers) => void
}) {
  const { words } = useSetting()
  const inputs = inputsOf(observation)
  const [given, setGiven] = useState<Answers>(() =>
    Object.fromEntries(Object.entries(told).filter(([id]) => inputs.includes(id)))
  )
  const [faulty, setFaulty] = useState<ReadonlySet<string>>(new Set())
  const { unsure, ...numbers } = { unsure: 'unsure', ...given }
  // What stays empty is told as not known, and never guessed.
  const full: Answers = { ...Object.fromEntries(inputs.map(id => [id, unsure])), ...numbers }
  const worked = faulty.size > 0 ? null : workOut(observation, { ...told, ...full })
  const canBeRead = TYPED_UNITS[observation.unit].length > 0
  return (
    <form
      class="work-out"
      noValidate
      onSubmit={event => {
        event.preventDefault()
        if (faulty.size === 0) onInputs(full)
      }}
    >
      <h2>{words.t(canBeRead ? 'ui:worked-out.heading' : 'ui:worked-out.only')}</h2>
      <p>{words.t('ui:worked-out.how')}</p>
      {inputs.map(id => (
        <InputField
          key={id}
          id={id}
          before={given[id]}
          onChange={(answer, isFaulty) => {
            setGiven(({ [id]: _, ...rest }) => (answer === null ? rest : { ...rest, [id]: answer }))
            setFaulty(before => withOrWithout(before, id, isFaulty))
          }}
        />
      ))}
      <output class="worked-out">{workedOutText(words, worked)}</output>
      <div class="actions">
        <button type="submit" class={canBeRead ? 'secondary' : 'primary'}>
          {words.t('ui:worked-out.go-on')}
        </button>
      </div>
    </form>
  )
}

function withOrWithout(
  before: ReadonlySet<string>,
  id: string,
  isIn: boolean
): ReadonlySet<string> {
  const after = new Set(before)
  if (isIn) after.add(id)
  else after.delete(id)
  return after
}
