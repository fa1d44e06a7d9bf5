import type { Diagrams } from '../diagrams/diagram.ts'
import { type Open, reachable } from '../diagrams/reach.ts'
import type { TreeDiagrams } from '../diagrams/tree-diagrams.ts'
import { must } from '../tree/must.ts'
import { everything } from './open.ts'
import { shortestTo } from './witness.ts'

/** A part of the answer space that one pattern describes: for each variable the values it takes. */
export interface Cover {
  readonly boxes: readonly Open[]
  /** More patterns would be needed than anybody reads: the boxes leave some sets out. */
  readonly truncated: boolean
}

const MOST_BOXES = 40

/**
 * Boxes that together hold exactly the sets of answers in which a diagram gives one level: each as wide
 * as it can be, none of them held by the others.
 */
export function coverOf(compiled: TreeDiagrams, diagram: number, level: number): Cover {
  const exactly = compiled.diagrams.combine([diagram], ([found]) => (found === level ? 1 : 0))
  return coverWithin(compiled, exactly, exactly, MOST_BOXES)
}

/**
 * Boxes that together hold all of what is wanted and stay within what is allowed, both diagrams of 0 and
 * 1: each as wide as it can be there, none of them needed beside the others.
 */
export function coverWithin(
  compiled: TreeDiagrams,
  wanted: number,
  allowed: number,
  mostBoxes: number
): Cover {
  const { diagrams } = compiled
  const boxes: Open[] = []
  let left = wanted
  while (left !== 0 && boxes.length < mostBoxes) {
    const choice = shortestTo(compiled, left, everything(compiled), found => found === 1)
    if (choice === undefined) break
    const point: Open = compiled.variables.map((variable, index) => {
      const chosen = choice.get(index)
      return variable.values.map((_, value) => chosen === undefined || chosen === value)
    })
    const box = widened(diagrams, allowed, point, 1)
    boxes.push(box)
    left = diagrams.combine([left, boxDiagram(diagrams, box)], ([is, inside]) =>
      is === 1 && inside === 0 ? 1 : 0
    )
  }
  return { boxes: irredundant(diagrams, boxes, wanted), truncated: left !== 0 }
}

/** Opens every value of every variable with which the whole box still has the level. */
function widened(diagrams: Diagrams, diagram: number, point: Open, level: number): Open {
  let box = point
  const holds = (open: Open) => {
    const levels = reachable(diagrams, diagram, open)
    return levels.size === 1 && levels.has(level)
  }
  point.forEach((values, index) => {
    const whole = withValues(
      box,
      index,
      values.map(() => true)
    )
    if (holds(whole)) {
      box = whole
      return
    }
    values.forEach((_, value) => {
      const wider = withValues(
        box,
        index,
        must(box[index], 'box').map((is, index) => is || index === value)
      )
      if (holds(wider)) box = wider
    })
  })
  return box
}

const withValues = (box: Open, index: number, values: readonly boolean[]): Open =>
  box.map((open, place) => (place === index ? values : open))

/** The box as a diagram: 1 inside it. */
export function boxDiagram(diagrams: Diagrams, box: Open): number {
  let boxed = 1
  for (let index = box.length - 1; index >= 0; index--) {
    const open = must(box[index], 'box')
    if (open.every(Boolean)) continue
    const inside = boxed
    boxed = diagrams.select(
      index,
      open.map(is => (is ? inside : 0))
    )
  }
  return boxed
}

/** Leaves out every box whose share of what is wanted the others hold together; the widest stay. */
function irredundant(diagrams: Diagrams, boxes: readonly Open[], wanted: number): readonly Open[] {
  let kept = [...boxes]
  for (const box of [...boxes].reverse()) {
    const others = kept.filter(one => one !== box)
    const union = others.reduce((sum, one) => diagrams.join(sum, boxDiagram(diagrams, one)), 0)
    const needed = diagrams.meet(boxDiagram(diagrams, box), wanted)
    const outside = diagrams.combine([needed, union], ([is, held]) =>
      is === 1 && held === 0 ? 1 : 0
    )
    if (outside === 0) kept = others
  }
  return kept
}
