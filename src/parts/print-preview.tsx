import type { ComponentChildren } from 'preact'
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks'
import type { Words } from '../words/words.ts'
import { fitSheet, SHEET_TYPE } from './fit-sheet.ts'
import {
  type OtherSheet,
  PAPERS,
  PRINTS,
  type PrintChoice,
  type SheetName
} from './print-choice.ts'
import { useSetting } from './setting.tsx'
import { languageIn } from './sheet-side.tsx'

const ASKED = 'jarside-print'

/** Shows the sheet before it is printed where there is a preview of one; prints at once elsewhere. */
export function askToPrint(): void {
  const isOpened = !dispatchEvent(new Event(ASKED, { cancelable: true }))
  if (!isOpened) print()
}

/** Calls back whenever somebody wants to print, in place of the printer. */
export function usePrintAsked(open: () => void): void {
  useEffect(() => {
    const answer = (event: Event) => {
      event.preventDefault()
      open()
    }
    addEventListener(ASKED, answer)
    return () => removeEventListener(ASKED, answer)
  })
}

/** Fits the sides in an element to their paper; in large print they take the pages that they need. */
export function fitSides(place: HTMLElement, { print: type }: Pick<PrintChoice, 'print'>): void {
  if (type === 'large') return
  for (const side of place.querySelectorAll<HTMLElement>('.sheet')) fitSheet(side, SHEET_TYPE)
}

/** The sheets as they will be printed, with what can be chosen about them. */
export function PrintPreview({
  chosen,
  others,
  overleaf,
  onChoose,
  onClose,
  children
}: {
  chosen: PrintChoice
  /** The sheets that there are besides the outcome's own. */
  others: readonly OtherSheet[]
  /** The English that can stand on the other side; `always` behind a draft. */
  overleaf: { readonly words: Words; readonly always: boolean } | null
  onChoose: (next: PrintChoice) => void
  onClose: () => void
  children: ComponentChildren
}) {
  const { words } = useSetting()
  const dialog = useRef<HTMLDialogElement>(null)
  const paper = useRef<HTMLDivElement>(null)
  // First, since what is closed has no size to fit.
  useLayoutEffect(() => dialog.current?.showModal(), [])
  useLayoutEffect(() => {
    const place = paper.current
    if (place === null) return
    // Measured in its own size, shown as large as the window has room for.
    place.style.setProperty('zoom', '1')
    fitSides(place, chosen)
    const room = (place.parentElement?.clientWidth ?? 0) / place.scrollWidth
    place.style.setProperty('zoom', String(Math.min(1, room)))
  }, [chosen])
  // The dialog gives the focus back before the printer takes the window.
  const printIt = () => {
    dialog.current?.close()
    print()
  }
  const toggle = (name: SheetName) => {
    const sheets = new Set(chosen.sheets)
    if (!sheets.delete(name)) sheets.add(name)
    onChoose({ ...chosen, sheets })
  }
  const sheets = [
    { name: 'outcome' as const, title: words.t('ui:outcome') },
    ...others.map(({ name, title }) => ({ name, title: title(words) }))
  ]
  return (
    <dialog class="preview" ref={dialog} aria-labelledby="preview-title" onClose={onClose}>
      <header class="preview-head">
        <h2 id="preview-title">{words.t('ui:preview.title')}</h2>
        <div class="preview-moves">
          <button
            type="button"
            class="primary"
            data-action="print-now"
            disabled={chosen.sheets.size === 0}
            onClick={printIt}
          >
            {words.t('ui:preview.now')}
          </button>
          <button type="button" class="secondary" onClick={() => dialog.current?.close()}>
            {words.t('ui:preview.close')}
          </button>
        </div>
      </header>
      <div class="preview-choices">
        {sheets.length > 1 && (
          <fieldset class="preview-choice preview-sheets">
            <legend>{words.t('ui:preview.sheets')}</legend>
            {sheets.map(({ name, title }) => (
              <label key={name}>
                <input
                  type="checkbox"
                  data-sheet={name}
                  checked={chosen.sheets.has(name)}
                  onChange={() => toggle(name)}
                />
                {title}
              </label>
            ))}
          </fieldset>
        )}
        <Choice
          name="paper"
          options={PAPERS}
          chosen={chosen.paper}
          onChoose={next => onChoose({ ...chosen, paper: next })}
        />
        <Choice
          name="print"
          options={PRINTS}
          chosen={chosen.print}
          onChoose={next => onChoose({ ...chosen, print: next })}
        />
        {overleaf?.always === true && (
          <p class="preview-note">
            {words.t('ui:sheet.overleaf', { language: languageIn(words.tag, overleaf.words.tag) })}
          </p>
        )}
        {overleaf?.always === false && (
          <label class="preview-sides">
            <input
              type="checkbox"
              checked={chosen.twoSides}
              onChange={() => onChoose({ ...chosen, twoSides: !chosen.twoSides })}
            />
            {words.t('ui:preview.overleaf', {
              language: languageIn(words.tag, overleaf.words.tag)
            })}
          </label>
        )}
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and so has to be reached by the keyboard. */}
      <section class="preview-room" tabIndex={0} aria-labelledby="preview-title">
        <div
          class="preview-paper"
          ref={paper}
          data-print={chosen.print}
          data-paper={chosen.paper}
          key={`${chosen.paper} ${chosen.print}`}
        >
          {children}
        </div>
      </section>
    </dialog>
  )
}

function Choice<T extends PrintChoice['paper' | 'print']>({
  name,
  options,
  chosen,
  onChoose
}: {
  name: 'paper' | 'print'
  options: readonly T[]
  chosen: T
  onChoose: (next: T) => void
}) {
  const { words } = useSetting()
  return (
    <fieldset class="preview-choice">
      <legend>{words.t(`ui:preview.${name}`)}</legend>
      {options.map(option => (
        <label key={option}>
          <input
            type="radio"
            name={`preview-${name}`}
            checked={option === chosen}
            onChange={() => onChoose(option)}
          />
          {words.t(`ui:preview.${option}`)}
        </label>
      ))}
    </fieldset>
  )
}
