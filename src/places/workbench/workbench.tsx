import { useEffect, useState } from 'preact/hooks'
import type { Catalogue, Openers } from '../../opening/bundle.ts'
import { useLinked, useLinkedPage } from '../../opening/use-linked-page.ts'
import { Screen } from '../../parts/screen.tsx'
import { SpeechProvider } from '../../parts/setting.tsx'
import { CALCULATORS, type Calculator } from '../../words/reckoned/calculators.ts'
import { SOURCE_TAG } from '../../words/words.ts'
import { CalculatorPart } from './calculator-part.tsx'
import { startValues, type TypedFields } from './fields.ts'

/** Every calculator on its own, for class use: what stands in the fields stands in the link. */
export function Workbench({ catalogue, openers }: { catalogue: Catalogue; openers: Openers }) {
  const linked = useLinked()
  const [calculator, setCalculator] = useState<Calculator>(
    () => CALCULATORS.find(({ id }) => id === linked.get('calculator')) ?? CALCULATORS[0]
  )
  const [values, setValues] = useState<TypedFields>(() => startValues(calculator, linked))
  const { speech, frame } = useLinkedPage(
    { catalogue, openers },
    () => linked.get('lang') ?? SOURCE_TAG,
    { calculator: calculator.id, ...values }
  )
  const { words } = speech
  const title = words.t('ui:workbench.title')
  useEffect(() => {
    document.title = `${words.t(`ui:workbench.calculators.${calculator.id}.title`)} · ${title} · Jarside`
  }, [words, calculator, title])
  return (
    <SpeechProvider value={speech}>
      <Screen
        {...frame}
        look="workbench"
        title={title}
        draft={false}
        onBack={null}
        onStartOver={null}
      >
        <h1>{title}</h1>
        <p>{words.t('ui:workbench.intro')}</p>
        <nav class="calculator-names" aria-label={words.t('ui:workbench.choose')}>
          {CALCULATORS.map(one => (
            <button
              key={one.id}
              type="button"
              class="quiet"
              data-calculator={one.id}
              aria-current={one.id === calculator.id ? 'page' : undefined}
              onClick={() => {
                setCalculator(one)
                setValues(startValues(one, new URLSearchParams()))
              }}
            >
              {words.t(`ui:workbench.calculators.${one.id}.title`)}
            </button>
          ))}
        </nav>
        <CalculatorPart calculator={calculator} values={values} onChange={setValues} />
      </Screen>
    </SpeechProvider>
  )
}
