import type { Open } from '../diagrams/reach.ts'
import type { TreeDiagrams } from '../diagrams/tree-diagrams.ts'
import { walk } from '../evaluate/walk.ts'
import type { Finding } from '../findings/finding.ts'
import type { Places } from '../findings/place.ts'
import type { Answers } from '../tree/answers.ts'
import { verdictsOf } from '../tree/caution.ts'
import { type EmergencySign, emergencySigns } from '../tree/emergency.ts'
import type { Rule, Tree } from '../tree/tree.ts'
import { type Breach, breachOf, claimText, levelText } from './claim.ts'
import { names } from './danger.ts'
import { found, shownBy } from './found.ts'
import { boxesOf } from './open.ts'
import { type Proved, standing } from './proved.ts'
import { levelIn } from './replay.ts'
import { completed, shortestTo, unusualIn } from './witness.ts'

/**
 * Proves one rule of the tree over every complete set of answers, or refutes it with the walk of
 * fewest unusual answers. It must be one of the tree's rules: their limits cut the answer space.
 */
export function proveRule(compiled: TreeDiagrams, rule: Rule, places: Places): Proved {
  const breach = breachOf(compiled.tree, rule.claim)
  const boxes = boxesOf(compiled, rule)
  const emergency = emergencySpokenOf(compiled, rule, breach)
  if (boxes.length === 0 && emergency === undefined) {
    return standing(rule.id, 'rule', [[neverApplies(rule, places)]])
  }
  // An emergency ends at the top of the person track with `use: never`, whatever else is answered.
  const top = breach.lens === 'use' ? 2 : verdictsOf(compiled.tree, 'person').length
  if (emergency !== undefined && breach.breaks(top)) {
    const answers = emergencyAnswers(compiled.tree, emergency)
    return standing(rule.id, 'rule', [[refuted(compiled, rule, breach, top, answers, places)]])
  }
  const answers = fewestUnusual(compiled, breach, boxes)
  if (answers !== undefined) {
    const level = levelIn(compiled.tree, breach.lens, walk(compiled.tree, answers).outcome)
    if (!breach.breaks(level)) throw new Error(`the walk does not show what refutes ${rule.id}`)
    return standing(rule.id, 'rule', [[refuted(compiled, rule, breach, level, answers, places)]])
  }
  return standing(rule.id, 'rule', [[]])
}

/** Of all sets of answers in the boxes that break a claim one with the fewest unusual answers. */
function fewestUnusual(
  compiled: TreeDiagrams,
  { lens, breaks }: Breach,
  boxes: readonly Open[]
): Answers | undefined {
  const diagram = compiled.of(lens)
  const [best] = boxes
    .flatMap(box => {
      const choice = shortestTo(compiled, diagram, box, breaks)
      return choice === undefined ? [] : [{ box, choice, cost: unusualIn(compiled, choice, box) }]
    })
    .sort((a, b) => a.cost - b.cost)
  // INVARIANT: what is returned is replayed through the reference walk before anybody is shown it.
  return best && completed(compiled, best.choice, best.box)
}

/** The emergency that the rule names; rules on batch and container speak of answer sets without one. */
function emergencySpokenOf(
  compiled: TreeDiagrams,
  rule: Rule,
  { lens }: Breach
): EmergencySign | undefined {
  if (lens !== 'person' && lens !== 'use') return undefined
  return emergencySigns(compiled.tree).find(({ observation, sign }) =>
    rule.when.some(condition => names(condition, observation, sign))
  )
}

/** The one answer that ends a walk as an emergency, whatever else is told. */
function emergencyAnswers({ observations }: Tree, { observation, sign }: EmergencySign): Answers {
  const isScreen = observations[observation]?.kind === 'signs'
  return { [observation]: isScreen ? { [sign]: 'yes' } : sign }
}

function refuted(
  compiled: TreeDiagrams,
  rule: Rule,
  { lens }: Breach,
  level: number,
  answers: Answers,
  places: Places
): Finding {
  const finding = found('rule-refuted', places[`rules/${rule.id}`], {
    rule: rule.id,
    claim: claimText(rule.claim),
    gets: levelText(compiled.tree, lens, level)
  })
  return shownBy(compiled.tree, answers, finding)
}

function neverApplies(rule: Rule, places: Places): Finding {
  return found('rule-never-applies', places[`rules/${rule.id}`], { rule: rule.id })
}
