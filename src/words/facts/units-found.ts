import type { MeasureObservation } from '../../tree/observation.ts'
import type { InstrumentWords } from './instruments.ts'
import { LIGHT_BESIDE_READINGS } from './lexicon.ts'
import type { Token } from './normal.ts'
import type { Scene } from './scene.ts'
import { DEGREE_UNITS, DEGREE_WORDS, ownUnit, type SpokenUnit, UNIT_WORDS } from './typed-units.ts'

/** A measure with the words that name it and its instruments. */
export interface Measure {
  readonly observation: MeasureObservation
  readonly names: ReadonlySet<string>
  readonly instruments: InstrumentWords
}

/** A measure that a number may belong to, in a unit that it may be given in. */
export interface UnitFound {
  readonly measure: Measure
  readonly spoken: SpokenUnit
  /** The unit or the measure is stated beside the number. */
  readonly clear: boolean
  /** Nothing states it at all. */
  readonly bare: boolean
}

/** What the number at a place may be a reading of. */
export function unitsFor(
  scene: Scene,
  at: number,
  measures: readonly Measure[],
  paired?: SpokenUnit
): readonly UnitFound[] {
  const found = (units: readonly SpokenUnit[], clear: boolean): readonly UnitFound[] =>
    [...new Set(units)].flatMap(spoken =>
      measures
        .filter(({ observation }) => observation.unit === spoken.unit)
        .map(measure => ({ measure, spoken, clear, bare: false }))
    )
  if (paired) return found([paired], true)
  const { tokens } = scene
  const degrees = DEGREE_WORDS.has(tokens[at + 1]?.word ?? '')
  const after = UNIT_WORDS.get(tokens[degrees ? at + 2 : at + 1]?.word ?? '')
  const before = unitBefore(tokens, at)
  if (after && before && after !== before) return found([after, before], false)
  if (after) return found([after], true)
  if (before) return found([before], before.standsFirst)
  if (degrees) return found(DEGREE_UNITS, false)
  const named = measures.filter(({ observation }) =>
    scene.names.some(({ meanings }) => meanings.some(each => each.observation === observation))
  )
  if (named.length > 0) return named.flatMap(measure => own(measure, true, false))
  const elsewhere = tokens.flatMap(({ word }) => (word.length > 1 ? [UNIT_WORDS.get(word)] : []))
  const units = elsewhere.filter(unit => unit !== undefined)
  if (units.length > 0) return found(units, false)
  const alone =
    scene.spots.length === 0 && tokens.filter(({ number }) => number !== undefined).length <= 1
  return !alone || countsOther(tokens, at, measures) ? [] : bareFor(tokens, measures)
}

function own(measure: Measure, clear: boolean, bare: boolean): readonly UnitFound[] {
  const units = ownUnit(measure.observation.unit)
  return units.map(spoken => ({ measure, spoken, clear: clear && units.length === 1, bare }))
}

/** "pH of 4.1", "day: 9". */
function unitBefore(tokens: readonly Token[], at: number): SpokenUnit | undefined {
  for (let back = at - 1; back >= Math.max(0, at - 4); back--) {
    const word = tokens[back]?.word ?? ''
    const unit = UNIT_WORDS.get(word)
    if (unit) return unit
    if (!LIGHT_BESIDE_READINGS.has(word)) return undefined
  }
  return undefined
}

/** "2 jars": the number counts something that is no measure. */
function countsOther(tokens: readonly Token[], at: number, measures: readonly Measure[]): boolean {
  const next = tokens[at + 1]?.word
  if (next === undefined || LIGHT_BESIDE_READINGS.has(next)) return false
  return !measures.some(({ instruments }) => [...instruments.values()].some(own => own.has(next)))
}

/** A number alone: any measure, or those whose instrument is named. */
function bareFor(tokens: readonly Token[], measures: readonly Measure[]): readonly UnitFound[] {
  const measuredSo = measures.filter(({ instruments }) =>
    tokens.some(({ word }) => [...instruments.values()].some(own => own.has(word)))
  )
  const all = measuredSo.length > 0 ? measuredSo : measures
  // Of a bare number only the measure's own unit is thought of.
  return all.flatMap(measure => own(measure, false, true).slice(0, 1))
}
