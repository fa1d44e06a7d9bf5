import { reachable } from '../../diagrams/reach.ts'
import type { Place, Places } from '../../findings/place.ts'
import { level } from '../../tree/caution.ts'
import { branchesOf } from '../../tree/circuit.ts'
import { effectsOf } from '../../tree/effects.ts'
import { EMERGENCY, emergencySigns } from '../../tree/emergency.ts'
import type { Track } from '../../tree/observation.ts'
import type { Tree } from '../../tree/tree.ts'
import { found } from '../found.ts'
import { everything } from '../open.ts'
import type { Property } from '../property.ts'
import { standing } from '../proved.ts'

/**
 * Every verdict that the tree raises or ends with is the outcome of some set of answers: none is always
 * outdone by a more cautious one.
 */
export const verdictsAreGiven: Property = {
  id: 'verdicts-are-given',
  kind: 'shape',
  needsWalks: true,
  prove(compiled, places) {
    const { tree, diagrams } = compiled
    const open = everything(compiled)
    const given = (track: Track, id: string) =>
      reachable(diagrams, compiled.of(track), open).has(level(tree, track, id)) ||
      // Emergencies lie outside the answer space: each ends its walk with that verdict.
      (id === EMERGENCY && emergencySigns(tree).length > 0)
    const cases = verdictsSpokenOf(tree).map(({ id, track }) =>
      given(track, id)
        ? []
        : [found('verdict-never-given', placeOfVerdict(tree, id, places), { verdict: id, track })]
    )
    return standing(this.id, this.kind, cases)
  }
}

/** The verdicts that some answer raises, or that a walk ends with. */
export function verdictsSpokenOf(tree: Tree): Tree['verdicts'] {
  const questions = Object.values(tree.questions)
  const ids = new Set([
    ...questions.flatMap(effectsOf).flatMap(({ raise }) => raise),
    ...questions.flatMap(branchesOf).flatMap(({ leads }) => ('end' in leads ? [leads.end] : []))
  ])
  return tree.verdicts.filter(({ id }) => ids.has(id))
}

/** The first question of which some answer gives the verdict. */
function placeOfVerdict(tree: Tree, verdict: string, places: Places): Place | undefined {
  const question = Object.values(tree.questions).find(
    each =>
      effectsOf(each).some(({ raise }) => raise.includes(verdict)) ||
      branchesOf(each).some(({ leads }) => 'end' in leads && leads.end === verdict)
  )
  return places[`questions/${question?.id}`]
}
