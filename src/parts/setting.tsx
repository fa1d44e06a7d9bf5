import { type ComponentChildren, createContext } from 'preact'
import { useContext } from 'preact/hooks'
import type { OfficePack } from '../office/office-pack.ts'
import type { LookAlike } from '../tree/look-alikes.ts'
import type { Tree } from '../tree/tree.ts'
import type { SourceLedger } from '../words/sources.ts'
import type { Words } from '../words/words.ts'

/** What the parts of any screen share: the language spoken, and one that may stand beside it. */
export interface Speech {
  readonly words: Words
  readonly second: Second | null
  /** Whether pressing a phone number dials it; a kiosk leads nowhere outside. */
  readonly dials: boolean
  /** Whether answers show the key that gives them. */
  readonly numbered: boolean
  /** Whether steps can be ticked off while somebody does them. */
  readonly ticks?: boolean
}

/** A second language under the first. */
export interface Second {
  readonly words: Words
  /** `cautions`: English under what a draft translation tells people to do or to beware of. */
  readonly shows: 'cautions' | 'everything'
}

/** Everything that the parts of one walk share. */
export interface Setting extends Speech {
  readonly tree: Tree
  readonly sources: SourceLedger
  readonly pictures: Readonly<
    Record<
      string,
      { readonly own: string | null; readonly answers: Readonly<Record<string, string>> }
    >
  >
  /** The drawings that have arrived so far, by picture id. */
  readonly drawings: Readonly<Record<string, string>>
  /** What callers mix up in this tree. */
  readonly lookAlikes: readonly LookAlike[]
  /** Where look-alikes stand beside a photo of one's own; null where no photo is taken. */
  readonly photoPage: string | null
  readonly office: OfficePack | null
  readonly today: Date
  /** Read out at the office's own desk: nobody is sent to call it. */
  readonly atOffice?: boolean
  /** Read standing, at arm's length: what callers ask next is folded with the rest. */
  readonly atArmsLength?: boolean
  /** Nobody goes back to what is asked about: nothing says how to look, measure or try again. */
  readonly fromMemory?: boolean
}

const SpeechContext = createContext<Speech | null>(null)
const SettingContext = createContext<Setting | null>(null)

/** Sets the language of screens that stand before a walk. */
export const SpeechProvider = SpeechContext.Provider

/** Sets the walk, and with it the language, for the parts inside. */
export function SettingProvider({
  value,
  children
}: {
  value: Setting
  children: ComponentChildren
}) {
  return (
    <SpeechContext.Provider value={value}>
      <SettingContext.Provider value={value}>{children}</SettingContext.Provider>
    </SpeechContext.Provider>
  )
}

/** The setting of the walk around a part. @throws Error outside of one: our own mistake. */
export function useSetting(): Setting {
  const setting = useContext(SettingContext)
  if (setting === null) throw new Error('this part stands outside a walk')
  return setting
}

/** The language of the screen around a part. @throws Error outside of a screen: our own mistake. */
export function useSpeech(): Speech {
  const speech = useContext(SpeechContext)
  if (speech === null) throw new Error('this part stands outside a screen')
  return speech
}
