import type { Variable } from '../../diagrams/space.ts'
import type { TreeDiagrams } from '../../diagrams/tree-diagrams.ts'
import { walk } from '../../evaluate/walk.ts'
import type { Finding } from '../../findings/finding.ts'
import type { Places } from '../../findings/place.ts'
import { useLevel, verdictsOf } from '../../tree/caution.ts'
import type { Lens } from '../../tree/lens.ts'
import type { Track } from '../../tree/observation.ts'
import type { Tree } from '../../tree/tree.ts'
import { levelText } from '../claim.ts'
import { dangerTracks, withholds } from '../danger.ts'
import type { Property } from '../property.ts'
import { standing, undecided } from '../proved.ts'
import { levelIn } from '../replay.ts'
import { answersTo, ofAnswer } from '../unsure.ts'

/** What an unsure danger must come to on one side: at least this level. */
interface Want {
  readonly lens: Lens
  readonly least: number
}

/**
 * Somebody who cannot rule out a danger of the batch waits; of a container also keeps the pressure in
 * mind; about a person is told to find out, and does not go on drinking. Counted by those demands.
 */
export const anUnsureDangerSignIsNotGentle: Property = {
  id: 'an-unsure-danger-sign-is-not-gentle',
  kind: 'law',
  needsWalks: true,
  prove(compiled, places) {
    const { tree } = compiled
    const demands = compiled.variables.flatMap((variable, index) =>
      [...dangerTracks(tree, variable.observation, variable.sign)]
        .flatMap(track => wantsOf(tree, track))
        .map(want => ({ variable, index, want }))
    )
    const open = demands.find(({ want }) => typeof want === 'string')?.want
    if (typeof open === 'string') return undecided(this.id, this.kind, open)
    const cases = demands.flatMap(({ variable, index, want }) =>
      typeof want === 'string' ? [] : [tooGentle(compiled, variable, index, want, places)]
    )
    return standing(this.id, this.kind, cases)
  }
}

/** What the law demands for a danger on a track; a sentence where the tree has no word for it. */
function wantsOf(tree: Tree, track: Track): readonly (Want | string)[] {
  if (track === 'person') {
    const note = tree.advice.unsureNote.person
    return [
      { lens: 'use', least: useLevel('not-yet') },
      note === undefined ? 'no `unsure-note:` says what is asked after a person' : noteOf(note)
    ]
  }
  const wait = tree.verdicts.findIndex(each => each.track === 'batch' && withholds(each))
  const waits = tree.verdicts[wait]?.id
  const onBatch: Want | string =
    waits === undefined
      ? 'no verdict on the batch is a wait'
      : { lens: 'batch', least: verdictsOf(tree, 'batch').indexOf(waits) + 1 }
  if (track === 'batch') return [onBatch]
  const cautions = verdictsOf(tree, 'container').length > 0
  return [
    onBatch,
    cautions ? { lens: 'container', least: 1 } : 'no verdict on a container is a caution'
  ]
}

const noteOf = (note: string): Want => ({ lens: { note }, least: 1 })

function tooGentle(
  compiled: TreeDiagrams,
  variable: Variable,
  index: number,
  { lens, least }: Want,
  places: Places
): readonly Finding[] {
  const place = variable.values.findIndex(({ answer }) => answer === 'unsure')
  const restricted = compiled.diagrams.restrict(compiled.of(lens), index, place)
  const answers = answersTo(compiled, restricted, level => level < least, index, place)
  if (answers === undefined) return []
  const level = levelIn(compiled.tree, lens, walk(compiled.tree, answers).outcome)
  const facts = {
    wants: levelText(compiled.tree, lens, least),
    gets: levelText(compiled.tree, lens, level)
  }
  const code = typeof lens === 'object' ? 'unsure-person-note-missing' : 'unsure-danger-too-gentle'
  return [ofAnswer(code, compiled, variable, 'unsure', places, answers, facts)]
}
