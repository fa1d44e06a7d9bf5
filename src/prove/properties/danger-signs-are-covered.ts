import type { Open } from '../../diagrams/reach.ts'
import type { TreeDiagrams } from '../../diagrams/tree-diagrams.ts'
import type { Finding } from '../../findings/finding.ts'
import type { Places } from '../../findings/place.ts'
import { emergencySigns } from '../../tree/emergency.ts'
import type { ChoiceObservation } from '../../tree/observation.ts'
import type { Condition, Rule, Tree } from '../../tree/tree.ts'
import { boxDiagram } from '../cover.ts'
import { type Danger, dangersOf, isCautious, names } from '../danger.ts'
import { found, shownBy } from '../found.ts'
import { boxesOf, everything, literalOf } from '../open.ts'
import type { Property } from '../property.ts'
import { standing } from '../proved.ts'
import { completed, shortestTo } from '../witness.ts'

/**
 * For every danger sign that the tree asks, and every danger answer of a choice: whatever else is told,
 * some rule that names it forbids a gentle end. Counted by danger signs.
 */
export const dangerSignsAreCovered: Property = {
  id: 'danger-signs-are-covered',
  kind: 'law',
  needsWalks: true,
  prove(compiled, places) {
    const cases = dangersOf(compiled.tree).map(danger => uncovered(compiled, danger, places))
    return standing(this.id, this.kind, cases)
  }
}

function uncovered(compiled: TreeDiagrams, danger: Danger, places: Places): readonly Finding[] {
  const { tree, diagrams } = compiled
  const rules = tree.rules.filter(
    ({ when, claim }) =>
      isCautious(tree, claim, danger.about) && when.some(one => speaksOf(tree, one, danger))
  )
  if (rules.some(isOfNothingElse)) return []
  const asked = Object.values(tree.questions).find(({ asks }) => asks === danger.observation)
  const place =
    places[`questions/${asked?.id}/${danger.answer}`] ?? places[`questions/${asked?.id}`]
  const { observation, answer } = danger
  const finding = found('danger-uncovered', place, { observation, answer, rules: rules.length })
  // An emergency ends the walk at once: only a rule that speaks of it alone covers all of that.
  if (isEmergency(tree, danger)) return [finding]
  const box = where(compiled, danger)
  const covered = rules
    .flatMap(rule => boxesOf(compiled, rule))
    .reduce((sum, one) => diagrams.join(sum, boxDiagram(diagrams, one)), 0)
  const bare = diagrams.combine([boxDiagram(diagrams, box), covered], ([is, held]) =>
    is === 1 && held === 0 ? 1 : 0
  )
  const choice = shortestTo(compiled, bare, everything(compiled), level => level === 1)
  return choice === undefined ? [] : [shownBy(tree, completed(compiled, choice, box), finding)]
}

const isOfNothingElse = ({ when, unless, restUsual }: Rule): boolean =>
  when.length === 1 && unless.length === 0 && !restUsual

/** Whether a condition names the danger, or the answer that it stands for. */
function speaksOf(tree: Tree, condition: Condition, { observation, answer }: Danger): boolean {
  if (names(condition, observation, answer)) return true
  const asked = tree.observations[observation]
  if (asked?.kind !== 'choice' || asked.settles === undefined) return false
  return names(condition, asked.settles, stands(asked, answer))
}

const stands = ({ answers }: ChoiceObservation, answer: string): string =>
  answers.find(({ id }) => id === answer)?.standsFor ?? ''

const isEmergency = (tree: Tree, { observation, answer }: Danger): boolean =>
  emergencySigns(tree).some(each => each.observation === observation && each.sign === answer)

/** The sets of answers that tell of the danger. */
function where(compiled: TreeDiagrams, { observation, answer }: Danger): Open {
  const isScreen = compiled.tree.observations[observation]?.kind === 'signs'
  const literal = literalOf(
    compiled,
    isScreen
      ? { kind: 'sign', observation, sign: answer, among: ['yes'] }
      : { kind: 'choice', observation, among: [answer] }
  )
  return everything(compiled).map((open, index) => (index === literal?.index ? literal.open : open))
}
