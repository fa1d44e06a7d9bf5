import type { ComponentChildren } from 'preact'
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks'
import { fitSheet, SHEET_TYPE } from './fit-sheet.ts'
import { useSetting } from './setting.tsx'

/** What a sheet is printed on, and in which type: standard from 12 points on, large from 18. */
export interface SheetPaper {
  readonly paper: (typeof PAPERS)[number]
  readonly print: (typeof PRINTS)[number]
}

const PAPERS = ['letter', 'a4'] as const
const PRINTS = ['standard', 'large'] as const

/** What is asked for by most who print here. */
export const USUAL_PAPER: SheetPaper = { paper: 'letter', print: 'standard' }

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
export function fitSides(place: HTMLElement, { print: type }: SheetPaper): void {
  if (type === 'large') return
  for (const side of place.querySelectorAll<HTMLElement>('.sheet')) fitSheet(side, SHEET_TYPE)
}

/** The sheet as it will be printed, with what can be chosen about it. */
export function PrintPreview({
  chosen,
  onChoose,
  onClose,
  children
}: {
  chosen: SheetPaper
  onChoose: (next: SheetPaper) => void
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
  return (
    <dialog class="preview" ref={dialog} aria-labelledby="preview-title" onClose={onClose}>
      <header class="preview-head">
        <h2 id="preview-title">{words.t('ui:preview.title')}</h2>
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
        <div class="preview-moves">
          <button type="button" class="primary" data-action="print-now" onClick={printIt}>
            {words.t('ui:preview.now')}
          </button>
          <button type="button" class="secondary" onClick={() => dialog.current?.close()}>
            {words.t('ui:preview.close')}
          </button>
        </div>
      </header>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and so has to be reached by the keyboard. */}
      <section class="preview-room" tabIndex={0} aria-labelledby="preview-title">
        <div
          class="preview-paper"
          ref={paper}
          data-print={chosen.print}
          key={`${chosen.paper} ${chosen.print}`}
        >
          {children}
        </div>
      </section>
    </dialog>
  )
}

function Choice<T extends SheetPaper['paper' | 'print']>({
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
