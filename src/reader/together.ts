import { isInterval } from '../tree/answers.ts'
import { groupOf } from '../tree/group.ts'
import { type Candidate, type Fragment, factKey } from './fact.ts'
import { AND, COLD, EXCEPTING, KIN, NEGATORS, PERSONS, SMALL_WORDS } from './lexicon.ts'
import { factOf } from './meaning.ts'
import { type Token, wordsOf } from './normal.ts'
import type { Phrase, PhraseBook } from './phrase-book.ts'
import { UNIT_WORDS } from './typed-units.ts'
import { oneSlip } from './typos.ts'
import { isSaidOfAll } from './well.ts'
import { isDanger } from './worry.ts'

/** A part that was read, with its words as they were typed, and how it stands to the part before. */
export interface ReadPart {
  readonly fragment: Fragment
  readonly tokens: readonly Token[]
  readonly joined: boolean
  readonly contrasts: boolean
  readonly turnedOut: boolean
}

/** A phrase of two halves with an "and" between, by the words that make each. */
interface Halves {
  readonly meaning: Phrase
  readonly left: readonly string[]
  readonly right: readonly string[]
}

/** Opens the look at all parts of a line together: what one says can change what another tells. */
export function openTogether(
  book: PhraseBook
): (parts: readonly ReadPart[]) => readonly Fragment[] {
  const halves = book.phrases.flatMap((meaning): readonly Halves[] => {
    const { observation, answer, spoken, words } = meaning
    const joint = words.findIndex(word => AND.has(word))
    if (!spoken || answer === null || joint < 1 || !isDanger(observation, answer)) return []
    const [left, right] = [words.slice(0, joint), words.slice(joint + 1)].map(content)
    return left?.length && right?.length ? [{ meaning, left, right }] : []
  })
  return parts => {
    const read = (fragments: readonly Fragment[]): readonly ReadPart[] =>
      parts.map((part, index) => ({ ...part, fragment: fragments[index] ?? part.fragment }))
    const undone = turnedOut(read(corrected(parts)))
    const all = joined(read(amounting(read(undone), book)), halves)
    return keptCold(read(excepted(read(ofOthers(read(all))))))
  }
}

/** Of an age every word counts: "day 5" is not "under 5". */
const content = (words: readonly string[]): readonly string[] =>
  words.some(word => /\d/.test(word)) ? words : words.filter(word => !SMALL_WORDS.has(word))

/**
 * "I'm pregnant and had a glass": two signs that together are a third. It is taken where the second part
 * goes on about the same person, and offered where another one may be meant; the first alone is not
 * taken for the gentler thing it says.
 */
function amounting(parts: readonly ReadPart[], { both }: PhraseBook): readonly Fragment[] {
  return both.reduce<readonly Fragment[]>(
    (fragments, { observation, sign, of: [who, what] }) => {
      const tells = (fragment: Fragment | undefined, text: string) =>
        fragment?.candidates.find(
          ({ observation: id, answer }) =>
            id === observation && typeof answer === 'object' && 'yes' === groupOf(answer)[text]
        )
      const drinkers = fragments.flatMap((fragment, index) =>
        tells(fragment, what) ? [index] : []
      )
      return fragments.map((fragment, index) => {
        const one = tells(fragment, who)
        // Of several the one that goes on about the same person, else one that is clear, else any.
        const [other] = drinkers
          .filter(each => !areTwo(parts, index, each))
          .map(each => ({ told: tells(fragments[each], what), same: isSame(parts, index, each) }))
          .sort(
            (a, b) =>
              Number(b.same) - Number(a.same) ||
              Number(b.told?.sure === true) - Number(a.told?.sure === true)
          )
        if (!one || !other || (!one.sure && other.told?.sure !== true)) return fragment
        const sure = other.same && one.sure && other.told?.sure === true
        const matched = `${one.matched}, ${other.told?.matched}`
        const amount: Candidate = { observation, answer: { [sign]: 'yes' }, matched, sure }
        const { problem: _, ...rest } = fragment
        const kept = fragment.candidates
          .filter(each => factKey(each) !== factKey(amount))
          .map(each => (each === one ? { ...each, sure: false } : each))
          // What is taken says the other as well.
          .filter(each => !(sure && each.observation === observation && !each.sure))
        return { ...rest, candidates: [amount, ...kept] }
      })
    },
    parts.map(({ fragment }) => fragment)
  )
}

/** Whether two parts are one, or the later follows on the earlier and names no other person. */
function isSame(parts: readonly ReadPart[], one: number, other: number): boolean {
  if (one === other) return true
  const [early, late] = one < other ? [one, other] : [other, one]
  return late === early + 1 && parts[late]?.joined === true && !changes(parts, early, late)
}

