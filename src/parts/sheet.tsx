import type { SheetAddress } from '../addresses/sheet-address.ts'
import type { Report, WalkReport } from '../report/report.ts'
import { sidesOf } from './print-choice.ts'
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
  general = false,
  twoSides = false
}: {
  report: Report | WalkReport
  address: AddressIn
  /** No jar was looked at: the sheet says so. */
  general?: boolean
  /** English behind a reviewed translation; behind a draft it always is. */
  twoSides?: boolean
}) {
  const setting = useSetting()
  return (
    <>
      {sidesOf(setting, twoSides).map((own, side) => (
        <SettingProvider key={own.tag} value={{ ...setting, words: own, second: null }}>
          <SheetSide
            {...tellOf({ ...setting, words: own, second: null }, report)}
            address={address(own.tag)}
            general={general}
            overleaf={side === 0 ? (setting.second?.words ?? null) : null}
          />
        </SettingProvider>
      ))}
    </>
  )
}
