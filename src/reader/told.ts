import type { Candidate, Denied, Fact } from './fact.ts'
import {
  LIGHT,
  LIGHT_BESIDE_READINGS,
  OR,
  PERSONS,
  PLACES,
  SELF,
  SENSES,
  SMALL_WORDS
} from './lexicon.ts'
import { factOf, meanOne, noneFact } from './meaning.ts'
import { isFood } from './normal.ts'
import type { Phrase, PhraseBook } from './phrase-book.ts'
import { outside, type Scene } from './scene.ts'
import { covers, type PhraseSpot, positions } from './spot.ts'
import { UNIT_WORDS } from './typed-units.ts'
import { isOfEverybody } from './well.ts'
import { isDanger } from './worry.ts'

/** What the phrases of a piece tell, yes or no, where nothing is doubted. */
export function toldBy(scene: Scene, book: PhraseBook): readonly Candidate[] {
  return scene.spots.flatMap(spot => {
    if (isOfEverybody(spot)) return []
    const denied = scene.stance.denied.has(spot.from)
    const readable = spot.meanings.every(each => each.readable)
    const plain = readable && (meanOne(spot.meanings) || isDangerOfAny(spot.meanings))
    const negated = negatorsBeside(scene, spot).length > 0
    return spot.meanings.flatMap((meaning): readonly Candidate[] => {
      const matched = meaning.text
      // A label or an id beside callers' own words for the same answer makes them no less clear.
      const clear =
        plain && spot.meanings.some(each => each.force !== 'may-mean' && meanOne([each, meaning]))
      if (meaning.answer === 'none') {
        const none = denied || negated ? null : noneFact(meaning.observation, book.smelled)
        return none ? [{ ...none, matched, sure: false }] : []
      }
      if (meaning.force === 'rules-out') {
        const no = factOf(meaning, 'no')
        const sure =
          clear && !negated && !ofSelf(scene, meaning) && affirmed(scene, spot, meaning, book)
        return no ? [{ ...no, matched, sure }] : []
      }
      const yes = denied ? null : factOf(meaning, 'yes')
      const no = negated ? factOf(meaning, 'no') : null
      const sureNo = clear && denied && mayRuleOut(meaning) && deniedForSure(scene, spot)
      const sureYes = clear && !negated && affirmed(scene, spot, meaning, book)
      return [
        ...(yes ? [{ ...yes, matched, sure: sureYes }] : []),
        ...(no ? [{ ...no, matched, sure: sureNo }] : [])
      ]
    })
  })
}

/**
 * What a piece says is not there, as the facts that told it would have been: "not nail polish", "nobody had
 * any". What befalls a person is never taken back by words typed in a hurry.
 */
export function deniedBy({ spots, stance }: Scene, book: PhraseBook): readonly Denied[] {
  if (stance.doubted || stance.shakers.length > 0) return []
  const gone = spots
    .filter(({ from, meanings }) => stance.denied.has(from) || meanings.some(isRefusal))
    .flatMap(({ meanings }) => meanings)
  return gone.flatMap(meaning => {
    const { observation, answer, text: matched } = meaning
    const wholly = isRefusal(meaning)
    const grave = observation.about === 'person' && isGrave(meaning)
    const fact = grave ? null : factOf({ ...meaning, force: 'told' }, 'yes')
    // Whoever had none cannot be somebody at risk who had some.
    const amounts = book.both
      .filter(one => wholly && one.observation === observation.id && one.of[1] === answer)
      .map(({ sign }): Fact => ({ observation: observation.id, answer: { [sign]: 'yes' } }))
    return [...(fact ? [fact] : []), ...amounts].map(each => ({ ...each, matched, wholly }))
  })
}

const isRefusal = ({ force }: Phrase): boolean => force === 'rules-out'

/** "I haven't had any" rules out one person alone. */
const ofSelf = ({ tokens }: Scene, { observation }: Phrase): boolean =>
  observation.about === 'person' && tokens.some(({ word }) => SELF.has(word))

/** "Hissing" is a danger of the jar and of the bottle: whichever it is, it is told. */
function isDangerOfAny(meanings: readonly Phrase[]): boolean {
  const screens = new Set(meanings.map(({ observation }) => observation.id))
  const signs = new Set(meanings.map(({ observation, answer }) => `${observation.id} ${answer}`))
  return (
    screens.size === signs.size &&
    meanings.every(
      ({ observation, answer }) =>
        observation.about === 'container' && answer !== null && isDanger(observation, answer)
    )
  )
}

/** Phrases of which every word stands somewhere in the piece: offered, for they may be put together wrongly. */
export function scatteredBy(scene: Scene): readonly Candidate[] {
  if (scene.stance.doubted || scene.stance.negators.length > 0) return []
  return [...scene.scattered]
    .sort((a, b) => b.at.length - a.at.length)
    .flatMap(({ meanings }) => meanings)
    .flatMap((meaning): readonly Candidate[] => {
      const fact = factOf(meaning, meaning.force === 'rules-out' ? 'no' : 'yes')
      return fact ? [{ ...fact, matched: meaning.text, sure: false }] : []
    })
}

/**
 * A danger sign stands even in a sentence that says more, as long as that is about nothing else that
 * could be told. All else is taken only when the rest of the piece says nothing, or is told as well.
 */
