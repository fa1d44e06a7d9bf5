import { measured } from '../../tree/tell.ts'
import type { Tree } from '../../tree/tree.ts'
import type { Words } from '../words.ts'
import type { Candidate, Fragment } from './fact.ts'
import { instrumentNamed, instrumentWords } from './instruments.ts'
import { LIGHT_BESIDE_READINGS } from './lexicon.ts'
import { pairUnits } from './pairs.ts'
import type { PhraseBook } from './phrase-book.ts'
import type { Scene } from './scene.ts'
import { covers } from './spot.ts'
import { DEGREE_WORDS, type SpokenUnit, UNIT_WORDS } from './typed-units.ts'
import { type Measure, type UnitFound, unitsFor } from './units-found.ts'

/** What the numbers of a piece may measure, and the span of a measure that one lies out of. */
export interface Readings {
  readonly candidates: readonly Candidate[]
  readonly span?: Fragment['span'] & {}
  /** Whether the piece holds a number outside its phrases. */
  readonly numbered: boolean
}

/** More numbers in one piece are no reading of anything. */
const MOST_NUMBERS = 6

/** Opens the reading of numbers for a tree's measures. */
export function openReadings(
  tree: Tree,
  book: PhraseBook,
  languages: readonly Words[]
): (scene: Scene) => Readings {
  const measures = Object.values(tree.observations).flatMap((observation): readonly Measure[] => {
    if (observation.kind !== 'measure') return []
    const names = book.ownWords(observation.id, null)
    return [{ observation, names, instruments: instrumentWords(observation, languages) }]
  })
  return scene => {
    const places = scene.tokens.flatMap(({ number }, at) =>
      number === undefined || scene.spots.some(spot => covers(spot, at)) ? [] : [at]
    )
    const numbers = places.slice(0, MOST_NUMBERS)
    const pairs =
      numbers.length > 1 && numbers.length === places.length
        ? pairUnits(scene.tokens, places)
        : null
    const read = numbers.map(at => readNumber(scene, at, measures, pairs))
    const span = read.find(each => each.span)?.span
    const all = read.flatMap(({ candidates }) => candidates)
    return {
      candidates: places.length === 1 || pairs ? all : all.map(each => ({ ...each, sure: false })),
      ...(span && { span }),
      numbered: places.length > 0
    }
  }
}

function readNumber(
  scene: Scene,
  at: number,
  measures: readonly Measure[],
  pairs: ReadonlyMap<number, SpokenUnit> | null
): Omit<Readings, 'numbered'> {
  const number = scene.tokens[at]?.number ?? Number.NaN
  const units = unitsFor(scene, at, measures, pairs?.get(at))
  const rest = scene.tokens
    .filter((_, index) => index !== at && !pairs?.has(index))
    .map(({ word }) => word)
  const candidates = units.flatMap((unit): readonly Candidate[] => {
    const { observation, instruments } = unit.measure
    const value = unit.spoken.toMeasure(number)
    if (!inSpan(unit, value)) return []
    const { instrument, clash } = instrumentNamed(instruments, rest)
    const sure =
      unit.clear &&
      units.length === 1 &&
      !clash &&
      scene.plain &&
      nothingElse(unit, rest, pairs ? [...pairs.values()] : [])
    const answer = measured(observation, value, instrument)
    return [{ observation: observation.id, answer, matched: scene.text, sure }]
  })
  const [first] = units.filter(({ bare }) => !bare)
  return first && candidates.length === 0
    ? { candidates, span: first.measure.observation.span }
    : { candidates }
}

function inSpan({ measure: { observation } }: UnitFound, value: number): boolean {
  return value >= observation.span.from && value <= observation.span.to
}

/** Whether all that stands beside the number belongs to the reading, or says nothing. */
function nothingElse(
  { measure: { names, instruments }, spoken }: UnitFound,
  rest: readonly string[],
  others: readonly SpokenUnit[]
): boolean {
  const units: readonly (SpokenUnit | undefined)[] = [spoken, ...others]
  return rest.every(
    word =>
      LIGHT_BESIDE_READINGS.has(word) ||
      names.has(word) ||
      (UNIT_WORDS.has(word) && units.includes(UNIT_WORDS.get(word))) ||
      DEGREE_WORDS.has(word) ||
      [...instruments.values()].some(own => own.has(word))
  )
}
