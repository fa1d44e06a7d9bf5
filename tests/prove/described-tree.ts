import { reachable } from '../../src/diagrams/reach.ts'
import { TreeDiagrams } from '../../src/diagrams/tree-diagrams.ts'
import { boxesOf } from '../../src/prove/open.ts'
import { verdictsOf } from '../../src/tree/caution.ts'
import { type Observation, TRACKS } from '../../src/tree/observation.ts'
import { type Claim, type Condition, type Rule, type Tree, USES } from '../../src/tree/tree.ts'

/**
 * The tree with rules that say all that one or two answers make sure of: of each side of the outcome the
 * gentlest and the strictest that can come of them.
 */
export function describedTree(sketched: Tree): Tree {
  const conditions = conditionsOn(sketched)
  const pairs = conditions.flatMap((one, index) =>
    conditions.slice(index + 1).map(other => [one, other])
  )
  const whens: readonly (readonly Condition[])[] = [...conditions.map(one => [one]), ...pairs]
  // The limits that the rules name cut the answer space before anything is read off it.
  const drafted = { ...sketched, rules: whens.map(when => ruleOf(when, ANYTHING, 'draft')) }
  const made = new TreeDiagrams(drafted)
  const rules = drafted.rules.flatMap(({ when }) => {
    const boxes = boxesOf(made, ruleOf(when, ANYTHING, 'draft'))
    return boxes.length === 0 ? [] : claimsFor(made, boxes).map(claim => ruleOf(when, claim, ''))
  })
  return { ...sketched, rules: rules.map((rule, index) => ({ ...rule, id: `rule-${index}` })) }
}

const ANYTHING: Claim = { kind: 'use-at-most', use: 'as-directed' }

const ruleOf = (when: readonly Condition[], claim: Claim, id: string): Rule => ({
  id,
  when,
  unless: [],
  restUsual: false,
  claim,
  basis: 'own-caution',
  because: []
})

function claimsFor(made: TreeDiagrams, boxes: ReturnType<typeof boxesOf>): readonly Claim[] {
  const { tree, diagrams } = made
  const levels = (lens: Parameters<TreeDiagrams['of']>[0]) =>
    boxes.flatMap(box => [...reachable(diagrams, made.of(lens), box)])
  const onTracks = TRACKS.flatMap((track): Claim[] => {
    const verdicts = verdictsOf(tree, track)
    const all = levels(track)
    const [least, most] = [verdicts[Math.min(...all) - 1], verdicts[Math.max(...all) - 1]]
    return [
      ...(least === undefined ? [] : [{ kind: 'at-least' as const, verdict: least }]),
      ...(most === undefined ? [] : [{ kind: 'at-most' as const, verdict: most }])
    ]
  })
  const uses = levels('use')
  const [freest, strictest] = [USES[Math.min(...uses)], USES[Math.max(...uses)]]
  return [
    ...onTracks,
    ...(freest === undefined ? [] : [{ kind: 'use-at-most' as const, use: freest }]),
    ...(strictest === undefined ? [] : [{ kind: 'use-at-least' as const, use: strictest }])
  ]
}

/** Each answer to each thing that is asked, as the condition of a rule. */
function conditionsOn(tree: Tree): readonly Condition[] {
  const asked = new Set(Object.values(tree.questions).map(question => question.asks))
  return Object.values(tree.observations)
    .filter(({ id }) => asked.has(id))
    .flatMap(one => conditionsOf(tree, one))
}

function conditionsOf(tree: Tree, one: Observation): readonly Condition[] {
  const observation = one.id
  switch (one.kind) {
    case 'choice':
      return [...one.answers.map(({ id }) => id), 'unsure'].map(id => ({
        kind: 'choice',
        observation,
        among: [id]
      }))
    case 'signs':
      return one.signs.flatMap(({ id: sign }) =>
        (['yes', 'no', 'unsure'] as const).map(value => ({
          kind: 'sign' as const,
          observation,
          sign,
          among: [value]
        }))
      )
    case 'measure':
      return [
        ...limitsOn(tree, observation).flatMap(limit => [
          { within: { atMost: limit } },
          { within: { over: limit } },
          ...(one.instruments.length === 0 ? [] : [{ straddles: limit }])
        ]),
        'unsure' as const
      ].map(is => ({ kind: 'measure', observation, is }))
  }
}

const limitsOn = (tree: Tree, observation: string): readonly number[] => [
  ...new Set(
    Object.values(tree.questions).flatMap(question =>
      question.kind === 'measure' && question.asks === observation
        ? question.ranges.flatMap(({ range }) => Object.values(range) as number[])
        : []
    )
  )
]
