import { isEmpty } from '../tree/coverage.ts'
import type { Observation } from '../tree/observation.ts'
import type { Condition, Rule, SpokenRule } from '../tree/tree.ts'

/** Why no set of answers can meet a rule, as far as its words alone show it; null if nothing does. */
export function neverApplies(
  rule: Rule | SpokenRule,
  observations: ReadonlyMap<string, Observation>
): string | null {
  for (const condition of rule.when) {
    const observation = observations.get(condition.observation)
    if (condition.kind !== 'measure' || observation?.kind !== 'measure') continue
    const { is } = condition
    if (is === 'unsure') continue
    if ('within' in is) {
      if (isEmpty(is.within, observation.span)) return `no reading of ${observation.id} lies there`
    } else if (observation.instruments.length === 0) {
      return `${observation.id} is counted, so it never reaches to both sides of a limit`
    } else if (is.straddles < observation.span.from || is.straddles >= observation.span.to) {
      return `no reading of ${observation.id} reaches there`
    }
  }
  if (rule.unless.some(exception => exception.every(each => impliedBy(rule.when, each)))) {
    return 'an exception under `unless:` holds whenever `when:` does'
  }
  return null
}

/** The choices and measures that a rule with `rest: usual` cannot do without: nothing of them is usual. */
export function withoutUsual(
  observations: ReadonlyMap<string, Observation>,
  asked: ReadonlySet<string>
): readonly string[] {
  return [...observations.values()]
    .filter(observation => asked.has(observation.id) && !hasUsual(observation))
    .map(({ id }) => id)
}

function hasUsual(observation: Observation): boolean {
  switch (observation.kind) {
    case 'signs':
      return true
    case 'measure':
      return observation.usual !== undefined
    case 'choice':
      return observation.settles !== undefined || observation.answers.some(({ usual }) => usual)
  }
}

function impliedBy(when: readonly Condition[], wanted: Condition): boolean {
  return when.some(given => {
    if (given.kind === 'measure' || wanted.kind === 'measure') {
      return JSON.stringify(given) === JSON.stringify(wanted)
    }
    if (given.kind !== wanted.kind || given.observation !== wanted.observation) return false
    if (given.kind === 'sign' && wanted.kind === 'sign' && given.sign !== wanted.sign) return false
    const among: readonly string[] = wanted.among
    return given.among.every(value => among.includes(value))
  })
}
