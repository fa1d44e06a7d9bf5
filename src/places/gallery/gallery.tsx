import { useEffect, useRef } from 'preact/hooks'
import { type Setting, SettingProvider } from '../../parts/setting.tsx'
import { contactSheets } from './contact-sheets.tsx'
import { frameSheets } from './frame-sheets.tsx'
import { knowHowSheets } from './know-how-sheets.tsx'
import { outcomeSheets } from './outcome-sheets.tsx'
import { placeSheets } from './place-sheets.tsx'
import { questionSheets } from './question-sheets.tsx'
import type { Sheet, State } from './sheet.ts'

/** Every part of the page in all its states: a list of sheets, and the sheet that the address names. */
export function Gallery({ setting, at }: { setting: Setting; at: string }) {
  const sheets = [
    ...frameSheets(setting),
    ...questionSheets(setting),
    ...outcomeSheets(setting),
    ...placeSheets(setting),
    ...knowHowSheets(setting),
    ...contactSheets(setting)
  ]
  const index = sheets.findIndex(({ id }) => id === at)
  const sheet = sheets[index]
  useEffect(() => {
    if (sheet?.whole !== true) document.title = `${sheet?.id ?? 'All parts'} · Jarside gallery`
    scrollTo(0, 0)
  }, [sheet?.id])
  if (sheet === undefined) return <Sheets sheets={sheets} />
  return (
    <SettingProvider value={setting}>
      <nav class="gallery-moves" aria-label="Gallery" data-sheet={sheet.id}>
        <a href="#/">All parts</a>
        <Move rel="prev" sheet={sheets[index - 1]} />
        <Move rel="next" sheet={sheets[index + 1]} />
      </nav>
      <Shown key={sheet.id} sheet={sheet} setting={setting} />
    </SettingProvider>
  )
}

function Sheets({ sheets }: { sheets: readonly Sheet[] }) {
  return (
    <main class="gallery">
      <h1>Parts of the page, in all their states</h1>
      <p>
        For those who change them. Every state is made of the real tree, by the functions that the
        page itself calls.
      </p>
      <ul class="gallery-list">
        {sheets.map(({ id, parts, states }) => (
          <li key={id} data-parts={parts.join(' ')}>
            <a href={`#/${id}`}>{id}</a>
            {states.length > 1 && `: ${states.map(({ name }) => name).join(', ')}`}
          </li>
        ))}
      </ul>
    </main>
  )
}

function Move({ rel, sheet }: { rel: 'prev' | 'next'; sheet: Sheet | undefined }) {
  if (sheet === undefined) return null
  return (
    <a rel={rel} href={`#/${sheet.id}`}>
      {rel === 'prev' ? '←' : '→'} {sheet.id}
    </a>
  )
}

function Shown({ sheet, setting }: { sheet: Sheet; setting: Setting }) {
  const [only] = sheet.states
  if (sheet.whole && only !== undefined) return <Specimen state={only} setting={setting} />
  return (
    <main class="gallery" data-sheet={sheet.id}>
      <h1>{sheet.parts.join(', ')}</h1>
      {sheet.states.map(state => (
        <section key={state.name} class="gallery-state">
          <h2>{state.name}</h2>
          <Specimen state={state} setting={setting} />
        </section>
      ))}
    </main>
  )
}

function Specimen({ state, setting }: { state: State; setting: Setting }) {
  const specimen = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (specimen.current !== null) state.stage?.(specimen.current)
  }, [])
  return (
    <SettingProvider value={{ ...setting, ...state.setting }}>
      <div class="specimen" data-state={state.name} ref={specimen}>
        {state.show}
      </div>
    </SettingProvider>
  )
}
