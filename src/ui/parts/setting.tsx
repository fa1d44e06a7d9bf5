import { createContext } from 'preact'
import { useContext } from 'preact/hooks'
import type { OfficePack } from '../../office/office-pack.ts'
import type { Tree } from '../../tree/tree.ts'
import type { SourceLedger } from '../../words/sources.ts'
import type { Words } from '../../words/words.ts'

/** Everything that the parts of one walk share. */
export interface Setting {
  readonly tree: Tree
  readonly words: Words
  readonly sources: SourceLedger
  readonly pictures: Readonly<
    Record<
      string,
      { readonly own: string | null; readonly answers: Readonly<Record<string, string>> }
    >
  >
  /** The drawings that have arrived so far, by picture id. */
  readonly drawings: Readonly<Record<string, string>>
  readonly office: OfficePack | null
  readonly today: Date
}

const SettingContext = createContext<Setting | null>(null)
export const SettingProvider = SettingContext.Provider

/** The setting of the walk around a part. @throws Error outside of one: our own mistake. */
export function useSetting(): Setting {
  const setting = useContext(SettingContext)
  if (setting === null) throw new Error('this part stands outside a walk')
  return setting
}
