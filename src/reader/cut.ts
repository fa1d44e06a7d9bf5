import { type Asked, askedIn, RUN_ON } from './asked.ts'
import { correctionIn } from './correction.ts'
import { AND, BUT, CARRYING, KIN, NEGATORS, OR, SENSES, TURNED_OUT } from './lexicon.ts'
import { wordsOf } from './normal.ts'
import type { PhraseBook } from './phrase-book.ts'
import { carryingUnit } from './typed-units.ts'

/** A part of a line that is read by itself. */
export interface Piece {
  /** As it was typed. */
  readonly typed: string
  /** Without the words that correct. */
  readonly text: string
  readonly asked: Asked
  /** An "and" joins it to words that name a sense. */
  readonly sensed: boolean
  /** It takes back what was said before. */
  readonly corrects: boolean
  /** An "and" or a comma joins it to the part before. */
  readonly joined: boolean
  /** A "but" parts it from the part before. */
  readonly contrasts: boolean
  /** What was only thought to be so turned out to be this: "but it is just bubbles". */
  readonly turnedOut: boolean
}

/** A place where a line may be cut, and the words of it that belong to neither side. */
interface Joint {
  readonly from: number
  readonly to: number
  readonly mark: string
}

const MARK = /[;!?¡¿\n\r]|[.,](?!\d)|(?<!\d)[.,](?=\d)/gu
const CONJUNCTION = new RegExp(`(?<=\\s)(?:${[...AND, ...BUT].join('|')})(?=\\s)`, 'giu')

/** Cuts a line where one fact ends and another may begin; a known phrase is never cut. */
export function cut(line: string, book: PhraseBook): readonly Piece[] {
  const pieces: Piece[] = []
  let from = 0
  let mark = ''
  let sensed = false
  let corrects = false
  const end = (to: number, closing: string): void => {
    const typed = line.slice(from, to).trim()
    if (!/[^\s\p{P}]/u.test(typed)) return
    const correction = correctionIn(typed)
    corrects ||= correction.corrects
    // "No wait" by itself belongs to what follows.
    if (correction.text === '') return
    const word = mark.toLowerCase()
    const joined = AND.has(word)
    pieces.push({
      typed,
      text: correction.text,
      asked: askedAfter(pieces.at(-1), joined, correction.text, closing === '?', book),
      sensed: joined && sensed,
      corrects,
      joined: joined || word === ',',
      contrasts: BUT.has(word),
      turnedOut: BUT.has(word) && wordsOf(typed).some(each => TURNED_OUT.has(each))
    })
    corrects = false
    sensed = (joined && sensed) || wordsOf(typed).some(each => SENSES.has(each))
  }
  const joints = jointsOf(line)
  for (const [index, joint] of joints.entries()) {
    const before = line.slice(from, joint.from)
    const after = line.slice(joint.to, joints[index + 1]?.from ?? line.length)
    const rest = () => line.slice(joint.to, joint.to + REACH)
    if (holdsTogether(joint.mark, before, after, rest, book)) continue
    end(joint.from, joint.mark)
    mark = joint.mark
    from = joint.to
  }
  end(line.length, '')
  return pieces
}

/** Whether a part asks; a few words that an "and" joins to a plea go on with it: "can I boil it and eat it". */
function askedAfter(
  before: Piece | undefined,
  joined: boolean,
  text: string,
  marked: boolean,
  book: PhraseBook
): Asked {
  const words = wordsOf(text)
  const asked = askedIn(text, marked)
  if (joined && before?.asked === 'plea' && words.length <= 3) return 'plea'
  // "Can my sauerkraut" is what somebody wants to do, and a known phrase.
  return asked === 'plea' && book.telling.has(words.join(' ')) ? 'no' : asked
}

/** As far as a phrase may reach over a joint, in characters. */
const REACH = 120

function jointsOf(line: string): readonly Joint[] {
  const marks = [...line.matchAll(MARK), ...line.matchAll(CONJUNCTION), ...line.matchAll(RUN_ON)]
  return marks
    .map(({ index, 0: mark }) => ({ from: index, to: index + mark.length, mark }))
    .filter(
      ({ from, mark }) =>
        mark !== '.' || !/\bp(?:\. ?h)?$/i.test(line.slice(Math.max(0, from - 5), from))
    )
    .sort((a, b) => a.from - b.from)
}

function holdsTogether(
  mark: string,
  before: string,
  after: string,
  rest: () => string,
  book: PhraseBook
): boolean {
  const word = mark.toLowerCase()
  const joins = AND.has(word)
  // "Anything but fuzzy", "nothing but bubbles".
  if (BUT.has(word)) return /\b(?:any|every|no)thing\s*$/i.test(before)
  if (mark !== ',' && !joins) return false
  const left = wordsOf(before.slice(-REACH))
  const right = wordsOf(after)
  if (inPhrase(left, joins ? [word] : [], wordsOf(rest()), book)) return true
  if (joins && /^\s*(?:a half|medi[oa])\b/i.test(after)) return true
  if (joins && /\btreinta\s*$/i.test(before) && /^\s*un[oa]?\b/i.test(after)) return true
  // "My mom, 71".
  if (KIN.has(left.at(-1) ?? '') && /^\s*\d+\s*$/.test(after)) return true
  // "She is pregnant, 6 months".
  if (mark === ',' && CARRYING.has(left.at(-1) ?? '') && carryingUnit(right[1] ?? '')) return true
  // "Mold, no."
  const [last = '', ...others] = right
  const bare = others.length === 0 && NEGATORS.has(last) && !book.telling.has(last)
  if (left.length > 0 && bare) return true
  const denied = left.some(each => NEGATORS.has(each)) && !book.telling.has(left.join(' '))
  // "No fuzz, mold, or hair" and "no fuzz and hair": the "no" may reach over the joint.
  if (!denied || right.some(each => NEGATORS.has(each)) || /\d/.test(after)) return false
  return joins
    ? right.length <= 2
    : OR.has(right[0] ?? '') || (right.length <= 2 && listEnds(rest()))
}

/** Whether a list that began before goes on to an "or": its commas then part nothing. */
function listEnds(rest: string): boolean {
  const [sentence = ''] = rest.split(/[;.!?\n\r]/)
  return sentence
    .split(',')
    .slice(1)
    .some(part => OR.has(wordsOf(part)[0] ?? ''))
}

function inPhrase(
  left: readonly string[],
  joint: readonly string[],
  right: readonly string[],
  book: PhraseBook
): boolean {
  for (let before = 1; before <= Math.min(left.length, book.longest); before++) {
    const start = [...left.slice(left.length - before), ...joint].join(' ')
    if (!book.beginnings.has(start)) continue
    for (let after = 1; after <= Math.min(right.length, book.longest); after++) {
      if (book.telling.has(`${start} ${right.slice(0, after).join(' ')}`)) return true
    }
  }
  return false
}
