import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { diagramsOf } from '../../src/diagrams/tree-diagrams.ts'
import { adviceFor } from '../../src/evaluate/advice.ts'
import { walk } from '../../src/evaluate/walk.ts'
import { everything, isUsual } from '../../src/prove/open.ts'
import { whatMustBeSaidIsSaid } from '../../src/prove/properties/what-must-be-said-is-said.ts'
import { saidBeside, saidOf } from '../../src/prove/said/said.ts'
import { completed } from '../../src/prove/witness.ts'
import type { Answers } from '../../src/tree/answers.ts'
import { emergencySigns } from '../../src/tree/emergency.ts'
import type { SpokenRule, Tree } from '../../src/tree/tree.ts'
import { shippedTrees } from '../helpers/shipped.ts'

/** All that is heard with these answers, in the order of the sheet. */
function heard(tree: Tree, answers: Answers): readonly string[] {
  const { outcome } = walk(tree, answers)
  const { doNow, later, clean, keep, startAgain, notes, change } = adviceFor(tree, outcome, answers)
  return [...doNow, ...later, ...clean, ...keep, ...startAgain, ...notes, ...change]
}

const rule = (more: Partial<SpokenRule>): SpokenRule => ({
  id: 'said',
  when: [],
  unless: [],
  restUsual: false,
  says: [],
  never: [],
  basis: 'own-caution',
  because: ['own-caution'],
  ...more
})

/** What the rule alone is found against, if anything. */
const refuted = (tree: Tree, one: SpokenRule) => {
  const alone = { ...tree, spokenRules: [one] }
  saidBeside(alone, saidOf(tree))
  return whatMustBeSaidIsSaid.prove(diagramsOf(alone), {}, {}).findings[0]
}

describe('a rule of what is said is proved or refuted as adviceFor has it', async () => {
  const trees = await shippedTrees()

  test.each(trees)(
    'of $id: a witness hears what the rule forbids, or misses what it wants',
    tree => {
      const steps = [...new Set(saidOf(tree).spots.map(({ step }) => step))]
      const found = { unsaid: 0, said: 0 }
      for (const step of steps.filter((_, index) => index % 20 === 0)) {
        const missing = refuted(tree, rule({ says: [step] }))
        if (missing?.answers !== undefined) {
          found.unsaid++
          expect(heard(tree, missing.answers)).not.toContain(step)
        }
        const there = refuted(tree, rule({ never: [step] }))
        if (there?.answers !== undefined) {
          found.said++
          expect(heard(tree, there.answers)).toContain(step)
        }
      }
      expect(Math.min(found.unsaid, found.said)).toBeGreaterThan(0)
    }
  )

  test.each(trees)('of $id: its own rules hold on random answers that they speak of', tree => {
    const { compiled } = saidOf(tree)
    // An emergency that ends the walk is no value of the answer space, and a measure has no one value.
    const inSpace = ({ when }: SpokenRule) =>
      when.every(
        one =>
          one.kind !== 'measure' &&
          compiled.variables.some(
            ({ observation, sign, values }) =>
              observation === one.observation &&
              (one.kind !== 'sign' || sign === one.sign) &&
              values.some(({ answer }) => one.among.some(among => among === answer))
          )
      )
    const of = tree.spokenRules.filter(one => one.restUsual && inSpace(one))
    expect(of.length).toBeGreaterThan(0)
    expect(whatMustBeSaidIsSaid.prove(diagramsOf(tree), {}, {}).standing).toBe('proved')
    // Whatever is answered once the outcome is out.
    const after = compiled.variables.slice(diagramsOf(tree).variables.length)
    for (const { when, says, never } of of) {
      fc.assert(
        fc.property(fc.tuple(...after.map(({ values }) => fc.nat(values.length - 1))), picks => {
          const choice = new Map<number, number>()
          compiled.variables.forEach((variable, index) => {
            const pick = picks[index - diagramsOf(tree).variables.length]
            const named = when.find(
              one =>
                one.observation === variable.observation &&
                (one.kind !== 'sign' || one.sign === variable.sign)
            )
            const value = variable.values.findIndex(each =>
              named === undefined || named.kind === 'measure'
                ? isUsual(compiled.tree, variable, each)
                : named.among.some(among => among === each.answer)
            )
            choice.set(index, pick ?? Math.max(value, 0))
          })
          const answers = completed(compiled, choice, everything(compiled))
          const told = new Set(heard(tree, answers))
          expect(says.filter(step => !told.has(step))).toEqual([])
          expect(never.filter(step => told.has(step))).toEqual([])
        }),
        { numRuns: 5 }
      )
    }
  })

  test.each(trees)('of $id: what an emergency must say is looked for in the emergency', tree => {
    const [sign] = emergencySigns(tree)
    if (sign === undefined) throw new Error('no emergency')
    const { observation } = sign
    const when = [{ kind: 'sign', observation, sign: sign.sign, among: ['yes'] }] as const
    expect(refuted(tree, rule({ when, says: ['call-911'] }))).toBeUndefined()
    expect(refuted(tree, rule({ when, never: ['call-911'] }))?.facts.how).toBe('said')
    const late = refuted(tree, rule({ when, says: ['stay-with-them', 'call-911'] }))
    expect(late?.facts.how).toBe('late')
  })
})
