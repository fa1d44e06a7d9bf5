import type english from '../../locales/en/ui.json'

/** The dotted keys of a group of texts, as i18next reads them; plural forms stand for their base. */
type KeysOf<Group> = {
  [Key in keyof Group & string]: Group[Key] extends string
    ? Singular<Key>
    : `${Key}.${KeysOf<Group[Key]>}`
}[keyof Group & string]

/** Unicode CLDR's plural categories, which i18next writes behind an underscore. */
type Singular<Key extends string> = Key extends `${infer Base}_${
  | 'zero'
  | 'one'
  | 'two'
  | 'few'
  | 'many'
  | 'other'}`
  ? Base
  : Key

/** What the screens say: known to the letter, so that a misspelled key does not compile. */
export type UiKey =
  // Which schema the file names is for editors.
  | KeysOf<Omit<typeof english, '$schema'>>
  // Their members are named by the trees and by the office, not by the code.
  | `referral.${string}`
  | `short.${string}`
  | `recall.${string}`
  | `recall-how.${string}`

/** What a tree's own file holds. */
type TreeKey =
  | 'title'
  | 'about'
  | 'examples'
  | `use.${string}`
  | `cautions.${string}`
  | `card.${'fields' | 'checks'}.${string}`
  | `verdicts.${string}`
  | `rules-of-thumb.${string}`

/** A namespace and a key in it: `steps:call-911`. What authors name is held to the catalogue by `load`. */
export type TextKey =
  | `ui:${UiKey}`
  | `${'observations' | 'steps' | 'notes' | 'verdicts' | 'look-alikes' | 'follow-ups' | 'know-how' | 'practice' | 'pictures'}:${string}`
  | `${string}:${TreeKey}`
