import { evaluate } from '../evaluate/evaluate.ts'
import { USUAL_FIRST } from '../evaluate/first-steps.ts'
import { type Counted, sharesOf } from '../figures/shares.ts'
import { drawn } from '../figures/take-walks.ts'
import type { Sources } from '../load/load.ts'
import type { OfficePack } from '../office/office-pack.ts'
import { reportOn } from '../report/report.ts'
import { randomNumbers } from '../science/random-numbers.ts'
import type { Answers } from '../tree/answers.ts'
import type { Tree } from '../tree/tree.ts'
import { outcomeLines } from '../words/outcome-lines.ts'
import { say } from '../words/say.ts'
import type { Words } from '../words/words.ts'
import type { Paint } from './paint.ts'

/** What the outcomes of so many walks drawn at random say. */
export interface Sheets {
  readonly tree: string
  readonly edition: number
  readonly walks: number
  readonly seed: number
  /** Those that differ in a word. */
  readonly distinct: number
  readonly words: Spread
  /** Steps under "do now". */
  readonly steps: Spread
  /** The share of the distinct outcomes that have no more steps there than as a rule, from 0 to 1. */
  readonly usual: number
}

interface Spread {
  readonly median: number
  readonly longest: number
}

export interface SheetSetting {
  readonly words: Words
  readonly sources: Sources
  readonly office: OfficePack | null
  readonly today: Date
}

export const SHEET_WALKS = { walks: 2_000, seed: 20_261_128 }

/** Draws walks by the shares of answers and tells each outcome whole, as a sheet does. */
export function sheetsOf(
  tree: Tree,
  counted: Counted,
  { words, sources, office, today }: SheetSetting,
  { walks, seed } = SHEET_WALKS
): Sheets {
  const shares = sharesOf(tree, counted)
  const random = randomNumbers(seed)
  const stepsByText = new Map<string, number>()
  const lengths: number[] = []
  const steps: number[] = []
  for (let walk = 0; walk < walks; walk++) {
    const evaluation = evaluate(
      tree,
      answered(tree, asks => drawn(shares[asks] ?? [], random()))
    )
    if (!evaluation.walk.finished) continue
    const said = say(reportOn(evaluation, office, today), words, sources)
    const text = outcomeLines(said, words).join('\n')
    stepsByText.set(text, said.doNow.length)
    lengths.push(text.split(/\s+/).length)
    steps.push(said.doNow.length)
  }
  return {
    tree: tree.id,
    edition: tree.edition,
    walks: steps.length,
    seed,
    distinct: stepsByText.size,
    words: spread(lengths),
    steps: spread(steps),
    usual:
      [...stepsByText.values()].filter(count => count <= USUAL_FIRST).length /
      Math.max(1, stepsByText.size)
  }
}

/** Answers until a walk ends, or is asked what nobody answers. */
function answered(
  tree: Tree,
  answer: (asks: string) => { readonly answer: Answers[string] } | undefined
): Answers {
  let answers: Answers = {}
  for (;;) {
    const { asks } = evaluate(tree, answers).walk
    const likely = asks === null ? undefined : answer(asks.observation)
    if (asks === null || likely === undefined) return answers
    answers = { ...answers, [asks.observation]: likely.answer }
  }
}

function spread(numbers: readonly number[]): Spread {
  const sorted = [...numbers].sort((a, b) => a - b)
  return { median: sorted[Math.floor(sorted.length / 2)] ?? 0, longest: sorted.at(-1) ?? 0 }
}

/** The figures as lines for people. */
export function sheetsText(sheets: Sheets, paint: Paint): string[] {
  const { tree, edition, walks, seed, distinct, words, steps, usual } = sheets
  return [
    paint.strong(`${tree}, edition ${edition}: what its outcomes say`),
    `From ${walks} walks drawn at random (seed ${seed}); shares of walks, not of callers.`,
    '',
    `outcomes that differ in a word   ${distinct}`,
    `words: median, longest           ${words.median}, ${words.longest}`,
    `steps to do now: median, longest ${steps.median}, ${steps.longest}`,
    `of those, with ${USUAL_FIRST} steps at most  ${(100 * usual).toFixed(1)} %`
  ]
}