/** "My daughter is pregnant, my husband drank some": each is told of somebody else. */
function areTwo(parts: readonly ReadPart[], one: number, other: number): boolean {
  const kinIn = (place: number) =>
    parts[place]?.tokens.flatMap(({ word }) => (KIN.has(word) ? [word] : [])) ?? []
  const [first, second] = [kinIn(one), kinIn(other)]
  return first.length > 0 && second.length > 0 && !first.some(word => second.includes(word))
}

/** "She is pregnant and I had a glass": another person acts. */
function changes(parts: readonly ReadPart[], early: number, late: number): boolean {
  const subject = (place: number) =>
    parts[place]?.tokens.find(({ word }) => PERSONS.has(word) && !KIN.has(word))?.word
  const [before, after] = [subject(early), subject(late)]
  if (after === undefined) return false
  const kin = parts[early]?.tokens.some(({ word }) => KIN.has(word)) ?? false
  if (kin) return after === 'i' || after === 'yo' || after === 'we' || after === 'nosotr'
  return before !== undefined && before !== after
}

/**
 * "Pregnent and drank it": whoever says both halves of a graver phrase in two parts, or nearly so,
 * has the phrase offered, and neither half is taken for the gentler thing it says alone.
 */
function joined(parts: readonly ReadPart[], halves: readonly Halves[]): readonly Fragment[] {
  const fragments = parts.map(({ fragment }) => fragment)
  const taken = new Set(
    fragments.flatMap(({ candidates }) => candidates.filter(({ sure }) => sure)).map(factKey)
  )
  return halves.reduce<readonly Fragment[]>((all, { meaning, left, right }) => {
    const fact = factOf(meaning, 'yes')
    if (!fact || taken.has(factKey(fact))) return all
    const lefts = parts.map(part => holdsNearly(part, left))
    const rights = parts.map(part => holdsNearly(part, right))
    const both = lefts.some(
      (one, i) => one && rights.some((other, k) => other && i !== k && !areTwo(parts, i, k))
    )
    if (!both) return all
    const offered: Candidate = { ...fact, matched: meaning.text, sure: false }
    return all.map((fragment, index) =>
      lefts[index] || rights[index] ? withFirst(fragment, offered) : fragment
    )
  }, fragments)
}

function withFirst(fragment: Fragment, offered: Candidate): Fragment {
  const { problem: _, ...rest } = fragment
  const others = fragment.candidates
    .filter(each => factKey(each) !== factKey(offered))
    .map(each => (each.observation === offered.observation ? { ...each, sure: false } : each))
  return { ...rest, candidates: [offered, ...others] }
}

const holdsNearly = ({ tokens, fragment }: ReadPart, words: readonly string[]): boolean =>
  fragment.problem !== 'asked' &&
  // "Nobody drank it, my wife is pregnant": a half that is turned round is none.
  (words.some(word => NEGATORS.has(word)) || !tokens.some(({ word }) => NEGATORS.has(word))) &&
  words.every(word => tokens.some(each => nearly(each.word, word)))

/** The same, one slip in a short word, or two in a long one. */
function nearly(typed: string, word: string): boolean {
  if (typed === word) return true
  if (word.length < 5 || typed.length < 4 || typed.length > 30) return false
  if (oneSlip(typed, word)) return true
  const shorter = [...typed].map((_, index) => typed.slice(0, index) + typed.slice(index + 1))
  return word.length >= 7 && shorter.some(each => each === word || oneSlip(each, word))
}

/**
 * "pH 3.1, no wait, 3.4", "nail polish, no it is vinegar": what a later part corrects is told no more, and
 * a number in its place is a reading of the same.
 */
function corrected(parts: readonly ReadPart[]): readonly Fragment[] {
  const fragments = parts.map(({ fragment }) => fragment)
  for (const [index, next] of fragments.entries()) {
    const before = fragments[index - 1]
    if (next.corrects !== true || before === undefined) continue
    const replaced = before.candidates.filter(
      one =>
        next.candidates.some(other => replaces(one, other)) &&
        !next.candidates.some(other => factKey(one) === factKey(other))
    )
    const [reading] = replaced.filter(({ answer }) => isInterval(answer))
    const kept = before.candidates.filter(one => !replaced.includes(one))
    if (replaced.length === 0) continue
    fragments[index - 1] = {
      ...before,
      candidates: kept,
      ...(kept.length === 0 && { problem: 'taken-back' })
    }
    if (reading === undefined) continue
    const same = next.candidates.filter(
      ({ observation, answer }) => observation === reading.observation && isInterval(answer)
    )
    const [only] = same
    if (only && same.length === 1)
      fragments[index] = { ...next, candidates: [{ ...only, sure: true }] }
  }
  return fragments
}

