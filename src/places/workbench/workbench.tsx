import { useEffect, useMemo, useState } from 'preact/hooks'
import type { Catalogue, Openers } from '../../opening/bundle.ts'
import { speechIn } from '../../opening/speech.ts'
import { useOffice } from '../../opening/use-office.ts'
import { usePageLanguage, useScreens } from '../../opening/use-screens.ts'
import { useToday } from '../../opening/use-today.ts'
import { Foot } from '../../parts/foot.tsx'
import { Masthead } from '../../parts/masthead.tsx'
import { SpeechProvider } from '../../parts/setting.tsx'
import { CALCULATORS, type Calculator } from '../../words/reckoned/calculators.ts'
import { SOURCE_TAG } from '../../words/words.ts'
import { CalculatorPart } from './calculator-part.tsx'
import { startValues, type TypedFields } from './fields.ts'

/** Every calculator on its own, for class use: what stands in the fields stands in the link. */
export function Workbench({ catalogue, openers }: { catalogue: Catalogue; openers: Openers }) {
  const today = useToday()
  const office = useOffice('./office.json', '')
  const [linked] = useState(() => readHash(window.location.hash))
  const [tag, setTag] = useState(linked.get('lang') ?? SOURCE_TAG)
  const screens = useScreens(catalogue, openers, tag)
  usePageLanguage(screens.tag)
  const speech = useMemo(() => speechIn(screens.texts, screens.tag), [screens.texts, screens.tag])
  const [calculator, setCalculator] = useState<Calculator>(
    () => CALCULATORS.find(({ id }) => id === linked.get('calculator')) ?? CALCULATORS[0]
  )
  const [values, setValues] = useState<TypedFields>(() => startValues(calculator, linked))
  const { words } = speech
  const title = words.t('ui:workbench.title')
  useEffect(() => {
    document.title = `${words.t(`ui:workbench.calculators.${calculator.id}.title`)} · ${title} · Jarside`
  }, [words, calculator, title])
  useEffect(() => {
    const query = new URLSearchParams({ calculator: calculator.id, ...values })
    if (screens.tag !== SOURCE_TAG) query.set('lang', screens.tag)
    history.replaceState(history.state, '', `#${query}`)
  }, [calculator, values, screens.tag])
  return (
    <SpeechProvider value={speech}>
      <div class="workbench">
        <Masthead
          title={title}
          draft={false}
          languages={catalogue.languages}
          onLanguage={setTag}
          languageLost={screens.failed}
          onBack={null}
          onStartOver={null}
        />
        <main>
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
        </main>
        <Foot office={office} today={today} />
      </div>
    </SpeechProvider>
  )
}

const readHash = (hash: string): URLSearchParams => new URLSearchParams(hash.replace(/^#/, ''))
