import type { Place } from '../findings/place.ts'

/** One file as it was authored: where it stands, relative to the project, and its text. */
export interface AuthoredFile {
  readonly path: string
  readonly text: string
}

/** The way from the top of a file to one of its parts. */
export type Keys = readonly (string | number)[]

/** What a file says, with the place of everything in it. */
export interface Authored {
  readonly file: string
  readonly value: unknown
  /** The place of a part: its key, or what stands after it. A missing part is where it would be. */
  place(keys: Keys, part?: 'key' | 'value'): Place
}

/** A stretch of a file's text, by offsets. */
export type Offsets = readonly [from: number, to: number]

/** A part of a file and the parts inside it. */
export interface AuthoredPart {
  readonly key: Offsets | null
  readonly value: Offsets
  /** Whether the value is one word or number, not a list or a group. */
  readonly plain: boolean
  readonly inside: ReadonlyMap<string | number, AuthoredPart>
}

/** Opens what was read for questions about places. */
export function authored(
  file: string,
  value: unknown,
  top: AuthoredPart,
  placeOf: (span: Offsets) => Place
): Authored {
  return {
    file,
    value,
    place(keys, part = 'key') {
      let spot = top
      for (const key of keys) {
        const next = spot.inside.get(key)
        if (next === undefined) break
        spot = next
      }
      // A list or group begins far from where it ends: its key says better which one is meant.
      return placeOf(part === 'value' && spot.plain ? spot.value : (spot.key ?? spot.value))
    }
  }
}
