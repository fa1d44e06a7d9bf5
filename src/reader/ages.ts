import type { Candidate } from './fact.ts'
import {
  AGES,
  BELOW,
  baseOf,
  CARRYING,
  FROM,
  HAS,
  KIN,
  LIGHT_BESIDE_READINGS,
  PERSONS
} from './lexicon.ts'
import { factOf } from './meaning.ts'
import { isFood, type Token, tokensOf } from './normal.ts'
import type { PhraseBook } from './phrase-book.ts'
import type { Scene } from './scene.ts'
import { covers } from './spot.ts'
import { carryingUnit, UNIT_WORDS } from './typed-units.ts'

const OLDEST = 120
/** Whoever says "I have" of years says their own. */
const TENGO = baseOf('tengo')
const WHO = baseOf('who')

/** Whether the number at a place is how old somebody is: "my mom is 71", "70 years old". */
export function ageAt(
  tokens: readonly Token[],
  place: number,
  foods: ReadonlySet<string>
): boolean {
  // "My starter is 2 years old" is no person's age.
  if (tokens.some(token => isFood(token, foods)) && !tokens.some(({ word }) => KIN.has(word))) {
    return false
  }
  const number = tokens[place]?.number ?? -1
  if (!Number.isInteger(number) || number < 0 || number > OLDEST) return false
  const [before = '', next = ''] = [tokens[place - 1]?.word, tokens[place + 1]?.word]
  if (AGES.has(next) || AGES.has(before)) return true
  // "My mom whos 70 drinks it": what follows goes on with her, not with the number.
  if (before === WHO && tokens.slice(0, place).some(({ word }) => KIN.has(word))) return true
  if (UNIT_WORDS.has(next) || (next !== '' && !LIGHT_BESIDE_READINGS.has(next))) return false
  return PERSONS.has(before) || (HAS.has(before) && ofPerson(tokens, place, before))
}

/** Whether the number at a place is how long somebody is with child: "6 months pregnant", "pregnant, 6 months". */
export function carriedFor(tokens: readonly Token[], place: number): boolean {
  const beside = [tokens[place - 2], tokens[place - 1], tokens[place + 2]]
  return (
    carryingUnit(tokens[place + 1]?.word ?? '') &&
    beside.some(token => token !== undefined && CARRYING.has(token.word))
  )
}

const ofPerson = (tokens: readonly Token[], place: number, has: string): boolean =>
  has === TENGO || tokens.slice(0, place).some(({ word }) => PERSONS.has(word))

/** Opens the reading of ages: one that the authors' own phrases bound offers their signs, never sure. */
export function openAges(book: PhraseBook): (scene: Scene) => readonly Candidate[] {
  const bounds = book.phrases.flatMap(meaning => {
    if (!meaning.spoken || meaning.observation.about !== 'person') return []
    const words = tokensOf(meaning.text)
    const bound = words.find(({ number }) => number !== undefined)?.number
    const from = words.some(({ word }) => FROM.has(word))
    const below = words.some(({ word }) => BELOW.has(word))
    return bound === undefined || from === below ? [] : [{ meaning, bound, from }]
  })
  return ({ tokens, spots }) =>
    tokens.flatMap(({ number }, index) => {
      if (
        number === undefined ||
        spots.some(spot => covers(spot, index)) ||
        !ageAt(tokens, index, book.foods)
      ) {
        return []
      }
      return bounds.flatMap(({ meaning, bound, from }): readonly Candidate[] => {
        const fact = from === number >= bound ? factOf(meaning, 'yes') : null
        return fact ? [{ ...fact, matched: meaning.text, sure: false }] : []
      })
    })
}