/** "Everyone is fine, but grandma", "nobody is sick. She did throw up": what is said of all is not taken. */
function excepted(parts: readonly ReadPart[]): readonly Fragment[] {
  const everyone = parts.map(({ fragment }) => fragment.candidates.find(isSaidOfAll))
  return parts.map(({ fragment }, index) => {
    const said = everyone[index]
    const next = parts[index + 1]
    if (said === undefined) return fragment
    const spoiled =
      next?.contrasts === true ||
      (next !== undefined && excepts(next)) ||
      parts.some(({ fragment: { candidates } }) => candidates.some(one => speaksAgainst(one, said)))
    if (!spoiled) return fragment
    const candidates = fragment.candidates.filter(one => one !== said)
    return { ...fragment, candidates, ...(candidates.length === 0 && { problem: 'said-not-seen' }) }
  })
}

/** Whether a part begins with a word that makes an exception; in "less sugar" (menos azúcar) it is of a known phrase. */
function excepts({ tokens, fragment }: ReadPart): boolean {
  const [first] = tokens
  if (first === undefined || !EXCEPTING.has(first.word)) return false
  // "Menos azúcar mi hija" speaks of somebody all the same.
  if (tokens.some(({ word }) => KIN.has(word) || PERSONS.has(word))) return true
  return !fragment.candidates.some(
    ({ sure, matched }) => sure && wordsOf(matched)[0] === first.word
  )
}

/** "I didn't eat any, but my husband tasted one": whoever speaks for themselves says nothing of the others. */
function ofOthers(parts: readonly ReadPart[]): readonly Fragment[] {
  const candidates = parts.flatMap(({ fragment }) => fragment.candidates.filter(({ sure }) => sure))
  return parts.map(({ fragment }) => ({
    ...fragment,
    candidates: fragment.candidates.filter(
      one =>
        isSaidOfAll(one) || !isRuledOut(one) || !candidates.some(other => speaksAgainst(other, one))
    )
  }))
}

const isRuledOut = ({ answer }: Candidate): boolean =>
  typeof answer === 'object' && Object.values(answer).every(value => value === 'no')

/** "In the fridge forever, like 5 months": how long it stood cold is no count of its days. */
function keptCold(parts: readonly ReadPart[]): readonly Fragment[] {
  return parts.map(({ fragment, joined: follows, tokens }, index) => {
    const cold = parts[index - 1]?.tokens.some(({ word }) => COLD.has(word)) ?? false
    const bare = tokens.every(
      ({ word, number }) => number !== undefined || UNIT_WORDS.has(word) || SMALL_WORDS.has(word)
    )
    if (!follows || !cold || !bare) return fragment
    return {
      ...fragment,
      candidates: fragment.candidates.map(one =>
        isInterval(one.answer) ? { ...one, sure: false } : one
      )
    }
  })
}

const speaksAgainst = (one: Candidate, said: Candidate): boolean =>
  one.observation === said.observation &&
  typeof one.answer === 'object' &&
  Object.entries(one.answer).some(
    ([sign, value]) => value !== 'no' && Object.hasOwn(groupOf(said.answer), sign)
  )

/** Whether one fact cannot be told beside another that corrects it. */
export function replaces(
  { observation, answer }: Pick<Candidate, 'observation' | 'answer'>,
  by: Pick<Candidate, 'observation' | 'answer'>
): boolean {
  if (observation !== by.observation) return false
  if (typeof answer !== 'object' || typeof by.answer !== 'object') return true
  if (isInterval(answer) || isInterval(by.answer)) return true
  const signs = by.answer
  return Object.keys(answer).some(sign => Object.hasOwn(signs, sign))
}

/** "Looks like fuzz but it is just bubbles": neither look is taken, both are asked for. */
function turnedOut(parts: readonly ReadPart[]): readonly Fragment[] {
  const unsure = (fragment: Fragment, of: Fragment | undefined): Fragment => {
    const looks = new Set(of?.candidates.map(({ observation }) => observation))
    return {
      ...fragment,
      candidates: fragment.candidates.map(each =>
        looks.has(each.observation) ? { ...each, sure: false } : each
      )
    }
  }
  return parts.map(({ fragment, turnedOut: late }, index) => {
    const next = parts[index + 1]
    if (next?.turnedOut) return unsure(fragment, next.fragment)
    return late ? unsure(fragment, parts[index - 1]?.fragment) : fragment
  })
}
