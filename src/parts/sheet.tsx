import type { SheetAddress } from '../addresses/sheet-address.ts'
import type { Report, WalkReport } from '../report/report.ts'
import { tellOf } from './said-twice.ts'
import { SettingProvider, useSetting } from './setting.tsx'
import { SheetSide } from './sheet-side.tsx'

/** The address of a sheet in a language. */
export type AddressIn = (language: string) => SheetAddress

/**
 * An outcome on paper, letter or A4, black and white: a side for each language, the caller's own in
 * front. Whoever prints the screen gets this instead.
 */
export function Sheet({
  report,
  address,
  general = false
}: {
  report: Report | WalkReport
  address: AddressIn
  /** No jar was looked at: the sheet says so. */
  general?: boolean
}) {
  const setting = useSetting()
  const { words, second } = setting
  const overleaf = second?.words ?? null
  return (
    <>
      {[words, overleaf].map(
        (own, side) =>
          own !== null && (
            <SettingProvider key={own.tag} value={{ ...setting, words: own, second: null }}>
              <SheetSide
                {...tellOf({ ...setting, words: own, second: null }, report)}
                address={address(own.tag)}
                general={general}
                overleaf={side === 0 ? overleaf : null}
              />
            </SettingProvider>
          )
      )}
    </>
  )
}
