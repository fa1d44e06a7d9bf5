import { type ComponentProps, render } from 'preact'
import { useEffect, useRef, useState } from 'preact/hooks'
import {
  fitSides,
  PrintPreview,
  type SheetPaper,
  USUAL_PAPER,
  usePrintAsked
} from './print-preview.tsx'
import { SettingProvider, useSetting } from './setting.tsx'
import { type AddressIn, Sheet } from './sheet.tsx'

/**
 * Makes the sheet of an outcome when somebody prints it or looks at it first, and only then: on the screen
 * it would all stand twice. Its address too: whether it may name the outcome asks every walk of the tree.
 */
export function PrintedSheet({
  address,
  ...sheet
}: Omit<ComponentProps<typeof Sheet>, 'address'> & { address: () => AddressIn }) {
  const setting = useSetting()
  const place = useRef<HTMLDivElement>(null)
  // Until somebody chooses, the printer's own paper is as good.
  const [chosen, setChosen] = useState<SheetPaper | null>(null)
  const [previewed, setPreviewed] = useState<AddressIn | null>(null)
  const type = chosen ?? USUAL_PAPER
  useEffect(() => {
    const put = () => {
      if (place.current === null) return
      // A root of its own is drawn at once: the printer does not wait.
      render(
        <SettingProvider value={setting}>
          <Sheet {...sheet} address={address()} />
        </SettingProvider>,
        place.current
      )
      fitSides(place.current, type)
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
    setChosen(type)
    setPreviewed(() => address())
  })
  return (
    <>
      <div class="sheet-place" ref={place} data-print={type.print} data-paper={chosen?.paper} />
      {previewed !== null && (
        <PrintPreview chosen={type} onChoose={setChosen} onClose={() => setPreviewed(null)}>
          <Sheet {...sheet} address={previewed} />
        </PrintPreview>
      )}
    </>
  )
}
