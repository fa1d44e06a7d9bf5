import type { Catalogue, Openers, Texts, TreeBundle } from './bundle.ts'

/** Texts by language tag. */
type ByTag = Readonly<Record<string, Texts>>

/** Everything that a kiosk opens one after another, as one value. */
export interface WholeBundle {
  readonly catalogue: Catalogue
  /** By tree. */
  readonly trees: Readonly<Record<string, TreeBundle>>
  readonly words: Readonly<Record<string, ByTag>>
  readonly drawings: Readonly<Record<string, Readonly<Record<string, string>>>>
  readonly screens: ByTag
  /** What the kiosk alone says. */
  readonly kiosk: ByTag
}

/** Opens what is there already; callers' own words and other sheets, which a kiosk has no use for, are not. */
export function openersOf({ trees, words, drawings, screens }: WholeBundle): Openers {
  return {
    screens: Object.fromEntries(
      Object.entries(screens).map(([tag, texts]) => [tag, there(texts)] as const)
    ),
    trees: Object.fromEntries(
      Object.entries(trees).map(([id, tree]) => [
        id,
        {
          open: there(tree),
          draw: there(drawings[id] ?? {}),
          words: Object.fromEntries(
            Object.entries(words[id] ?? {}).map(([tag, texts]) => [tag, there(texts)] as const)
          ),
          said: () => missing(`the callers' words of ${id}`),
          sheets: () => missing(`the other sheets of ${id}`)
        }
      ])
    )
  }
}

const missing = (what: string) => Promise.reject(new Error(`${what} are not here`))

const there =
  <T>(value: T) =>
  () =>
    Promise.resolve({ default: value })
