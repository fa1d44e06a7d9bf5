import { useLevel } from '../tree/caution.ts'
import { settlersOf } from '../tree/linked.ts'
import type { Track } from '../tree/observation.ts'
import type { Claim, Condition, Tree, Verdict } from '../tree/tree.ts'

/** A danger sign that a tree asks, or a danger answer of a choice; `answer` is the name of either. */
export interface Danger {
  readonly observation: string
  readonly answer: string
  /** The track on which it must be met. */
  readonly about: Track
}

/** Every danger sign and danger answer that the tree asks, those of settling observations among them. */
export function dangersOf(tree: Tree): readonly Danger[] {
  const asked = new Set(Object.values(tree.questions).map(({ asks }) => asks))
  return Object.values(tree.observations)
    .filter(({ id }) => asked.has(id))
    .flatMap(observation => {
      const { id, kind, about } = observation
      if (kind === 'measure') return []
      const marked = kind === 'choice' ? observation.answers : observation.signs
      return marked
        .filter(({ danger }) => danger)
        .map(answer => ({ observation: id, answer: answer.id, about }))
    })
}

/** The tracks of the dangers that one coordinate of the answer space can tell of. */
export function dangerTracks(tree: Tree, observation: string, sign?: string): ReadonlySet<Track> {
  // A danger answer of a settling observation is a danger of what it settles.
  const names = new Set([observation, ...settlersOf(tree, observation).map(({ id }) => id)])
  return new Set(
    dangersOf(tree)
      .filter(danger => names.has(danger.observation))
      .filter(({ answer }) => sign === undefined || answer === sign)
      .map(({ about }) => about)
  )
}

/** Whether a condition is met by an answer that is given, or by a sign that is there. */
export function names(condition: Condition, observation: string, answer: string): boolean {
  if (condition.kind === 'measure' || condition.observation !== observation) return false
  return condition.kind === 'sign'
    ? condition.sign === answer && condition.among.includes('yes')
    : condition.among.includes(answer)
}

/** Whether a claim keeps a danger on one track from ending gently. */
export function isCautious(tree: Tree, claim: Claim, about: Track): boolean {
  if (claim.kind === 'use-at-most' || claim.kind === 'use-is') return useLevel(claim.use) > 0
  if (claim.kind !== 'at-least') return false
  const claimed = tree.verdicts.find(({ id }) => id === claim.verdict)
  // The gentlest verdicts on a batch say that all is well; on the other tracks each says that it is not.
  return claimed?.track === about && (about !== 'batch' || withholds(claimed))
}

/** Whether a verdict alone keeps the batch from being used as directed. */
export const withholds = ({ ceiling }: Verdict): boolean => ceiling !== 'as-directed'
