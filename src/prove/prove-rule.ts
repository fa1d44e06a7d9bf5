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
export function proveRule(made: TreeDiagrams, rule: Rule, places: Places): Proved {
  const breach = breachOf(made.tree, rule.claim)
  const boxes = boxesOf(made, rule)
  const emergency = emergencySpokenOf(made, rule, breach)
  if (boxes.length === 0 && emergency === undefined) {
    return standing(rule.id, 'rule', [[neverApplies(rule, places)]])
  }
  // An emergency ends at the top of the person track with `use: never`, whatever else is answered.
  const top = breach.lens === 'use' ? 2 : verdictsOf(made.tree, 'person').length
  if (emergency !== undefined && breach.breaks(top)) {
    const answers = emergencyAnswers(made.tree, emergency)
    return standing(rule.id, 'rule', [[refuted(made, rule, breach, top, answers, places)]])
  }
  const answers = fewestUnusual(made, breach, boxes)
  if (answers !== undefined) {
    const got = levelIn(made.tree, breach.lens, walk(made.tree, answers).outcome)
    if (!breach.breaks(got)) throw new Error(`the walk does not show what refutes ${rule.id}`)
    return standing(rule.id, 'rule', [[refuted(made, rule, breach, got, answers, places)]])
  }
  return standing(rule.id, 'rule', [[]])
}

/** Of all sets of answers in the boxes that break a claim one with the fewest unusual answers. */
function fewestUnusual(
  made: TreeDiagrams,
  { lens, breaks }: Breach,
  boxes: readonly Open[]
): Answers | undefined {
  const diagram = made.of(lens)
  const [best] = boxes
    .flatMap(box => {
      const choice = shortestTo(made, diagram, box, breaks)
      return choice === undefined ? [] : [{ box, choice, cost: unusualIn(made, choice, box) }]
    })
    .sort((a, b) => a.cost - b.cost)
  return best && completed(made, best.choice, best.box)
}

/** The emergency that the rule names; rules on batch and container speak of answer sets without one. */
function emergencySpokenOf(
  made: TreeDiagrams,
  rule: Rule,
  { lens }: Breach
): EmergencySign | undefined {
  if (lens !== 'person' && lens !== 'use') return undefined
  return emergencySigns(made.tree).find(({ observation, sign }) =>
    rule.when.some(condition => names(condition, observation, sign))
  )
}

/** The one answer that ends a walk as an emergency, whatever else is told. */
function emergencyAnswers({ observations }: Tree, { observation, sign }: EmergencySign): Answers {
  const isScreen = observations[observation]?.kind === 'signs'
  return { [observation]: isScreen ? { [sign]: 'yes' } : sign }
}

function refuted(
  made: TreeDiagrams,
  rule: Rule,
  { lens }: Breach,
  got: number,
  answers: Answers,
  places: Places
): Finding {
  const finding = found('rule-refuted', places[`rules/${rule.id}`], {
    rule: rule.id,
    claim: claimText(rule.claim),
    gets: levelText(made.tree, lens, got)
  })
  return shownBy(made.tree, answers, finding)
}

function neverApplies(rule: Rule, places: Places): Finding {
  return found('rule-never-applies', places[`rules/${rule.id}`], { rule: rule.id })
}
