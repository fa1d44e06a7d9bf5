import { Diagrams } from '../diagrams/diagram.ts'
import { type Open, reachable } from '../diagrams/reach.ts'
import type { Variable } from '../diagrams/space.ts'
import { TreeDiagrams } from '../diagrams/tree-diagrams.ts'
import { walk } from '../evaluate/walk.ts'
import { countLevels } from '../prove/count.ts'
import { boxDiagram, coverOf } from '../prove/cover.ts'
import { jointSpace, type Named } from '../prove/joint-space.ts'
import { completed, shortestTo } from '../prove/witness.ts'
import type { Answers } from '../tree/answers.ts'
import type { Outcome } from '../tree/caution.ts'
import { emergencySigns } from '../tree/emergency.ts'
import type { Lens } from '../tree/lens.ts'
import { must } from '../tree/must.ts'
import { TRACKS } from '../tree/observation.ts'
import type { Tree } from '../tree/tree.ts'
import { CHANGES, type Change, changeDiagram, named, notesOf, type Pair } from './change.ts'

/** What changed in meaning between two editions of a tree. */
export interface Comparison {
  readonly before: Edition
  readonly after: Edition
  /** All sets of answers that both editions know, an emergency left out. They count sets, not callers. */
  readonly sets: bigint
  /** How many of them changed, by kind of change. */
  readonly changed: Readonly<Record<Exclude<Change, 'same'>, bigint>>
  /** Less cautious first. */
  readonly patterns: readonly Pattern[]
  /** Kinds of change of which only the first patterns are given. */
  readonly truncated: readonly Change[]
  /** Signs that end a walk at once in one edition alone. */
  readonly emergencies: { readonly gone: readonly Named[]; readonly added: readonly Named[] }
  readonly onlyBefore: readonly Named[]
  readonly onlyAfter: readonly Named[]
}

export interface Edition {
  readonly tree: string
  readonly edition: number
  readonly fingerprint: string
}

/** Sets of answers that changed alike. */
export interface Pattern {
  readonly change: Exclude<Change, 'same'>
  readonly sets: bigint
  /** What the sets have in common; whatever is not named may be anything. */
  readonly when: readonly Literal[]
  /** What became of it on each side, over all its sets. */
  readonly turns: readonly SideChange[]
  readonly example: Example
}

/** One variable and the values that a pattern takes of it. */
export interface Literal {
  readonly observation: string
  readonly sign: string | null
  readonly values: readonly Variable['values'][number][]
}

/** From what to what one side of the outcome went; null is nothing there. */
export interface SideChange {
  readonly side: string
  readonly from: string | null
  readonly to: string | null
}

export interface Example {
  readonly answers: Answers
  readonly before: Outcome
  readonly after: Outcome
}

/**
 * Compares two editions over every set of answers that both know.
 *
 * @throws Error when an observation is of another kind than it was.
 */
export function compare(before: Tree, after: Tree): Comparison {
  const { variables, onlyOld, onlyNew } = jointSpace(before, after)
  const diagrams = new Diagrams(variables.map(({ values }) => values.length))
  const pair: Pair = {
    before: new TreeDiagrams(before, variables, diagrams),
    after: new TreeDiagrams(after, variables, diagrams)
  }
  const changes = changeDiagram(pair)
  const counts = countLevels(diagrams, changes)
  const count = (change: Change) => counts.get(CHANGES.indexOf(change)) ?? 0n
  const kinds = ['less-cautious', 'more-cautious', 'sideways'] as const
  const truncated: Change[] = []
  const patterns = kinds.flatMap(change => {
    const cover = coverOf(pair.after, changes, CHANGES.indexOf(change))
    if (cover.truncated) truncated.push(change)
    return cover.boxes.map(box => patternOf(pair, change, box))
  })
  return {
    before: editionOf(before),
    after: editionOf(after),
    sets: [...counts.values()].reduce((sum, some) => sum + some, 0n),
    changed: {
      'less-cautious': count('less-cautious'),
      'more-cautious': count('more-cautious'),
      sideways: count('sideways')
    },
    patterns,
    truncated,
    emergencies: {
      gone: emergenciesOnlyIn(before, after),
      added: emergenciesOnlyIn(after, before)
    },
    onlyBefore: onlyOld,
    onlyAfter: onlyNew
  }
}

const editionOf = ({ id, edition, fingerprint }: Tree): Edition => ({
  tree: id,
  edition,
  fingerprint
})

function patternOf(pair: Pair, change: Pattern['change'], box: Open): Pattern {
  const { diagrams, variables } = pair.after
  const answers = tellingSet(pair, box)
  return {
    change,
    sets: countLevels(diagrams, boxDiagram(diagrams, box)).get(1) ?? 0n,
    when: variables.flatMap(({ observation, sign, values }, index) => {
      const open = must(box[index], 'box')
      if (open.every(Boolean)) return []
      return [{ observation, sign: sign ?? null, values: values.filter((_, index) => open[index]) }]
    }),
    turns: turnsIn(pair, box),
    example: {
      answers,
      before: walk(pair.before.tree, answers).outcome,
      after: walk(pair.after.tree, answers).outcome
    }
  }
}

/** The set of the box that is most usual among those that leave most to be used now: what worries most. */
function tellingSet({ after }: Pair, box: Open): Answers {
  const use = after.of('use')
  const freest = Math.min(...reachable(after.diagrams, use, box))
  const choice = shortestTo(after, use, box, level => level === freest)
  return completed(after, choice ?? new Map(), box)
}

/** Every way in which a side of the outcome changed somewhere in the box. */
function turnsIn({ before, after }: Pair, box: Open): readonly SideChange[] {
  const { diagrams } = after
  const notes = [before, after].flatMap(({ tree }) => notesOf(tree))
  const sides: readonly Lens[] = [...TRACKS, 'use', ...[...new Set(notes)].map(note => ({ note }))]
  const inside = boxDiagram(diagrams, box)
  return sides.flatMap(side => {
    const seen = new Map<string, SideChange>()
    diagrams.combine([before.of(side), after.of(side), inside], ([was, is, within]) => {
      const from = named(before.tree, side, must(was, 'level'))
      const to = named(after.tree, side, must(is, 'level'))
      if (within === 1 && from !== to) {
        seen.set(`${from} ${to}`, { side: typeof side === 'object' ? 'note' : side, from, to })
      }
      return 0
    })
    return [...seen.values()]
  })
}

function emergenciesOnlyIn(tree: Tree, other: Tree): readonly Named[] {
  const names = new Set(
    emergencySigns(other).map(({ observation, sign }) => `${observation} ${sign}`)
  )
  return emergencySigns(tree)
    .filter(({ observation, sign }) => !names.has(`${observation} ${sign}`))
    .map(({ observation, sign }) => ({ observation, answer: sign }))
}
