import { type ComponentProps, Fragment, render } from 'preact'
import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import {
  type OtherSheet,
  type OtherSheets,
  type PrintChoice,
  sidesOf,
  USUAL_PRINT
} from './print-choice.ts'
import { fitSides, PrintPreview, usePrintAsked } from './print-preview.tsx'
import { type Setting, SettingProvider, useSetting } from './setting.tsx'
import { type AddressIn, Sheet } from './sheet.tsx'

type OwnSheet = Omit<ComponentProps<typeof Sheet>, 'twoSides'>

/**
 * Makes the sheets of an outcome when somebody prints it or looks at it first, and only then: on the screen
 * it would all stand twice. Its address too: whether it may name the outcome asks every walk of the tree.
 */
export function PrintedSheet({
  address,
  handed,
  ...sheet
}: Omit<OwnSheet, 'address'> & {
  address: () => AddressIn
  /** The setting of whoever gets the paper, where that is not who reads the screen. */
  handed?: Setting
}) {
  const own = useSetting()
  const setting = handed ?? own
  const place = useRef<HTMLDivElement>(null)
  // Until somebody chooses, the printer's own paper is as good.
  const [chosen, setChosen] = useState<PrintChoice | null>(null)
  const [previewed, setPreviewed] = useState<AddressIn | null>(null)
  const [fetched, setFetched] = useState<OtherSheets | null>(null)
  const others = useMemo(() => fetched?.(setting) ?? [], [fetched, setting])
  const choice = chosen ?? USUAL_PRINT
  const shown = { ...sheet, setting, choice, others }
  useEffect(() => {
    const put = () => {
      if (place.current === null) return
      // A root of its own is drawn at once: the printer does not wait.
      render(<ChosenSheets {...shown} address={address()} />, place.current)
      fitSides(place.current, choice)
    }
    const takeAway = () => place.current !== null && render(null, place.current)
    addEventListener('beforeprint', put)
    addEventListener('afterprint', takeAway)
    return () => {
      removeEventListener('beforeprint', put)
      removeEventListener('afterprint', takeAway)
    }
  })
  usePrintAsked(() => {
    setChosen(choice)
    setPreviewed(() => address())
    // Without a network the outcome's own sheet is printed all the same.
    setting.fetchSheets?.().then(
      sheets => setFetched(() => sheets),
      () => undefined
    )
  })
  const { second, behind } = setting
  const overleaf = second?.words ?? behind ?? null
  const close = () => {
    setPreviewed(null)
    // Whoever chose nothing at all gets what everybody gets.
    if (choice.sheets.size === 0) setChosen({ ...choice, sheets: USUAL_PRINT.sheets })
  }
  return (
    <>
      <div class="sheet-place" ref={place} data-print={choice.print} data-paper={chosen?.paper} />
      {previewed !== null && (
        <PrintPreview
          chosen={choice}
          others={others}
          overleaf={overleaf && { words: overleaf, always: second !== null }}
          onChoose={setChosen}
          onClose={close}
        >
          <ChosenSheets {...shown} address={previewed} />
        </PrintPreview>
      )}
    </>
  )
}

/** The sheets that are printed, each with a side for every language that it is wanted in. */
function ChosenSheets({
  setting,
  choice: { sheets, twoSides },
  others,
  ...sheet
}: OwnSheet & {
  setting: Setting
  choice: PrintChoice
  others: readonly OtherSheet[]
}) {
  return (
    <SettingProvider value={setting}>
      {sheets.has('outcome') && <Sheet {...sheet} twoSides={twoSides} />}
      {others
        .filter(({ name }) => sheets.has(name))
        .map(({ name, side }) =>
          sidesOf(setting, twoSides).map(words => (
            <Fragment key={`${name} ${words.tag}`}>{side(words)}</Fragment>
          ))
        )}
    </SettingProvider>
  )
}
