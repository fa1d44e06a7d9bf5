import { createHash } from 'node:crypto'
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { RecordedScores } from '../load/load.ts'
import type { AdviceScore } from '../prove/faults/advice-score.ts'
import type { Score } from '../prove/faults/score.ts'
import type { Tree } from '../tree/tree.ts'
import { PROJECT, SCORES_FILE } from './read-project.ts'
import { oneAtATime, writeWhole } from './write-file.ts'

const RECORD = 'jarside check --faults --record'

/** A tree's score, and below it every slip that nothing finds, with the reason where one is listed. */
export function scoreLines(tree: Tree, { faults, found, survivors }: Score): string[] {
  const share = faults === 0 ? 100 : Math.floor((found / faults) * 1000) / 10
  return [
    `${tree.id}: seeded faults: ${found} of ${faults} found (${share} %)`,
    ...survivors.map(name => unfoundLine(tree, name))
  ]
}

/** The same of slips in what is said, first by kind. */
export function adviceLines(
  tree: Tree,
  { faults, found, byKind, survivors }: AdviceScore
): string[] {
  const kinds = Object.entries(byKind).map(([kind, of]) => `${kind} ${of.found} of ${of.faults}`)
  return [
    `${tree.id}: advice faults: ${found} of ${faults} found (${kinds.join(', ')})`,
    ...survivors.map(name => unfoundLine(tree, name))
  ]
}

function unfoundLine({ id, unfoundFaults }: Tree, name: string): string {
  const why = unfoundFaults[name]
  return why === undefined ? `${id}: not found: ${name}` : `${id}: known: ${name} (${why})`
}

/** What was recorded of a tree in one line; that it was another edition is told and is no finding. */
export function recordedLine(tree: Tree, scores: RecordedScores): string {
  const score = scores[tree.id]
  if (score === undefined) return `${tree.id}: seeded faults: not measured yet: run ${RECORD}`
  const { faults, found, unfound, fingerprint, advice } = score
  const counts = countsText(tree, faults, found, unfound)
  const stale =
    fingerprint === scoredPrint(tree) ? '' : ` (measured on an earlier edition: run ${RECORD})`
  const ofAdvice =
    advice === undefined
      ? ''
      : `; advice faults: ${countsText(tree, advice.faults, advice.found, advice.unfound)}`
  return `${tree.id}: seeded faults: ${counts}${ofAdvice}${stale}`
}

function countsText(
  { unfoundFaults }: Tree,
  faults: number,
  found: number,
  unfound: readonly string[]
): string {
  const count = unfound.filter(name => Object.hasOwn(unfoundFaults, name)).length
  return [
    `${found} of ${faults} found`,
    ...(count > 0 ? [`${count} known`] : []),
    ...(unfound.length > count ? [`${unfound.length - count} without a reason`] : [])
  ].join(', ')
}

/** A tree's fingerprint, with what the scores read and its meaning leaves out; the order of rules means nothing. */
function scoredPrint({ fingerprint, spokenRules, openCases }: Tree): string {
  const rules = [...spokenRules].sort((one, other) => (one.id < other.id ? -1 : 1))
  return createHash('sha256')
    .update(JSON.stringify([fingerprint, rules, openCases]))
    .digest('hex')
}

/** Writes the scores into the project, beside those of trees that were not scored now. */
export async function recordScores(
  trees: readonly Tree[],
  scores: readonly Score[],
  ofAdvice: readonly AdviceScore[],
  folder = PROJECT
): Promise<void> {
  await oneAtATime(folder, () => {
    const file = join(folder, SCORES_FILE)
    // Read anew: another tree may have been scored meanwhile.
    const before: RecordedScores = existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : {}
    const now = trees.flatMap((tree, index) => {
      const [score, advice] = [scores[index], ofAdvice[index]]
      if (score === undefined || advice === undefined) return []
      const counts = (of: Score | AdviceScore) => ({
        faults: of.faults,
        found: of.found,
        unfound: of.survivors
      })
      const fingerprint = scoredPrint(tree)
      return [[tree.id, { fingerprint, ...counts(score), advice: counts(advice) }] as const]
    })
    const all = Object.entries({ ...before, ...Object.fromEntries(now) })
    const inOrder = Object.fromEntries(all.sort(([a], [b]) => (a < b ? -1 : 1)))
    writeWhole(file, `${JSON.stringify(inOrder, null, 2)}\n`)
  })
}
