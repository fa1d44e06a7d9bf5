import { type ComponentProps, render } from 'preact'
import { useEffect, useRef } from 'preact/hooks'
import { fitSheet, SHEET_TYPE } from './fit-sheet.ts'
import { SettingProvider, useSetting } from './setting.tsx'
import { type AddressIn, Sheet } from './sheet.tsx'

/**
 * Makes the sheet of an outcome when somebody prints it, and only then: on the screen it would all stand
 * twice. Its address too: whether it may name the outcome asks every walk of the tree.
 */
export function PrintedSheet({
  address,
  ...sheet
}: Omit<ComponentProps<typeof Sheet>, 'address'> & { address: () => AddressIn }) {
  const setting = useSetting()
  const place = useRef<HTMLDivElement>(null)
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
      for (const side of place.current.querySelectorAll<HTMLElement>('.sheet')) {
        fitSheet(side, SHEET_TYPE)
      }
    }
    const takeAway = () => place.current !== null && render(null, place.current)
    addEventListener('beforeprint', put)
    addEventListener('afterprint', takeAway)
    return () => {
      removeEventListener('beforeprint', put)
      removeEventListener('afterprint', takeAway)
    }
  })
  return <div class="sheet-place" ref={place} />
}