function affirmed(scene: Scene, spot: PhraseSpot, meaning: Phrase, book: PhraseBook): boolean {
  const { observation, answer } = meaning
  const repaired = positions(spot).filter(place => scene.repaired.has(place)).length
  if (scene.asked !== 'no' || scene.crowded || scene.stance.shakers.length > 0) return false
  if (repaired > 1 || contradicted(scene, spot, meaning) || outgrown(scene, spot)) return false
  const smelled = book.sensed.has(observation.id)
  if (sensedBeside(scene, spot) && !smelled && observation.about === 'batch') return false
  // "One blew up in the pantry" tells of the pantry for that one alone.
  if (!isGrave(meaning) && observation.about === 'container' && besideDanger(scene)) return false
  // "Metal lid" smells of nothing.
  if (smelled && !scene.sensed && scene.spots.length > 1) return false
  const numbered = scene.tokens.some(({ number }) => number !== undefined)
  const unexplained = outside(scene, scene.spots).filter(
    place => !isQuiet(scene, place, meaning, book) && !(numbered && isBesideReading(scene, place))
  )
  if (unexplained.length === 0) return true
  const danger = answer !== null && isDanger(observation, answer)
  return (
    danger &&
    repaired === 0 &&
    !aboutAnother(scene, meaning, book) &&
    !tellsElse(scene, spot, meaning, book)
  )
}

/** "Smells like vinegar" tells of the smell; "botella de sabor" is a bottle. */
function sensedBeside({ sensed, tokens }: Scene, spot: PhraseSpot): boolean {
  const senses = tokens.flatMap(({ word }, index) => (SENSES.has(word) ? [index] : []))
  return sensed && (senses.length === 0 || senses.some(place => !covers(spot, place)))
}

const isGrave = ({ observation, answer }: Phrase): boolean =>
  answer !== null && isDanger(observation, answer)

const besideDanger = ({ spots }: Scene): boolean =>
  spots.some(({ meanings }) =>
    meanings.some(each => each.observation.about === 'container' && isGrave(each))
  )

/** Whether a word says nothing beside a phrase: a small word, a word of the same answer, a food, a place. */
function isQuiet(
  { tokens, spots }: Scene,
  place: number,
  { observation }: Phrase,
  book: PhraseBook
): boolean {
  const token = tokens[place]
  if (token === undefined) return true
  const { word } = token
  if (isFood(token, book.foods)) return true
  if (LIGHT.has(word) || PERSONS.has(word)) return true
  const senses = spots.flatMap(({ meanings }) => meanings)
  if (senses.some(each => book.ownWords(each.observation.id, each.answer).has(word))) return true
  // "Spots" is a name of the colors, and tells of some of them.
  return book.ownWords(observation.id, null).has(word) && book.tellersOf(word).size === 0
}

/** "After 5 days", "two weeks ago": when it was so says nothing of what was so. */
function isBesideReading({ tokens }: Scene, place: number): boolean {
  const { word = '', number } = tokens[place] ?? {}
  return number !== undefined || UNIT_WORDS.has(word) || LIGHT_BESIDE_READINGS.has(word)
}

/** Whether the piece has more of a phrase for something else than it has of this one: "worms" beside "swimming". */
function tellsElse(
  { tokens }: Scene,
  spot: PhraseSpot,
  meaning: Phrase,
  book: PhraseBook
): boolean {
  const here = new Set(tokens.map(({ word }) => word))
  const rivals = new Set([...here].flatMap(word => book.spokenWith.get(word) ?? []))
  return [...rivals].some(rival => {
    const held = rival.words.filter(word => here.has(word) && !SMALL_WORDS.has(word))
    return held.length > spot.at.length && !meanOne([rival, meaning])
  })
}

/** A longer phrase holds its words as well: "tiny worms swimming" beside "worms". */
const outgrown = ({ scattered }: Scene, spot: PhraseSpot): boolean =>
  scattered.some(
    ({ at, meanings }) =>
      at.length > spot.at.length &&
      spot.at.every(place => at.includes(place)) &&
      !meanOne([...meanings, ...spot.meanings])
  )

/** Another answer of the same choice stands beside it, or an "or" offers another fact. */
function contradicted(scene: Scene, spot: PhraseSpot, meaning: Phrase): boolean {
  const others = scene.spots
    .filter(other => other !== spot)
    .flatMap(({ meanings }) => meanings)
    .filter(other => !meanOne([meaning, other]))
  const alternative = scene.stance.joins.some(place => OR.has(scene.tokens[place]?.word ?? ''))
  const { observation } = meaning
  return others.some(
    other => alternative || (observation.kind === 'choice' && other.observation === observation)
  )
}

/** "Smells like eggs" speaks of the smell; "mold in the jar" only says where. */
function aboutAnother(
  { names, tokens }: Scene,
  { observation }: Phrase,
  book: PhraseBook
): boolean {
  return names.some(
    ({ from, meanings }) =>
      !meanings.some(({ observation: { kind } }) => kind === 'measure') &&
      !PLACES.has(tokens[from - 1]?.word ?? '') &&
      !book.foods.has(tokens[from]?.word ?? '') &&
      !meanings.some(meaning => meaning.observation === observation)
  )
}

/**
 * A sign that stands for several things is not ruled out by one of them: "no worms" says nothing of
 * fly eggs. So a danger sign, or a sign about a person, is ruled out by hand.
 */
function mayRuleOut({ observation, answer }: Phrase): boolean {
  return (
    observation.kind === 'signs' &&
    answer !== null &&
    observation.about !== 'person' &&
    !isDanger(observation, answer)
  )
}

/** One "no", nothing asked, nothing shaken and no typing error. */
function deniedForSure(scene: Scene, spot: PhraseSpot): boolean {
  return (
    scene.asked === 'no' &&
    !scene.crowded &&
    negatorsBeside(scene, spot).length === 1 &&
    scene.stance.shakers.length === 0 &&
    !positions(spot).some(place => scene.repaired.has(place))
  )
}

const negatorsBeside = (scene: Scene, spot: PhraseSpot): readonly number[] =>
  scene.stance.negators.filter(place => !covers(spot, place))
