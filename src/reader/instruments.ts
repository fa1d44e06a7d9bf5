import type { MeasureObservation } from '../tree/observation.ts'
import type { TextKey } from '../words/text-key.ts'
import type { Words } from '../words/words.ts'
import { LIGHT } from './lexicon.ts'
import { wordsOf } from './normal.ts'
import { UNIT_WORDS } from './typed-units.ts'

/** By instrument id, the words that may name it. */
export type InstrumentWords = ReadonlyMap<string, ReadonlySet<string>>

/** The words of a measure's instruments: those of their ids and of their names in every language. */
export function instrumentWords(
  measure: MeasureObservation,
  languages: readonly Words[]
): InstrumentWords {
  const named = new Set(wordsOf(measure.id))
  return new Map(
    measure.instruments.map(({ id }) => {
      const key: TextKey = `observations:${measure.id}.instruments.${id}`
      const names = languages.filter(words => words.has(key)).map(words => words.t(key))
      // What stands after the comma or colon tells of the instrument and does not name it.
      const heads = names.map(name => name.split(/[,:;(]/)[0] ?? '')
      const words = [id, ...heads].flatMap(wordsOf)
      return [
        id,
        new Set(words.filter(word => !named.has(word) && !UNIT_WORDS.has(word) && !LIGHT.has(word)))
      ]
    })
  )
}

/**
 * Which instrument the words name. Words that two share name none, so that the widest interval holds;
 * `clash` when no instrument has all of them.
 */
export function instrumentNamed(
  instruments: InstrumentWords,
  words: readonly string[]
): { readonly instrument?: string; readonly clash: boolean } {
  const all = [...instruments]
  const named = words.filter(word => all.some(([, own]) => own.has(word)))
  if (named.length === 0) return { clash: false }
  const fitting = all.filter(([, own]) => named.every(word => own.has(word)))
  if (fitting.length === 0) return { clash: true }
  // A plain name that every longer one contains means the plain one: "meter" beside "uncalibrated meter".
  const plain = fitting.filter(([, own]) => fitting.every(([, other]) => isWithin(own, other)))
  const [only, ...others] = plain.length === 1 ? plain : fitting
  return only !== undefined && others.length === 0
    ? { instrument: only[0], clash: false }
    : { clash: false }
}

const isWithin = (words: ReadonlySet<string>, others: ReadonlySet<string>): boolean =>
  [...words].every(word => others.has(word))
