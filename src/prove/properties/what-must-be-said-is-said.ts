import { diagramsOf } from '../../diagrams/tree-diagrams.ts'
import { adviceFor } from '../../evaluate/advice.ts'
import { walk } from '../../evaluate/walk.ts'
import type { Answer, Answers } from '../../tree/answers.ts'
import { type EmergencySign, emergencySigns } from '../../tree/emergency.ts'
import { must } from '../../tree/must.ts'
import type { SpokenRule, Tree } from '../../tree/tree.ts'
import { names } from '../danger.ts'
import { found, shownBy } from '../found.ts'
import { boxesOf } from '../open.ts'
import type { Property } from '../property.ts'
import { standing } from '../proved.ts'
import { comesLate } from '../said/order.ts'
import { type SaidDiagrams, saidOf } from '../said/said.ts'
import { completed, shortestTo } from '../witness.ts'

/**
 * Every rule of what is said holds for every complete set of answers that it speaks of, whatever is
 * answered once the outcome is out. Counted by those rules.
 */
export const whatMustBeSaidIsSaid: Property = {
  id: 'what-must-be-said-is-said',
  kind: 'rule',
  needsWalks: true,
  prove(compiled, places) {
    const { tree } = compiled
    const cases = tree.spokenRules.map(rule => {
      const place = places[`rules/${rule.id}`]
      const emergencies = emergencySigns(tree).filter(({ observation, sign }) =>
        rule.when.some(condition => names(condition, observation, sign))
      )
      const shown = inEmergency(tree, rule, emergencies) ?? inAnswers(tree, rule)
      if (shown === 'never') {
        return emergencies.length > 0 ? [] : [found('rule-never-applies', place, { rule: rule.id })]
      }
      if (shown === undefined) return []
      const facts = { rule: rule.id, ...shown.breach }
      return [shownBy(tree, shown.answers, found('saying-refuted', place, facts))]
    })
    return standing(this.id, this.kind, cases)
  }
}

/** What breaks a rule: something unsaid, said though it must not be, or said before what must come first. */
interface SpokenBreach {
  readonly step: string
  readonly how: 'unsaid' | 'said' | 'late'
  readonly before?: string
}

interface Shown {
  readonly breach: SpokenBreach
  readonly answers: Answers
}

/** An emergency ends the walk whatever else is told; others may stand beside it, one at a time. */
function inEmergency(
  tree: Tree,
  rule: SpokenRule,
  emergencies: readonly EmergencySign[]
): Shown | undefined {
  const [first] = emergencies
  if (first === undefined) return undefined
  for (const beside of [first, ...emergencySigns(tree)]) {
    const answers = answersOf(tree, [first, beside])
    const { doNow, later, clean, keep, startAgain, notes, change } = adviceFor(
      tree,
      walk(tree, answers).outcome,
      answers
    )
    const breach = breachIn(
      rule,
      [...doNow, ...later, ...clean, ...keep, ...startAgain],
      [...notes, ...change]
    )
    if (breach !== undefined) return { breach, answers }
  }
  return undefined
}

function answersOf({ observations }: Tree, signs: readonly EmergencySign[]): Answers {
  const entries = signs.map(({ observation, sign }): readonly [string, Answer] => {
    if (observations[observation]?.kind !== 'signs') return [observation, sign]
    const beside = signs.filter(other => other.observation === observation)
    return [observation, Object.fromEntries(beside.map(other => [other.sign, 'yes' as const]))]
  })
  return Object.fromEntries(entries)
}

function breachIn(
  { says, never }: SpokenRule,
  steps: readonly string[],
  notes: readonly string[]
): SpokenBreach | undefined {
  const heard = new Set([...steps, ...notes])
  const unsaid = says.find(step => !heard.has(step))
  if (unsaid !== undefined) return { step: unsaid, how: 'unsaid' }
  const said = never.find(step => heard.has(step))
  if (said !== undefined) return { step: said, how: 'said' }
  const inOrder = says.filter(step => steps.includes(step))
  const late = inOrder.findIndex(
    (step, index) =>
      index > 0 && steps.indexOf(step) < steps.indexOf(must(inOrder[index - 1], 'step'))
  )
  if (late < 0) return undefined
  return {
    step: must(inOrder[late - 1], 'step'),
    how: 'late',
    before: must(inOrder[late], 'step')
  }
}

/** The set of fewest unusual answers that breaks the rule, over all that it speaks of. */
function inAnswers(tree: Tree, rule: SpokenRule): Shown | 'never' | undefined {
  const said = saidOf(tree)
  const boxes = boxesOf(diagramsOf(tree), rule)
  if (boxes.length === 0) return 'never'
  for (const { breach, where } of breachesOf(said, rule)) {
    if (where === 0) continue
    for (const box of boxes) {
      // What is asked once the outcome is out is no part of a rule: whatever is answered.
      const open = said.compiled.variables.map(
        ({ values }, index) => box[index] ?? values.map(() => true)
      )
      const choice = shortestTo(said.compiled, where, open, level => level === 1)
      if (choice !== undefined) {
        return { breach, answers: completed(must(said.compiled, 'diagrams'), choice, open) }
      }
    }
  }
  return undefined
}

/** Where a rule of what is said is broken, if it spoke of all answers. */
function breachesOf(
  said: SaidDiagrams,
  { says, never }: SpokenRule
): readonly { readonly breach: SpokenBreach; readonly where: number }[] {
  const { facts } = said.occasion
  const spots = (step: string) => said.spots.filter(spot => spot.step === step)
  const heard = (id: string) =>
    facts.or(
      ...said.sentences.flatMap(one =>
        one.id === id && one.kind !== 'follow-up' ? [one.said] : []
      )
    )
  const inOrder = says.filter(step => spots(step).length > 0)
  return [
    ...says.map(step => ({
      breach: { step, how: 'unsaid' as const },
      where: facts.not(heard(step))
    })),
    ...never.map(step => ({ breach: { step, how: 'said' as const }, where: heard(step) })),
    ...inOrder.slice(1).map((before, index) => {
      const step = must(inOrder[index], 'step')
      return {
        breach: { step, how: 'late' as const, before },
        where: comesLate(said, spots(step), spots(before))
      }
    })
  ]
}
