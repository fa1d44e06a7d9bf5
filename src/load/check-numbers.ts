import type { Place } from '../findings/place.ts'
import type { MeasureObservation } from '../tree/observation.ts'
import { cutsOf } from '../tree/range.ts'
import { rounded } from '../tree/reading.ts'
import type { Recheck } from '../tree/tree.ts'
import { SOURCE_TAG } from './check-words.ts'
import type { Companions } from './companions.ts'
import type { LinkedTree } from './link-tree.ts'
import type { AuthoredProject } from './project.ts'
import type { FindingReport } from './report.ts'
import { textsIn } from './texts.ts'
import { namedIn } from './texts-of-tree.ts'

export const PATTERNS = {
  // As people write it: a number with a decimal, between those of vinegar and of milk, with no other unit.
  ph: /(?<![\d.,–-])([2-6]\.\d{1,2})(?![\d.]|–|\s*(?:%|cm|mL|L\b|kg|g\b|inch|°))/g,
  // Of the ferment, counted from its start.
  day: /\b[Dd]ay (\d+)\b/g
}
const KINDS = ['ph', 'day'] as const
type Kind = (typeof KINDS)[number]
export const NAMES: Readonly<Record<Kind, string>> = { ph: 'pH', day: 'day' }

type Tree = LinkedTree['tree']

/**
 * Holds the numbers in what a tree says against those that it decides by: a limit moved in the tree and not
 * in the words, or the other way about, is reported. What a sentence states besides is listed where it is
 * said what the sentence does.
 */
export function checkNumbers(
  project: AuthoredProject,
  linked: readonly LinkedTree[],
  followUps: Companions['followUps'],
  report: FindingReport
): void {
  const textsOf = once(textsIn)
  for (const { tree } of linked) {
    const decided = { ph: limitsOf(tree, 'ph'), day: daysOf(tree) }
    const answered = (followUps[tree.id] ?? []).map(({ id }) => id)
    for (const { key, text, place, part, stated } of outcomeTexts(
      project,
      tree,
      answered,
      textsOf
    )) {
      for (const kind of KINDS) {
        const open = numbersIn(text, PATTERNS[kind]).filter(
          number => !decided[kind].has(number) && !stated.includes(number)
        )
        for (const number of open) {
          const facts = { text: key, number: `${NAMES[kind]} ${number}`, tree: tree.id }
          report.add('number-not-decided', place(), { ...facts, part: part ?? '' })
        }
      }
    }
  }
}

interface OutcomeText {
  readonly key: string
  readonly text: string
  readonly place: () => Place
  /** Where its line stands in `shared/steps.yaml`; a tree's own words have none. */
  readonly part: 'steps' | 'notes' | 'follow-ups' | null
  /** The numbers that this line lists. */
  readonly stated: readonly number[]
}

/** The English of all that a tree's outcomes can say. */
function outcomeTexts(
  { words: all, steps }: AuthoredProject,
  tree: Tree,
  answered: readonly string[],
  textsOf: typeof textsIn
): readonly OutcomeText[] {
  const said = new Set([...namedIn(tree), ...answered])
  return FILES.flatMap(([stem, part]) => {
    const words = all.get(SOURCE_TAG)?.get(stem ?? tree.id)
    if (!words) return []
    const texts = [...textsOf(words.value)].map(([key, text]) => ({
      key,
      text,
      first: key.split('.')[0] ?? ''
    }))
    return texts
      .filter(({ first }) => (stem === null ? OWN : said).has(first))
      .map(({ key, text, first }) => ({
        key,
        text,
        place: () => words.doc.place(key.split('.')),
        part,
        stated: (part && steps?.value[part]?.[first]?.states) ?? []
      }))
  })
}

/** The files of words, null for the tree's own, and where their lines stand in `shared/steps.yaml`. */
const FILES = [
  ['steps', 'steps'],
  ['notes', 'notes'],
  ['follow-ups', 'follow-ups'],
  ['verdicts', null],
  [null, null]
] as const

/** Of a tree's own words those that say what its outcomes say; questions and tables have numbers of their own. */
const OWN: ReadonlySet<string> = new Set(['use', 'verdicts', 'cautions'])

/** What was worked out of a value is not worked out again: most files of words are those of every tree. */
function once<A, B>(make: (of: A) => B): (of: A) => B {
  const cache = new Map<A, B>()
  return of => {
    const result = cache.get(of) ?? make(of)
    cache.set(of, result)
    return result
  }
}

/** Each number that a pattern finds, once. */
export const numbersIn = (text: string, pattern: RegExp): readonly number[] => [
  ...new Set([...text.matchAll(pattern)].map(match => Number(match[1])))
]

/** Every limit of the questions in a unit, as the tree says it and as each instrument has to read for it. */
const limitsOf = (tree: Tree, unit: string): ReadonlySet<number> =>
  new Set(
    measuresOf(tree).flatMap(observation =>
      observation.unit === unit
        ? [...limitsAt(tree, observation.id)].flatMap(limit => asRead(limit, observation))
        : []
    )
  )

/** Every measure that a tree asks. */
export const measuresOf = (tree: Tree): readonly MeasureObservation[] =>
  Object.values(tree.observations).filter(observation => observation.kind === 'measure')

/** Every limit that the questions of a tree draw at one measure. */
export function limitsAt({ questions }: Tree, observation: string): ReadonlySet<number> {
  const drawn = Object.values(questions).flatMap(question =>
    question.kind === 'measure' && question.asks === observation
      ? [...question.ranges, ...question.taste]
      : []
  )
  return new Set(drawn.flatMap(({ range }) => cutsOf(range).map(cut => cut.at)))
}

/** A limit, and what each instrument has to read for it. */
export const asRead = (limit: number, { instruments }: MeasureObservation): readonly number[] => [
  limit,
  ...instruments.flatMap(({ plusMinus }) => [
    rounded(limit - plusMinus),
    rounded(limit + plusMinus)
  ])
]

/** Every day that a question draws a limit at or a second look falls on. */
function daysOf(tree: Tree): ReadonlySet<number> {
  const { notes, verdicts, does } = tree.advice
  const rechecks = [...Object.values(notes), ...Object.values(verdicts)].flatMap(
    ({ recheck }): readonly Recheck[] => (recheck ? [recheck] : [])
  )
  return new Set([
    ...limitsOf(tree, 'day'),
    ...rechecks.map(recheck => ('day' in recheck ? recheck.day : recheck.hours[1] / 24)),
    ...Object.values(does).flatMap(({ byDay }) => byDay ?? [])
  ])
}
