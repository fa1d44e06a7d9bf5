import type { UnitBand } from '../tree/callers-words.ts'
import { holds } from '../tree/range.ts'
import { measured } from '../tree/reading.ts'
import type { Tree } from '../tree/tree.ts'
import type { Words } from '../words/words.ts'
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

/** Opens the reading of numbers for a tree's measures, and for choices whose answers stand for readings. */
export function openReadings(
  tree: Tree,
  book: PhraseBook,
  languages: readonly Words[],
  bands: readonly UnitBand[]
): (scene: Scene) => Readings {
  const measures = [
    ...Object.values(tree.observations).flatMap((observation): readonly Measure[] => {
      if (observation.kind !== 'measure') return []
      const { id, unit, span } = observation
      const names = book.ownWords(id, null)
      const instruments = instrumentWords(observation, languages)
      const answer: Measure['answer'] = (spoken, number, instrument) =>
        measured(observation, spoken.toMeasure(number), instrument)
      return [{ id, unit, span, names, instruments, banded: false, answer }]
    }),
    ...bandedIn(tree, book, bands)
  ]
  return scene => {
    const places = scene.tokens.flatMap(({ number }, index) =>
      number === undefined || scene.spots.some(spot => covers(spot, index)) ? [] : [index]
    )
    const numbers = places.slice(0, MOST_NUMBERS)
    const pairs =
      numbers.length > 1 && numbers.length === places.length
        ? pairUnits(scene.tokens, places)
        : null
    const read = numbers.map(place => readNumber(scene, place, measures, pairs, book.foods))
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
  place: number,
  measures: readonly Measure[],
  pairs: ReadonlyMap<number, SpokenUnit> | null,
  foods: ReadonlySet<string>
): Omit<Readings, 'numbered'> {
  const number = scene.tokens[place]?.number ?? Number.NaN
  const units = unitsFor(scene, place, measures, foods, pairs?.get(place))
  const rest = scene.tokens
    .filter((_, index) => index !== place && !pairs?.has(index))
    .map(({ word }) => word)
  const candidates = units.flatMap((unit): readonly Candidate[] => {
    const { id, instruments } = unit.measure
    if (!inSpan(unit, number)) return []
    const { instrument, clash } = instrumentNamed(instruments, rest)
    const sure =
      unit.clear &&
      units.length === 1 &&
      !clash &&
      scene.plain &&
      nothingElse(unit, rest, pairs ? [...pairs.values()] : [], foods)
    const answer = unit.measure.answer(unit.spoken, number, instrument)
    return answer === null ? [] : [{ observation: id, answer, matched: scene.text, sure }]
  })
  const [first] = units.filter(({ bare, measure }) => !bare && !measure.banded)
  return first && candidates.length === 0
    ? { candidates, span: first.measure.span }
    : { candidates }
}

function inSpan({ measure: { span }, spoken }: UnitFound, number: number): boolean {
  const value = spoken.toMeasure(number)
  return value >= span.from && value <= span.to
}

const HOURS_A_DAY = 24
const ENDLESS = { from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY }

/** The choices of which every answer that counts stands for readings. */
function bandedIn(tree: Tree, book: PhraseBook, bands: readonly UnitBand[]): readonly Measure[] {
  const asked = new Set(bands.map(({ observation }) => observation))
  return [...asked].flatMap((id): readonly Measure[] => {
    if (!Object.hasOwn(tree.observations, id)) return []
    const own = bands.filter(({ observation }) => observation === id)
    const unit = own[0]?.unit === 'hour' ? 'day' : 'fahrenheit'
    const names = book.ownWords(id, null)
    const answer: Measure['answer'] = (spoken, number) => {
      const value = spoken.exactly(number) * (unit === 'day' ? HOURS_A_DAY : 1)
      const [only, ...others] = own.filter(({ range }) => holds(range, value))
      return only && others.length === 0 ? only.answer : null
    }
    return [{ id, unit, span: ENDLESS, names, instruments: new Map(), banded: true, answer }]
  })
}

/** Whether all that stands beside the number belongs to the reading, or says nothing. */
function nothingElse(
  { measure: { names, instruments }, spoken }: UnitFound,
  rest: readonly string[],
  others: readonly SpokenUnit[],
  foods: ReadonlySet<string>
): boolean {
  const units: readonly (SpokenUnit | undefined)[] = [spoken, ...others]
  return rest.every(
    word =>
      LIGHT_BESIDE_READINGS.has(word) ||
      foods.has(word) ||
      names.has(word) ||
      (UNIT_WORDS.has(word) && units.includes(UNIT_WORDS.get(word))) ||
      DEGREE_WORDS.has(word) ||
      [...instruments.values()].some(own => own.has(word))
  )
}
