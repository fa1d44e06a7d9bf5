import type { Answer } from '../tree/answers.ts'
import type { MeasureObservation, Unit } from '../tree/observation.ts'
import { ageAt, carriedFor } from './ages.ts'
import type { InstrumentWords } from './instruments.ts'
import { KITCHEN, LIGHT_BESIDE_READINGS, OWNERS, PERSONS, SAYING, SMALL_WORDS } from './lexicon.ts'
import type { Token } from './normal.ts'
import type { Scene } from './scene.ts'
import { DEGREE_UNITS, DEGREE_WORDS, ownUnit, type SpokenUnit, UNIT_WORDS } from './typed-units.ts'
import { isDanger } from './worry.ts'

/** What a number can be a reading of, with the words that name it and its instruments. */
export interface Measure {
  readonly id: string
  readonly unit: Unit
  readonly span: MeasureObservation['span']
  readonly names: ReadonlySet<string>
  readonly instruments: InstrumentWords
  /** Whether it has answers for readings, and no reading of its own. */
  readonly banded: boolean
  /** The answer for a reading that lies in the span; null where there is none. */
  answer(spoken: SpokenUnit, number: number, instrument?: string): Answer | null
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

/** "My 3 year old" is a child. */
const POSSESSIVE: ReadonlySet<string> = new Set(['my', 'our', 'his', 'her', 'mi', 'su'])

/** What the number at a place may be a reading of. */
export function unitsFor(
  scene: Scene,
  place: number,
  measures: readonly Measure[],
  foods: ReadonlySet<string>,
  paired?: SpokenUnit
): readonly UnitFound[] {
  const foundIn = (units: readonly SpokenUnit[], clear: boolean): readonly UnitFound[] =>
    [...new Set(units)].flatMap(spoken =>
      meantBy(
        scene,
        measures.filter(({ unit }) => unit === spoken.unit)
      ).map(measure => ({
        measure,
        spoken,
        clear,
        bare: false
      }))
    )
  if (paired) return foundIn([paired], true)
  const { tokens } = scene
  const next = tokens[place + 1]
  // "Since 3 am", "2 strips", "6 months pregnant".
  if (
    next?.word === 'oclock' ||
    countsTools(tokens, place, measures) ||
    carriedFor(tokens, place)
  ) {
    return []
  }
  if (ageAt(tokens, place, foods)) {
    // "A year old" may be a jar where nobody is spoken of.
    const years = UNIT_WORDS.get(next?.word ?? '')
    const someone =
      tokens.some(({ word }) => PERSONS.has(word)) || POSSESSIVE.has(tokens[place - 1]?.word ?? '')
    return years && !someone ? foundIn([years], false) : []
  }
  const found = (units: readonly SpokenUnit[], clear: boolean): readonly UnitFound[] =>
    foundIn(units, clear).filter(({ spoken }) => !ofPerson(scene) || OF_JAR.has(spoken.unit))
  const degrees = DEGREE_WORDS.has(tokens[place + 1]?.word ?? '')
  const after = UNIT_WORDS.get(tokens[degrees ? place + 2 : place + 1]?.word ?? '')
  const before = unitBefore(tokens, place)
  // "2 tablespoons salt".
  if (!after && KITCHEN.has(next?.word ?? '')) return []
  if (after && before && after !== before) return found([after, before], false)
  // "She is 9 days old" is somebody's age.
  const owner = tokens[place - 1]?.word ?? ''
  if (after) return found([after], OWNERS.has(owner) || !PERSONS.has(owner))
  if (before) return found([before], before.standsFirst)
  if (degrees) return found(DEGREE_UNITS, false)
  const named = measures.filter(({ id }) =>
    scene.names.some(({ meanings }) => meanings.some(({ observation }) => observation.id === id))
  )
  if (named.length > 0) {
    // "Strip 2" may be the second strip.
    const said =
      !Number.isInteger(tokens[place]?.number) || tokens.some(({ word }) => SAYING.has(word))
    return named.flatMap(measure => own(measure, said, false))
  }
  if (countsOther(tokens, place, measures)) return []
  const elsewhere = tokens.flatMap(({ word }) => (word.length > 1 ? [UNIT_WORDS.get(word)] : []))
  const units = elsewhere.filter(unit => unit !== undefined)
  if (units.length > 0) return found(units, false)
  const alone =
    scene.spots.length === 0 && tokens.filter(({ number }) => number !== undefined).length <= 1
  return alone ? bareFor(tokens, measures) : []
}

/**
 * Of several measures in one unit the one whose own words are said: "capped 3 days ago". Where none is, a
 * time that the tree asks for in bands is meant before a count of something else.
 */
function meantBy({ tokens }: Scene, measures: readonly Measure[]): readonly Measure[] {
  if (measures.length < 2) return measures
  const said = new Set(tokens.map(({ word }) => word))
  const ownTo = (measure: Measure) =>
    [...measure.names].filter(
      name =>
        !UNIT_WORDS.has(name) &&
        !SMALL_WORDS.has(name) &&
        !measures.some(other => other !== measure && other.names.has(name))
    )
  const named = measures.filter(measure => ownTo(measure).some(name => said.has(name)))
  if (named.length > 0) return named
  const banded = measures.filter(each => each.banded)
  return banded.length > 0 ? banded : measures
}

function own(measure: Measure, clear: boolean, bare: boolean): readonly UnitFound[] {
  const units = ownUnit(measure.unit)
  return units.map(spoken => ({ measure, spoken, clear: clear && units.length === 1, bare }))
}

/** "pH of 4.1", "day: 9". */
function unitBefore(tokens: readonly Token[], place: number): SpokenUnit | undefined {
  for (let back = place - 1; back >= Math.max(0, place - 4); back--) {
    const word = tokens[back]?.word ?? ''
    const unit = UNIT_WORDS.get(word)
    if (unit) return unit
    if (!LIGHT_BESIDE_READINGS.has(word)) return undefined
  }
  return undefined
}

/** "2 jars", "my page 3": the number counts something that is no measure. */
function countsOther(
  tokens: readonly Token[],
  place: number,
  measures: readonly Measure[]
): boolean {
  return tokens.some(
    ({ word, number }, index) =>
      index !== place &&
      number === undefined &&
      !SMALL_WORDS.has(word) &&
      !UNIT_WORDS.has(word) &&
      !isTool(word, measures)
  )
}

const isTool = (word: string, measures: readonly Measure[]): boolean =>
  measures.some(({ instruments }) => [...instruments.values()].some(own => own.has(word)))

/** "2 strips" counts them. */
function countsTools(
  tokens: readonly Token[],
  place: number,
  measures: readonly Measure[]
): boolean {
  const { word = '', raw = '' } = tokens[place + 1] ?? {}
  const tool = isTool(word, measures) || measures.some(({ names }) => names.has(word))
  return word !== raw && tool && !UNIT_WORDS.has(word) && Number.isInteger(tokens[place]?.number)
}

/** What is measured of a jar, whatever befalls a person. */
const OF_JAR: ReadonlySet<string> = new Set(['ph', 'percent'])

/** A danger sign of a person is told: "fever 103 F", "throwing up for 3 days". */
const ofPerson = ({ spots }: Scene): boolean =>
  spots.some(({ meanings }) =>
    meanings.some(
      ({ observation, answer }) =>
        observation.about === 'person' && answer !== null && isDanger(observation, answer)
    )
  )

/** A number alone: any measure, or those whose instrument is named. */
function bareFor(tokens: readonly Token[], measures: readonly Measure[]): readonly UnitFound[] {
  const measuredSo = measures.filter(({ instruments }) =>
    tokens.some(({ word }) => [...instruments.values()].some(own => own.has(word)))
  )
  const all = measuredSo.length > 0 ? measuredSo : measures
  // Of a bare number only the measure's own unit is thought of.
  return all
    .filter(({ banded }) => !banded)
    .flatMap(measure => own(measure, false, true).slice(0, 1))
}
