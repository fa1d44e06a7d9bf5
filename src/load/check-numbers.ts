import type { MeasureObservation } from '../tree/observation.ts'
import type { Recheck } from '../tree/tree.ts'
import { SOURCE_TAG } from './check-words.ts'
import type { Companions } from './companions.ts'
import type { Linked } from './link-tree.ts'
import type { Project } from './project.ts'
import type { Report } from './report.ts'
import { textsIn } from './texts.ts'
import { namedIn } from './texts-of-tree.ts'

/** A pH as people write it: a number with a decimal, between those of vinegar and of milk, with no other unit. */
const PH = /(?<![\d.,–-])([2-6]\.\d{1,2})(?![\d.]|–|\s*(?:%|cm|mL|L\b|kg|g\b|inch|°))/g
/** A day of the ferment, counted from its start. */
const DAY = /\b[Dd]ay (\d+)\b/g

type Tree = Linked['tree']

/**
 * Holds the numbers in what a tree says against those that it decides by: a limit moved in the tree and not
 * in the words, or the other way about, is reported. What a sentence states besides is listed where it is
 * said what the sentence does.
 */
export function checkNumbers(
  project: Project,
  linked: readonly Linked[],
  followUps: Companions['followUps'],
  report: Report
): void {
  const all = project.words.get(SOURCE_TAG)
  const { steps } = project
  if (!all || !steps) return
  const reported = new Set<string>()
  for (const { tree } of linked) {
    const decided = { ph: limitsOf(tree, 'ph'), day: daysOf(tree) }
    const answered = (followUps[tree.id] ?? []).map(({ id }) => id)
    const named = new Set([...namedIn(tree), ...answered])
    for (const [stem, part] of PARTS) {
      const words = all.get(stem ?? tree.id)
      if (!words) continue
      for (const [key, text] of textsIn(words.value)) {
        const [first = ''] = key.split('.')
        if (stem === null ? !OWN.has(first) : !named.has(first)) continue
        const stated: readonly number[] = (part && steps.value[part]?.[first]?.states) ?? []
        for (const kind of ['ph', 'day'] as const) {
          for (const number of numbersIn(text, kind === 'ph' ? PH : DAY)) {
            const name = `${stem ?? tree.id} ${key} ${number} ${tree.id}`
            if (decided[kind].has(number) || stated.includes(number) || reported.has(name)) continue
            reported.add(name)
            report.add('number-not-decided', words.doc.place(key.split('.')), {
              text: key,
              number: kind === 'ph' ? `pH ${number}` : `day ${number}`,
              tree: tree.id,
              part: part ?? ''
            })
          }
        }
      }
    }
  }
}

/** Where a sentence's line stands in `shared/steps.yaml`, by the file of its words; a tree's own words have none. */
const PARTS = [
  ['steps', 'steps'],
  ['notes', 'notes'],
  ['follow-ups', 'follow-ups'],
  ['verdicts', null],
  [null, null]
] as const

/** Of a tree's own words those that say what its outcomes say; questions and tables have numbers of their own. */
const OWN: ReadonlySet<string> = new Set(['use', 'verdicts', 'cautions'])

const numbersIn = (text: string, pattern: RegExp): readonly number[] =>
  [...text.matchAll(pattern)].map(match => Number(match[1]))

/** Every limit of the questions in a unit, as the tree says it and as each instrument has to read for it. */
function limitsOf(tree: Tree, unit: string): ReadonlySet<number> {
  const limits = new Set<number>()
  for (const question of Object.values(tree.questions)) {
    if (question.kind !== 'measure') continue
    const observation = tree.observations[question.asks] as MeasureObservation
    if (observation.unit !== unit) continue
    for (const { range } of [...question.ranges, ...question.taste]) {
      for (const limit of Object.values(range) as number[]) {
        limits.add(limit)
        for (const { plusMinus } of observation.instruments) {
          limits.add(rounded(limit - plusMinus)).add(rounded(limit + plusMinus))
        }
      }
    }
  }
  return limits
}

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

/** Instruments are exact to hundredths; sums of them in binary are not. */
const rounded = (number: number): number => Math.round(number * 100) / 100
