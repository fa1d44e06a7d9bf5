import { allowedValues } from '../../src/diagrams/allowed.ts'
import { spaceOf, type Value, type Variable, withValue } from '../../src/diagrams/space.ts'
import { type Walk, walk } from '../../src/evaluate/walk.ts'
import type { Answers } from '../../src/tree/answers.ts'
import { choiceOf, isInterval, measureOf, signsOf } from '../../src/tree/answers.ts'
import { level, useLevel, verdict } from '../../src/tree/caution.ts'
import { effectiveChoice } from '../../src/tree/effective.ts'
import { at } from '../../src/tree/must.ts'
import { holdsAll } from '../../src/tree/range.ts'
import type { Claim, Condition, Rule, Tree } from '../../src/tree/tree.ts'
import { rawReadings } from './raw-readings.ts'

/**
 * The second opinion: every complete set of answers, one by one, judged by `walk()` alone. Of a measure
 * raw readings, not the bands of the proofs: those are on trial too.
 */
export function* everySet(tree: Tree): Generator<Answers> {
  const variables = spaceOf(tree).map(variable => ({ variable, values: valuesOf(tree, variable) }))
  const settlers = Object.fromEntries(
    Object.values(tree.observations)
      .filter(o => o.kind === 'choice' && o.settles !== undefined)
      .map(o => [o.id, 'unsure'])
  )
  const places = variables.map(() => 0)
  for (;;) {
    let answers: Answers = settlers
    variables.forEach(({ variable, values }, i) => {
      answers = withValue(answers, variable, at(values, at(places, i)))
    })
    yield answers
    let i = 0
    while (i < places.length && at(places, i) + 1 === variables[i]?.values.length) places[i++] = 0
    if (i === places.length) return
    places[i] = at(places, i) + 1
  }
}

function valuesOf(tree: Tree, { observation, values }: Variable): readonly Value[] {
  const measure = tree.observations[observation]
  if (measure?.kind !== 'measure') return values
  const readings = rawReadings(tree, measure).map(answer => ({ label: 'raw', answer }))
  return [...readings, { label: 'unsure', answer: 'unsure' }]
}

/** The value of one coordinate that complete answers give, a raw reading by the band that it falls in. */
export function valueIn(tree: Tree, variable: Variable, answers: Answers): Value {
  const allowed = allowedValues(tree, variable, answers)
  if (allowed.filter(is => is).length !== 1) throw new RangeError(`${variable.observation} is open`)
  return at(variable.values, allowed.indexOf(true))
}

export function sizeOf(tree: Tree): number {
  return spaceOf(tree).reduce((n, { values }) => n * values.length, 1)
}

/** Whether the rule speaks of these answers, read straight from its words. */
export function speaks(tree: Tree, rule: Rule, answers: Answers): boolean {
  return (
    rule.when.every(condition => meets(tree, condition, answers)) &&
    !rule.unless.some(all => all.every(condition => meets(tree, condition, answers))) &&
    (!rule.restUsual || restIsUsual(tree, rule, answers))
  )
}

function meets(tree: Tree, condition: Condition, answers: Answers): boolean {
  const observation = tree.observations[condition.observation]
  if (condition.kind === 'choice') {
    const effective =
      observation?.kind === 'choice'
        ? effectiveChoice(tree, observation, answers)?.answer
        : undefined
    return effective !== undefined && condition.among.includes(effective)
  }
  if (condition.kind === 'sign') {
    const told = signsOf(answers, condition.observation)[condition.sign]
    return told !== undefined && condition.among.includes(told)
  }
  const told = measureOf(answers, condition.observation)
  if (condition.is === 'unsure' || !isInterval(told)) return condition.is === told
  return 'within' in condition.is
    ? holdsAll(condition.is.within, told)
    : told.low <= condition.is.straddles && condition.is.straddles < told.high
}

function restIsUsual(tree: Tree, rule: Rule, answers: Answers): boolean {
  const asked = new Set(Object.values(tree.questions).map(q => q.asks))
  return Object.values(tree.observations)
    .filter(o => asked.has(o.id))
    .every(o => {
      if (o.kind === 'signs') {
        const named = rule.when.flatMap(c =>
          c.kind === 'sign' && c.observation === o.id ? [c.sign] : []
        )
        return o.signs.every(({ id }) => named.includes(id) || signsOf(answers, o.id)[id] === 'no')
      }
      if (rule.when.some(c => c.observation === o.id)) return true
      if (o.kind === 'choice') {
        return (
          o.settles !== undefined ||
          o.answers.some(a => a.usual && a.id === choiceOf(answers, o.id))
        )
      }
      const told = measureOf(answers, o.id)
      return isInterval(told) && (o.usual === undefined || holdsAll(o.usual, told))
    })
}

export function holdsClaim(tree: Tree, claim: Claim, { outcome }: Walk): boolean {
  switch (claim.kind) {
    case 'note':
      return outcome.notes.includes(claim.note)
    case 'nothing-about':
      return outcome[claim.track] === null
    case 'use-is':
      return outcome.use === claim.use
    case 'use-at-most':
      return useLevel(outcome.use) >= useLevel(claim.use)
    case 'use-at-least':
      return useLevel(outcome.use) <= useLevel(claim.use)
    default: {
      const { track } = verdict(tree, claim.verdict)
      const got = level(tree, track, outcome[track])
      const limit = level(tree, track, claim.verdict)
      return claim.kind === 'at-least' ? got >= limit : got <= limit
    }
  }
}

/** The standing of a rule by trying every set; null when the rule speaks of none. */
export function ruleHolds(tree: Tree, rule: Rule): boolean | null {
  let spoke = false
  for (const answers of everySet(tree)) {
    if (!speaks(tree, rule, answers)) continue
    spoke = true
    if (!holdsClaim(tree, rule.claim, walk(tree, answers))) return false
  }
  return spoke ? true : null
}
