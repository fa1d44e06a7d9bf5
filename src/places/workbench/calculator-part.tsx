import { useMemo } from 'preact/hooks'
import { useSpeech } from '../../parts/setting.tsx'
import { BadInput } from '../../science/bad-input.ts'
import type { Calculator } from '../../words/reckoned/calculators.ts'
import { readPasted } from '../../words/reckoned/pasted-readings.ts'
import type { Reckoned } from '../../words/reckoned/reckoned.ts'
import type { Words } from '../../words/words.ts'
import { chartOf } from './charts/chart-of.tsx'
import { FieldPart } from './field-part.tsx'
import { fieldsOf, givenIn, NotANumber, type TypedFields } from './fields.ts'

/** One calculator: its inputs, what they come to in sentences, and its picture. */
export function CalculatorPart({
  calculator,
  values,
  onChange
}: {
  calculator: Calculator
  values: TypedFields
  onChange: (values: TypedFields) => void
}) {
  const { words } = useSpeech()
  const { id } = calculator
  const found = useMemo(() => reckoned(calculator, values, words), [calculator, values, words])
  const says = 'says' in found ? found.says : []
  const left = notUnderstood(calculator, values)
  return (
    <section class="calculator" aria-labelledby={`calculator-${id}`}>
      <h2 id={`calculator-${id}`}>{words.t(`ui:workbench.calculators.${id}.title`)}</h2>
      <p>{words.t(`ui:workbench.calculators.${id}.about`)}</p>
      <form class="calculator-fields" noValidate onSubmit={event => event.preventDefault()}>
        {fieldsOf(calculator).map(field => (
          <FieldPart
            key={field.id}
            field={field}
            values={values}
            isFaulty={'fault' in found && found.field === field.id}
            onChange={more => onChange({ ...values, ...more })}
          />
        ))}
      </form>
      <div class="calculator-result" role="status">
        {'fault' in found && <p class="error">{found.fault}</p>}
        {says.map((sentence, index) => (
          <p key={sentence} class={index === 0 ? 'calculator-first' : undefined}>
            {sentence}
          </p>
        ))}
        {left.length > 0 && (
          <p class="error">{words.t('ui:workbench.not-understood', { lines: left.join(' / ') })}</p>
        )}
      </div>
      {'says' in found && chartOf(id, givenIn(values), says[0] ?? '')}
      {'says' in found && (
        <details class="why">
          <summary>{words.t('ui:workbench.sources')}</summary>
          <ul>
            {found.sources.map(source => (
              <li key={source} lang="en">
                {source}
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  )
}

type Found =
  | { readonly says: readonly string[]; readonly sources: Reckoned['sources'] }
  | { readonly fault: string; readonly field: string }

/** The sentences of a result, or the one sentence about what cannot be. */
function reckoned(calculator: Calculator, values: TypedFields, words: Words): Found {
  try {
    const { says, sources } = calculator.reckon(givenIn(values))
    return { says: says.map(({ key, values: of }) => words.t(key, of)), sources }
  } catch (error) {
    if (error instanceof NotANumber) {
      const name = words.t(`ui:workbench.fields.${error.field}`)
      return { fault: words.t('ui:workbench.not-a-number', { name }), field: error.field }
    }
    if (error instanceof BadInput) return { fault: badInputText(error, words), field: error.input }
    throw error
  }
}

function badInputText({ input, value, allowed }: BadInput, words: Words): string {
  const key = `ui:workbench.fields.${input}` as 'ui:workbench.fields.starter'
  const unit = allowed.unit === '' ? '' : ` ${allowed.unit}`
  const short = (x: number): string => `${Number(x.toPrecision(4))}${unit}`
  return words.t('ui:reckon.bad-input', {
    input: words.has(key) ? words.t(key) : input,
    value: short(value),
    from: short(allowed.from),
    to: short(allowed.to)
  })
}

/** Lines of pasted text that no reading was found in. */
function notUnderstood(calculator: Calculator, values: TypedFields): readonly string[] {
  try {
    return calculator.inputs.flatMap(({ kind, id }) =>
      kind === 'readings' ? readPasted(values[id] ?? '', undefined).notUnderstood : []
    )
  } catch {
    // What cannot be is told by the result itself.
    return []
  }
}
