import { diagramsOf, type TreeDiagrams } from '../diagrams/tree-diagrams.ts'
import { signsOf } from '../tree/answers.ts'
import { level, type Outcome, useLevel, verdict } from '../tree/caution.ts'
import { EMERGENCY, emergencySigns } from '../tree/emergency.ts'
import type { Lens } from '../tree/lens.ts'
import type { Tree } from '../tree/tree.ts'
import { nobodyTold } from './keep.ts'

/**
 * Whether some walk on which no person has anything to tell gives exactly this of the jar: its verdicts
 * for container and batch, its use, every one of its notes, and no other.
 */
export function couldBe(tree: Tree, { container, batch, use, notes }: Outcome): boolean {
  const compiled = diagramsOf(tree)
  const nobody = withNobody(compiled)
  const has = (lens: Lens, wanted: number) => (held: number) =>
    held === 0 ? 0 : compiled.diagrams.meet(held, nobody(levelIs(compiled, lens, wanted)))
  const sides = [
    has('batch', level(tree, 'batch', batch)),
    has('container', level(tree, 'container', container)),
    has('use', useLevel(use)),
    ...Object.keys(tree.advice.notes).map(note => has({ note }, notes.includes(note) ? 1 : 0))
  ]
  const isKnown = notes.every(note => Object.hasOwn(tree.advice.notes, note))
  return isKnown && sides.reduce((held, side) => side(held), compiled.diagrams.constant(1)) !== 0
}

/** Whether one walk can give all of these verdicts, of one track at most one each. */
export function couldBeTogether(tree: Tree, verdicts: readonly string[]): boolean {
  // An emergency ends the walk: nothing is said of the jar beside it, unless the walk itself came to it.
  const alone = verdicts.length === 1 && verdicts[0] === EMERGENCY
  if (alone && emergencySigns(tree).length > 0) return true
  const compiled = diagramsOf(tree)
  const held = verdicts
    .map(id => levelIs(compiled, verdict(tree, id).track, level(tree, verdict(tree, id).track, id)))
    .reduce((a, b) => compiled.diagrams.meet(a, b), compiled.diagrams.constant(1))
  return held !== 0
}

/** Where one side of the outcome is exactly at a level: 1 there, 0 elsewhere. */
const levelIs = (compiled: TreeDiagrams, lens: Lens, wanted: number): number =>
  compiled.diagrams.combine([compiled.of(lens)], ([level]) => (level === wanted ? 1 : 0))

/** Fixes every answer about a person as if nobody had anything to tell. */
function withNobody({ tree, variables, diagrams }: TreeDiagrams): (diagram: number) => number {
  const answers = nobodyTold(tree)
  const fixed = variables.flatMap(({ observation, sign, values }, index): [number, boolean[]][] => {
    if (!Object.hasOwn(answers, observation)) return []
    const value = sign === undefined ? answers[observation] : signsOf(answers, observation)[sign]
    return [[index, values.map(({ answer }) => answer === value)]]
  })
  const over = new Map(fixed)
  return diagram => diagrams.highestOver(diagram, over)
}
