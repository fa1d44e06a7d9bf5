import type { Candidate } from './fact.ts'
import { BREWS, LIGHT, OR, PLACES, SENSES } from './lexicon.ts'
import { factOf, meanOne } from './meaning.ts'
import type { Phrase, PhraseBook } from './phrase-book.ts'
import { outside, type Scene } from './scene.ts'
import { covers, positions, type Spot } from './spot.ts'
import { isDanger } from './worry.ts'

/** What the phrases of a piece tell, yes or no, where nothing is doubted. */
export function toldBy(scene: Scene, book: PhraseBook): readonly Candidate[] {
  return scene.spots.flatMap(spot => {
    const denied = scene.stance.denied.has(spot.from)
    const clear = meanOne(spot.meanings) && spot.meanings.every(({ readable }) => readable)
    const negated = negatorsBeside(scene, spot).length > 0
    return spot.meanings.flatMap((meaning): readonly Candidate[] => {
      const matched = meaning.text
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
 * A danger sign stands even in a sentence that says more: taking it is the cautious side. All else is
 * taken only when the rest of the piece says nothing, or speaks of the same answer.
 */
function affirmed(scene: Scene, spot: Spot, meaning: Phrase, book: PhraseBook): boolean {
  const { observation, answer } = meaning
  const repaired = positions(spot).filter(at => scene.repaired.has(at)).length
  if (scene.asked || scene.crowded || scene.stance.shakers.length > 0 || repaired > 1) return false
  if (contradicted(scene, spot, meaning)) return false
  if (scene.sensed && !isOfSense(observation, book)) return false
  const own = book.ownWords(observation.id, answer)
  const names = book.ownWords(observation.id, null)
  const rest = outside(scene, [spot])
  const light = (at: number): boolean => {
    const word = scene.tokens[at]?.word ?? ''
    return LIGHT.has(word) || own.has(word) || names.has(word)
  }
  if (rest.every(light)) return true
  const danger = answer !== null && isDanger(observation, answer)
  return danger && repaired === 0 && !aboutAnother(scene, meaning)
}

/** Another answer of the same choice stands beside it, or an "or" offers another fact. */
function contradicted(scene: Scene, spot: Spot, meaning: Phrase): boolean {
  const others = scene.spots
    .filter(other => other !== spot)
    .flatMap(({ meanings }) => meanings)
    .filter(other => !meanOne([meaning, other]))
  const alternative = scene.stance.joins.some(at => OR.has(scene.tokens[at]?.word ?? ''))
  const { observation } = meaning
  return others.some(
    other => alternative || (observation.kind === 'choice' && other.observation === observation)
  )
}

const isOfSense = ({ id }: Phrase['observation'], book: PhraseBook): boolean =>
  book.phrases.some(
    ({ observation, spoken, words }) =>
      observation.id === id && spoken && words.some(word => SENSES.has(word))
  )

/** "Smells like eggs" speaks of the smell; "mold in the jar" only says where. */
function aboutAnother({ names, tokens }: Scene, { observation }: Phrase): boolean {
  return names.some(
    ({ from, meanings }) =>
      !meanings.some(({ observation: { kind } }) => kind === 'measure') &&
      !PLACES.has(tokens[from - 1]?.word ?? '') &&
      !BREWS.has(tokens[from]?.word ?? '') &&
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
function deniedForSure(scene: Scene, spot: Spot): boolean {
  return (
    !scene.asked &&
    !scene.crowded &&
    negatorsBeside(scene, spot).length === 1 &&
    scene.stance.shakers.length === 0 &&
    !positions(spot).some(at => scene.repaired.has(at))
  )
}

const negatorsBeside = (scene: Scene, spot: Spot): readonly number[] =>
  scene.stance.negators.filter(at => !covers(spot, at))
