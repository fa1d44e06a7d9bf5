import type { Finding } from '../findings/finding.ts'
import type { Places } from '../findings/place.ts'
import { verdictsOf } from '../tree/caution.ts'
import { emergencySigns } from '../tree/emergency.ts'
import type { Condition, Rule } from '../tree/tree.ts'
import type { TreeDiagrams } from '../tree/tree-diagrams.ts'
import { walk } from '../tree/walk.ts'
import { type Breach, breachOf, claimText, levelText } from './claim.ts'
import { boxesOf } from './open.ts'
import { type Proved, standing } from './proved.ts'
import { levelIn } from './replay.ts'
import { completed, shortestTo, witnessOf } from './witness.ts'

/**
 * Proves one rule of the tree over every complete set of answers, or refutes it with the walk of
 * fewest unusual answers. It must be one of the tree's rules: their limits cut the answer space.
 */
export function proveRule(made: TreeDiagrams, rule: Rule, places: Places): Proved {
  const breach = breachOf(made.tree, rule.claim)
  const boxes = boxesOf(made, rule)
  const emergency = speaksOfEmergency(made, rule, breach)
  if (boxes.length === 0 && !emergency) {
    return standing(rule.id, 'rule', [neverApplies(rule, places)])
  }
  // An emergency ends at the top of the person track with `use: never`, whatever else is answered.
  const top = breach.lens === 'use' ? 2 : verdictsOf(made.tree, 'person').length
  if (emergency && breach.breaks(top)) {
    return standing(rule.id, 'rule', [refuted(made, rule, breach, top, [], places)])
  }
  const diagram = made.of(breach.lens)
  for (const box of boxes) {
    const choice = shortestTo(made, diagram, box, breach.breaks)
    if (choice === undefined) continue
    const answers = completed(made, choice, box)
    const got = levelIn(made.tree, breach.lens, walk(made.tree, answers).outcome)
    if (!breach.breaks(got)) throw new Error(`the walk does not show what refutes ${rule.id}`)
    const witness = witnessOf(made.tree, answers)
    return standing(rule.id, 'rule', [refuted(made, rule, breach, got, witness, places)])
  }
  return standing(rule.id, 'rule', [])
}

/** Rules on batch and container speak of answer sets without an emergency. */
function speaksOfEmergency(made: TreeDiagrams, rule: Rule, { lens }: Breach): boolean {
  if (lens !== 'person' && lens !== 'use') return false
  const signs = emergencySigns(made.tree)
  const names = (condition: Condition) =>
    condition.kind !== 'measure' &&
    signs.some(
      ({ observation, sign }) =>
        condition.observation === observation &&
        (condition.kind === 'sign'
          ? condition.sign === sign && condition.among.includes('yes')
          : condition.among.includes(sign))
    )
  return rule.when.some(names)
}

function refuted(
  made: TreeDiagrams,
  rule: Rule,
  { lens }: Breach,
  got: number,
  witness: Finding['witness'] & object,
  places: Places
): Finding {
  return {
    code: 'rule-refuted',
    place: places[`rules/${rule.id}`] ?? null,
    because: [],
    facts: {
      rule: rule.id,
      claim: claimText(rule.claim),
      gets: levelText(made.tree, lens, got)
    },
    witness
  }
}

function neverApplies(rule: Rule, places: Places): Finding {
  return {
    code: 'rule-never-applies',
    place: places[`rules/${rule.id}`] ?? null,
    because: [],
    facts: { rule: rule.id }
  }
}
