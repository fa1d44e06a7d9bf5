import { originOf } from '../../evaluate/advice.ts'
import { verdict } from '../../tree/caution.ts'
import { must } from '../../tree/must.ts'
import type { Track } from '../../tree/observation.ts'
import { type Advice, type NoteAdvice, type Steps, type Tree, USES } from '../../tree/tree.ts'

export const ADVICE_KINDS = ['dropped step', 'moved step', 'weakened condition'] as const

/** A slip in what a tree says, and the tree with it. */
export interface AdviceFault {
  readonly kind: (typeof ADVICE_KINDS)[number]
  readonly at: string
  /** The step that is dropped, or that is said too late; of a condition none. */
  readonly step?: string
  /** The step that is said before it by mistake. */
  readonly before?: string
  readonly tree: Tree
}

/** Every slip of every kind that can be made in one place of what a tree says. */
export function adviceFaultsOf(tree: Tree): readonly AdviceFault[] {
  return [
    ...listsOf(tree).flatMap(list => [...dropped(list), ...moved(list)]),
    ...weakened(tree)
  ].map(({ advice, ...fault }) => ({ ...fault, tree: { ...tree, advice } }))
}

type Edit = Omit<AdviceFault, 'tree'> & { readonly advice: Advice }

/** Steps that are said one after the other, and what is said with others in their place. */
interface StepList {
  readonly at: string
  readonly steps: readonly string[]
  readonly matters: (step: string) => boolean
  readonly put: (steps: readonly string[]) => Advice
}

const PARTS = ['doNow', 'clean', 'keep'] as const

/** All but what is said of a new start, which is about another batch. */
function listsOf(tree: Tree): readonly StepList[] {
  const { advice } = tree
  const origin = originOf(tree)
  const ofVerdicts = Object.entries(advice.verdicts).flatMap(([id, steps]) => {
    const put = (part: Partial<Steps>): Advice => ({
      ...advice,
      verdicts: { ...advice.verdicts, [id]: { ...steps, ...part } }
    })
    const matters = mattersOn(tree, verdict(tree, id).track)
    return [
      ...PARTS.map(part => ({
        at: `${id} ${part}`,
        steps: steps[part],
        matters,
        put: (other: readonly string[]) => put({ [part]: other })
      })),
      ...USES.map(use => ({
        at: `${id} ${use}`,
        steps: steps.byUse[use],
        matters,
        put: (other: readonly string[]) => put({ byUse: { ...steps.byUse, [use]: other } })
      }))
    ]
  })
  const ofNotes = Object.entries(advice.notes).flatMap(([id, note]) =>
    (['adds', 'clean'] as const).map(part => ({
      at: `note ${id} ${part}`,
      steps: note[part],
      matters: mattersOn(tree, origin.get(id) ?? 'batch'),
      put: (other: readonly string[]) => withNote(advice, id, { [part]: other })
    }))
  )
  const whileIll = (['adds', 'atADistance'] as const).map(part => ({
    at: `while ill ${part}`,
    steps: advice.whileIll[part],
    matters: mattersOn(tree, 'person'),
    put: (other: readonly string[]): Advice => ({
      ...advice,
      whileIll: { ...advice.whileIll, [part]: other }
    })
  }))
  return [...ofVerdicts, ...ofNotes, ...whileIll]
}

const withNote = (advice: Advice, id: string, part: Partial<NoteAdvice>): Advice => ({
  ...advice,
  notes: { ...advice.notes, [id]: { ...must(advice.notes[id], 'note advice'), ...part } }
})

/** What has nothing done to food, vessel or person only explains; all that is said for a person counts. */
const mattersOn =
  ({ advice }: Tree, track: Track) =>
  (step: string): boolean =>
    track === 'person' ||
    Object.entries(advice.does[step] ?? {}).some(
      ([key, deed]) =>
        !['presumes', 'otherwise', 'onceCalled', 'later'].includes(key) && deed !== undefined
    )

const dropped = ({ at, steps, matters, put }: StepList): readonly Edit[] =>
  steps.filter(matters).map(step => ({
    kind: 'dropped step',
    at: `${at}: ${step}`,
    step,
    advice: put(steps.filter(other => other !== step))
  }))

/** Each step said after the one that follows it. */
const moved = ({ at, steps, matters, put }: StepList): readonly Edit[] =>
  steps.slice(0, -1).flatMap((step, index) => {
    const before = must(steps[index + 1], 'step')
    if (!matters(step) || !matters(before)) return []
    const other = [...steps.slice(0, index), before, step, ...steps.slice(index + 2)]
    return [
      { kind: 'moved step', at: `${at}: ${step} after ${before}`, step, before, advice: put(other) }
    ]
  })

/** What keeps a sentence from being said where it is wrong, taken away one by one. */
function weakened({ advice }: Tree): readonly Edit[] {
  const kind = 'weakened condition'
  const notes = Object.entries(advice.notes).flatMap(([id, note]): Edit[] => [
    ...note.drops.map(step => ({
      kind: 'weakened condition' as const,
      at: `note ${id} drops ${step}`,
      advice: withNote(advice, id, { drops: note.drops.filter(other => other !== step) })
    })),
    ...(note.notWhenDiscarded
      ? [
          {
            kind: 'weakened condition' as const,
            at: `note ${id} not when discarded`,
            advice: withNote(advice, id, { notWhenDiscarded: false })
          }
        ]
      : [])
  ])
  const does = Object.entries(advice.does).flatMap(
    ([id, { presumes, otherwise, ...rest }]): Edit[] =>
      presumes === undefined
        ? []
        : [
            {
              kind,
              at: `step ${id} presumes ${presumes.join('+')}`,
              advice: { ...advice, does: { ...advice.does, [id]: rest } }
            }
          ]
  )
  const left = Object.entries(advice.verdicts).flatMap(([id, steps]): Edit[] =>
    steps.leaveIt
      ? [
          {
            kind,
            at: `${id} leave it`,
            advice: {
              ...advice,
              verdicts: { ...advice.verdicts, [id]: { ...steps, leaveIt: false } }
            }
          }
        ]
      : []
  )
  return [...notes, ...does, ...left]
}
