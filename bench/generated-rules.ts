import type { Observation } from '../src/tree/observation.ts'
import type { Condition, Rule, Tree } from '../src/tree/tree.ts'
import type { Pick } from './pick.ts'

const RULES = 30

/**
 * Thirty rules in the manner of authored ones: a third that a danger sign raises its verdict (they hold),
 * a third that one unusual answer alone does no more than it says, a third that an answer further down
 * withholds the use or raises a verdict, which many walks never ask (most are broken).
 */
export function generatedRules(tree: Tree, pick: Pick): readonly Rule[] {
  const all = Object.values(tree.observations)
  const screens = all.filter(one => one.kind === 'signs')
  const body = all.filter(one => one.kind !== 'signs')
  return Array.from({ length: RULES }, (_, index): Rule => {
    const rule = { unless: [], basis: 'own-caution', because: [], id: `rule-${index}` } as const
    const kind = index % 3
    if (kind === 0) {
      const screen = pick.from(screens)
      const verdict =
        screen.about === 'person'
          ? 'doctor-today'
          : screen.about === 'container'
            ? 'pressure-hazard'
            : 'likely-mold'
      const when = [sign(screen, `s${pick.below(4)}`, 'yes')]
      return { ...rule, when, restUsual: false, claim: { kind: 'at-least', verdict } }
    }
    if (kind === 1) {
      const when = [conditionOn(pick.from(body), pick)]
      const claim = {
        kind: 'at-most',
        verdict: pick.from(['likely-mold', 'wait-and-recheck'])
      } as const
      return { ...rule, when, restUsual: true, claim }
    }
    const when = [conditionOn(pick.from(body), pick), conditionOn(pick.from(body), pick)]
    const claim = pick.from([
      { kind: 'use-at-most', use: 'not-yet' },
      { kind: 'at-least', verdict: 'wait-and-recheck' },
      { kind: 'use-is', use: 'never' }
    ] as const)
    return { ...rule, when: when.slice(0, 1 + pick.below(2)), restUsual: false, claim }
  })
}

const sign = (screen: Observation, id: string, value: 'yes' | 'unsure'): Condition => ({
  kind: 'sign',
  observation: screen.id,
  sign: id,
  among: [value]
})

function conditionOn(observation: Observation, pick: Pick): Condition {
  if (observation.kind === 'choice') {
    const answers = [...observation.answers.map(({ id }) => id), 'unsure']
    return { kind: 'choice', observation: observation.id, among: [pick.from(answers)] }
  }
  const is = pick.from([{ within: { over: 7 } }, 'unsure', { within: { atMost: 4 } }] as const)
  return { kind: 'measure', observation: observation.id, is }
}
