import type { DecisionBox, DecisionExit } from './boxes.ts'
import type { DrawnPart } from './items.ts'
import type { PartSource } from './parts.ts'
import { ROOM } from './routes.ts'

/** Boxes that stand together, with the lines among them, before they are laid out. */
export interface DecisionRun {
  readonly boxes: readonly DecisionBox[]
  readonly drawn: readonly DrawnExit[]
  /** By the number of a box, and by the name of a way on whose answers are said. */
  readonly parts: ReadonlyMap<string, DrawnPart>
}

/** A way on that is drawn as a line. */
export interface DrawnExit {
  readonly name: string
  readonly from: number
  readonly to: number
  readonly exit: DecisionExit
}

/** A line goes no further ahead than a finger follows with ease; beyond, a tag says where to go. */
const REACH = 7

/** The ways on from a box that are drawn as lines among some boxes. */
const drawnExits = (
  { lead, exits }: DecisionBox,
  isHere: (lead: number) => boolean
): readonly DecisionExit[] =>
  exits.filter(
    ({ goes }) =>
      'to' in goes &&
      goes.as === undefined &&
      goes.to > lead.number &&
      goes.to - lead.number <= REACH &&
      isHere(goes.to)
  )

export function runOf(
  boxes: readonly DecisionBox[],
  high: number,
  source: PartSource
): DecisionRun {
  const numbers = new Set(boxes.map(({ lead }) => lead.number))
  const parts = new Map<string, DrawnPart>()
  const drawn = boxes.flatMap(box => {
    const from = box.lead.number
    const exits = drawnExits(box, lead => numbers.has(lead))
    const leaving = box.exits.filter(exit => !exits.includes(exit))
    parts.set(`${from}`, source.box(box, leaving, high))
    return exits.flatMap((exit, index): readonly DrawnExit[] => {
      const name = `${from}-${index}`
      const plate = source.plate(exit)
      if (plate !== null) parts.set(name, plate)
      return 'to' in exit.goes ? [{ name, from, to: exit.goes.to, exit }] : []
    })
  })
  return { boxes, drawn, parts }
}

/** Whether a line leads to each box but the first. */
export function hangsTogether({ boxes, drawn }: DecisionRun): boolean {
  const reached = new Set(drawn.map(({ to }) => to))
  return boxes.slice(1).every(({ lead }) => reached.has(lead.number))
}

/** What a run takes at the least: its widest box across, and down the longest way along its lines. */
export function leastSize({ boxes, drawn, parts }: DecisionRun) {
  const part = (name: string) => parts.get(name) ?? { width: 0, height: -ROOM }
  const bottoms = new Map<number, number>()
  for (const { lead } of boxes) {
    const before = drawn.filter(({ to }) => to === lead.number)
    const top = Math.max(
      0,
      ...before.map(({ from, name }) => (bottoms.get(from) ?? 0) + 2 * ROOM + part(name).height)
    )
    bottoms.set(lead.number, top + part(`${lead.number}`).height)
  }
  return {
    width: Math.max(...[...parts.values()].map(({ width }) => width)),
    height: Math.max(...bottoms.values())
  }
}
