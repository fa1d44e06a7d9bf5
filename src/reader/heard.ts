import { type Answer, isInterval } from '../tree/answers.ts'
import type { Tree } from '../tree/tree.ts'
import { type Denied, type Fact, type Fragment, factKey, type Told } from './fact.ts'
import { SMALL_WORDS } from './lexicon.ts'
import { wordsOf } from './normal.ts'
import { oneSlip } from './typos.ts'
import { isDangerFact } from './worry.ts'

/** What a line comes to in a call: what it tells, and what it takes back of what was told before. */
export interface Heard {
  readonly told: readonly Told[]
  /** Of a screen only the signs that are taken back. */
  readonly takenBack: readonly Fact[]
}

/**
 * Opens the hearing of lines in a call. A part that corrects takes back what it cannot stand beside, and
 * what it says is not there; "not boozy" by itself takes back what was told in the same words. A danger
 * goes only by words that correct and are clear, and what befalls a person never: that is removed by hand.
 */
export function openHearing(
  tree: Tree
): (before: readonly Told[], parts: readonly Fragment[]) => Heard {
  const isPersonal = ({ observation }: Fact) => tree.observations[observation]?.about === 'person'

  /** Whether a part takes back a fact, or one sign of it. */
  function takesBack(fact: Told, part: Fragment): boolean {
    const { corrects = false, denies = [], candidates } = part
    const denied = denies.filter(each => factKey(each) === factKey(fact))
    // "No, nobody had any" says all that there is to say of it.
    if (corrects && denied.some(({ wholly }) => wholly)) return true
    const grave = isDangerFact(tree, fact)
    if (grave && isPersonal(fact)) return false
    if (
      (corrects || !grave) &&
      denied.some(each => !each.wholly && inSameWords(each, fact, !grave))
    ) {
      return true
    }
    return (
      corrects &&
      candidates.some(({ sure, ...other }) => (sure || !grave) && isInPlaceOf(other, fact))
    )
  }

  return (before, parts) => {
    const sure = parts.flatMap(({ candidates }) => candidates.filter(one => one.sure))
    const sentences = sure.map(
      ({ observation, answer, matched }): Told => ({ observation, answer, matched })
    )
    const takenBack = before
      .flatMap(apart)
      .filter(fact => parts.some(part => takesBack(fact, part)))
      .map(({ observation, answer }): Fact => ({ observation, answer }))
    return { told: distinct(sentences), takenBack: distinct(takenBack) }
  }
}

/** The facts without what is taken back. */
export function without(facts: readonly Told[], gone: readonly Fact[]): readonly Told[] {
  const keys = new Set(gone.map(factKey))
  return facts.flatMap((fact): readonly Told[] => {
    const parts = apart(fact)
    const left = parts.filter(part => !keys.has(factKey(part)))
    if (left.length === parts.length) return [fact]
    if (left.length === 0) return []
    return [{ ...fact, answer: Object.assign({}, ...left.map(({ answer }) => answer)) }]
  })
}

/** A screen told at once as a fact for each of its signs. */
function apart(fact: Told): readonly Told[] {
  const { answer } = fact
  if (!isSigns(answer)) return [fact]
  return Object.entries(answer).map(([sign, value]) => ({ ...fact, answer: { [sign]: value } }))
}

/** Whether a later fact says something else of the same thing. */
function isInPlaceOf(later: Fact, { observation, answer }: Fact): boolean {
  if (observation !== later.observation || factKey(later) === factKey({ observation, answer })) {
    return false
  }
  if (!isSigns(answer) || !isSigns(later.answer)) return true
  const other = later.answer
  return Object.entries(answer).some(
    ([sign, value]) => Object.hasOwn(other, sign) && other[sign] !== value
  )
}

/** Whether the words that are denied are among those that told it: "hissing" takes no bulge back. */
function inSameWords({ matched: denied }: Denied, { matched }: Told, unknown: boolean): boolean {
  if (matched === undefined) return unknown
  const words = content(matched)
  return content(denied).every(word =>
    words.some(each => each === word || (word.length > 3 && oneSlip(each, word)))
  )
}

const content = (text: string): readonly string[] => {
  const words = wordsOf(text)
  const long = words.filter(word => !SMALL_WORDS.has(word))
  return long.length > 0 ? long : words
}

type Signs = Exclude<Extract<Answer, object>, { readonly reading: number }>

const isSigns = (answer: Answer): answer is Signs =>
  typeof answer === 'object' && !isInterval(answer)

function distinct<F extends Fact>(facts: readonly F[]): readonly F[] {
  return [...new Map(facts.map(fact => [factKey(fact), fact])).values()]
}
