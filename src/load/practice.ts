import type { Answer, Answers } from '../tree/answers.ts'
import type { PracticeCaller } from '../tree/practice-caller.ts'
import { measured } from '../tree/reading.ts'
import type { Tree } from '../tree/tree.ts'
import { toldIn } from './build-rows.ts'
import { SOURCE_TAG } from './check-words.ts'
import { treeAt } from './kinds-of-file.ts'
import type { LinkedTree } from './link-tree.ts'
import { unknownName } from './linking.ts'
import { picturesBy } from './pictures.ts'
import type { AuthoredProject } from './project.ts'
import type { FindingReport } from './report.ts'
import type { AuthoredTold } from './schemas/rows.ts'
import { textsIn } from './texts.ts'

/** A caller tells at least and at most so many sentences. */
const SENTENCES = { fewest: 3, most: 8 }
const SENTENCE = /(?<=[.!?…][”"]?)\s+/

/** Reads the invented callers of every ferment; names that refer to nothing are reported. */
export function practiceOf(
  project: AuthoredProject,
  linked: readonly LinkedTree[],
  paths: ReadonlySet<string>,
  report: FindingReport
): readonly PracticeCaller[] {
  // A tree that is there but out of shape has its own findings: it is not unknown.
  const trees = [...paths].flatMap(path => treeAt(path) ?? [])
  const drawings = drawingsNamed(project)
  const first = new Map<string, ReturnType<typeof placeOf>>()
  const placeOf = (stem: string, id: string) =>
    project.practice.get(stem)?.doc.place(['callers', id]) ?? null
  return [...project.practice].flatMap(([stem, { value, doc }]) => {
    if (!trees.includes(stem)) {
      unknownName(report, 'unknown-tree', doc.place(['callers']), stem, trees)
    }
    const tree = linked.find(({ tree: { id } }) => id === stem)?.tree
    return Object.entries(value.callers).flatMap(([id, caller]): readonly PracticeCaller[] => {
      const before = first.get(id)
      if (before) {
        const because = [{ label: 'First here', place: before }]
        report.add('duplicate-id', doc.place(['callers', id]), { what: 'caller', id }, because)
      }
      first.set(id, before ?? placeOf(stem, id))
      const other = caller['takes-it-for']
      if (other !== undefined && !trees.includes(other)) {
        const place = doc.place(['callers', id, 'takes-it-for'], 'value')
        unknownName(report, 'unknown-tree', place, other, trees)
      }
      for (const [index, picture] of (caller.pictures ?? []).entries()) {
        if (drawings.has(picture)) continue
        const place = doc.place(['callers', id, 'pictures', index], 'value')
        unknownName(report, 'unknown-picture', place, picture, drawings)
      }
      if (tree === undefined) return []
      const answers = toldIn(tree, doc, caller.answers, ['callers', id, 'answers'], report)
      return [
        {
          id,
          tree: stem,
          difficulty: caller.difficulty,
          speaks: caller.speaks ?? SOURCE_TAG,
          takesItFor: other ?? null,
          answers: asRead(tree, answers, caller.answers),
          pictures: caller.pictures ?? []
        }
      ]
    })
  })
}

/** Reports whoever tells too little to practice on, or more than anybody listens to. */
export function checkTold(project: AuthoredProject, report: FindingReport): void {
  const words = project.words.get(SOURCE_TAG)?.get('practice')
  if (words === undefined) return
  for (const [caller, text] of textsIn(words.value)) {
    const sentences = text.split(SENTENCE).length
    if (sentences >= SENTENCES.fewest && sentences <= SENTENCES.most) continue
    report.add('told-too-short-or-long', words.doc.place([caller]), {
      caller,
      sentences,
      ...SENTENCES
    })
  }
}

/** Readings as their instrument gives them; one that is not named may be out as far as any. */
function asRead(
  tree: Pick<Tree, 'observations'>,
  answers: Answers,
  authored: AuthoredTold
): Answers {
  return Object.fromEntries(
    Object.entries(answers).map(([id, answer]): readonly [string, Answer] => {
      const observation = tree.observations[id]
      if (observation?.kind !== 'measure' || answer === 'unsure') return [id, answer]
      const [reading, instrument] = `${authored[id]}`.split('@')
      return [id, measured(observation, Number(reading), instrument)]
    })
  )
}

/** Every drawing that something shows. */
function drawingsNamed({ observations, trees, lookAlikes }: AuthoredProject): ReadonlySet<string> {
  const ofAnswers = Object.values(observations ? picturesBy(observations.value) : {}).flatMap(
    ({ own, answers }) => [own, ...Object.values(answers)]
  )
  const ofTrees = [...trees.values()].map(({ value }) => value.picture)
  const ofPairs = Object.values(lookAlikes?.value ?? {}).flatMap(({ one, other }) => [
    ...[one.above, one.side],
    ...[other.above, other.side]
  ])
  const all = [...ofAnswers, ...ofTrees, ...ofPairs]
  return new Set(all.filter(picture => picture !== null && picture !== undefined))
}
