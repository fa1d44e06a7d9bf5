import { adviceFor, type SpokenAdvice } from '../evaluate/advice.ts'
import type { Outcome } from '../tree/caution.ts'
import type { Condition, Recheck, Tree } from '../tree/tree.ts'
import type { End, When } from './stop.ts'

/** What an end says for certain, and what it says to those alone who said something on the way. */
export interface EndPage {
  readonly outcome: Outcome
  readonly blocks: readonly Block[]
  /** What a step presumes: who said otherwise leaves it out. */
  readonly presumed: readonly Presumed[]
}

export interface Block {
  readonly note: string
  /** The note's own sentence is said. */
  readonly says: boolean
  /** Each of these answers alone brings it. */
  readonly whens: readonly When[]
  /** Whoever said one of these as well leaves all of it out. */
  readonly unless: readonly When[]
  readonly also: readonly string[]
  readonly leaveOut: readonly string[]
  readonly calls: readonly string[]
  /** When to look again, where that differs from what is said to everybody. */
  readonly recheck: Recheck | null
}

export interface Presumed {
  readonly step: string
  /** Conjunctions, each of which rules the step out. */
  readonly ruledOutBy: readonly (readonly Condition[])[]
  readonly otherwise: readonly string[]
}

/** Every step of an advice, in the order in which it is read. */
export const stepsOf = ({ doNow, later, clean, keep, startAgain }: SpokenAdvice) => [
  ...doNow,
  ...later,
  ...clean,
  ...keep,
  ...startAgain
]

/** Works out what the page of an end says, from the same advice as any other place. */
export function endPage(tree: Tree, { always, perhaps, ...reached }: End): EndPage {
  const outcome: Outcome = { ...reached, notes: always }
  const base = adviceFor(tree, outcome, {})
  const said = new Map(
    [...perhaps.keys()].map(note => [
      note,
      adviceFor(tree, { ...outcome, notes: [...always, note] }, {})
    ])
  )
  const baseSteps = stepsOf(base)
  const every = new Set([...baseSteps, ...[...said.values()].flatMap(stepsOf)])
  const dropsOf = (note: string) => tree.advice.notes[note]?.drops ?? []
  const blocks = [...said].flatMap(([note, advice]): Block[] => {
    const steps = stepsOf(advice)
    const also = steps.filter(step => !baseSteps.includes(step))
    const says = advice.notes.includes(note)
    // A pot that goes is not washed. What only says less than another step may stand: it is not wrong.
    const unwashed = baseSteps.filter(
      step => !steps.includes(step) && tree.advice.does[step]?.washes !== undefined
    )
    const calls = advice.refer.filter(call => !base.refer.includes(call))
    const isAlike = JSON.stringify(advice.recheck) === JSON.stringify(base.recheck)
    const recheck = isAlike ? null : advice.recheck
    const dropped = says ? dropsOf(note).filter(one => every.has(one)) : []
    const leaveOut = [...new Set([...unwashed, ...dropped])]
    if (!says && also.length + leaveOut.length + calls.length === 0 && recheck === null) return []
    const unless = [...perhaps].flatMap(([other, whens]) =>
      dropsOf(other).includes(note) ? whens : []
    )
    const whens = perhaps.get(note) ?? []
    return [{ note, says, whens, unless, also, leaveOut, calls, recheck }]
  })
  return { outcome, blocks, presumed: presumedIn(tree, every) }
}

/** The steps among some that presume what an answer can rule out. */
function presumedIn(tree: Tree, steps: ReadonlySet<string>): readonly Presumed[] {
  return [...steps].flatMap(step => {
    const { presumes = [], otherwise } = tree.advice.does[step] ?? {}
    const ruledOutBy = presumes.flatMap(name => tree.presumptions[name] ?? [])
    return otherwise === undefined || ruledOutBy.length === 0
      ? []
      : [{ step, ruledOutBy, otherwise }]
  })
}
