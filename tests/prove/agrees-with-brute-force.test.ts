import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { TreeDiagrams } from '../../src/diagrams/tree-diagrams.ts'
import { aSecondAnswerNeverReassures } from '../../src/prove/properties/a-second-answer-never-reassures.ts'
import { anUnsureDangerSignIsNotGentle } from '../../src/prove/properties/an-unsure-danger-sign-is-not-gentle.ts'
import { dangerSignsAreCovered } from '../../src/prove/properties/danger-signs-are-covered.ts'
import { noIdleQuestion } from '../../src/prove/properties/no-idle-question.ts'
import { noIdleSign } from '../../src/prove/properties/no-idle-sign.ts'
import { notKnowingNeverReassures } from '../../src/prove/properties/not-knowing-never-reassures.ts'
import { questionsAreReached } from '../../src/prove/properties/questions-are-reached.ts'
import {
  verdictsAreGiven,
  verdictsSpokenOf
} from '../../src/prove/properties/verdicts-are-given.ts'
import type { Property } from '../../src/prove/property.ts'
import { proveRule } from '../../src/prove/prove-rule.ts'
import { isInterval } from '../../src/tree/answers.ts'
import type { Rule, Tree } from '../../src/tree/tree.ts'
import { everySet, ruleHolds, sizeOf } from '../helpers/brute-force.ts'
import { randomRule, randomTree } from '../helpers/random-tree.ts'
import {
  coveredDangers,
  givenVerdicts,
  questionsThatMatter,
  reachedQuestions,
  secondAnswerNeverReassures,
  signsThatMatter,
  unsureDangerIsMet,
  unsureNeverReassures
} from './brute-properties.ts'

const upTo = (sets: number) => randomTree.filter(tree => sizeOf(tree) <= sets)
/** With a word for what is asked after a person, without which nothing about people is decided. */
const withNote = (tree: Tree): Tree => ({
  ...tree,
  advice: { ...tree.advice, unsureNote: { person: 'note-a' } }
})

describe('the prover agrees with trying every set of answers', () => {
  test('on 1,000 random trees, each with a random rule', () => {
    const seen = { proved: 0, refuted: 0, never: 0 }
    fc.assert(
      fc.property(
        upTo(3000).chain(tree => fc.tuple(fc.constant(tree), randomRule(tree))),
        ([sketched, rule]) => {
          const tree = { ...sketched, rules: [rule] }
          const proved = proveRule(new TreeDiagrams(tree), rule, {})
          const truth = ruleHolds(tree, rule)
          const never = proved.findings[0]?.code === 'rule-never-applies'
          seen[never ? 'never' : proved.standing === 'proved' ? 'proved' : 'refuted']++
          expect(never ? null : proved.standing === 'proved').toBe(truth)
        }
      ),
      { numRuns: 1000 }
    )
    // A comparison that never meets one of the three standings would show nothing.
    expect(Math.min(seen.proved, seen.refuted, seen.never)).toBeGreaterThan(5)
  })

  test('on readings inside, on and beside the limits, read off with every instrument or none', () => {
    const met = new Set<string>()
    for (const tree of fc.sample(upTo(300), { seed: 5, numRuns: 200 })) {
      for (const { ph } of everySet(tree)) {
        if (!isInterval(ph)) continue
        met.add(ph.instrument ?? 'none')
        const limit = [2.5, 4.2, 4.6].find(one => Math.abs(one - ph.reading) < 0.02)
        met.add(limit === undefined ? 'inside' : limit === ph.reading ? 'on' : 'beside')
      }
    }
    expect([...met].sort()).toEqual(['beside', 'inside', 'meter', 'none', 'on', 'strip'])
  })

  test('on 400 random trees, for what not knowing may do to the use', () => {
    agree(notKnowingNeverReassures, unsureNeverReassures, upTo(3000), 400)
  })

  test('on 300 random trees, for what an unsure danger sign must come to', () => {
    agree(anUnsureDangerSignIsNotGentle, unsureDangerIsMet, upTo(1000).map(withNote), 300)
  })

  test('on 300 random trees, for a second answer beside a known one', () => {
    const withTexture = upTo(1000).filter(tree => tree.observations.texture !== undefined)
    agree(aSecondAnswerNeverReassures, secondAnswerNeverReassures, withTexture, 300)
  })

  test('on 300 random trees, for the questions that are ever asked', () => {
    agreeOn(questionsAreReached, 'question', upTo(1000), 300, tree => {
      const reached = reachedQuestions(tree)
      return Object.keys(tree.questions).filter(id => !reached.has(id))
    })
  })

  test('on 300 random trees, for the verdicts that are ever given', () => {
    agreeOn(verdictsAreGiven, 'verdict', upTo(1000), 300, tree => {
      const given = givenVerdicts(tree)
      return verdictsSpokenOf(tree).flatMap(({ id }) => (given.has(id) ? [] : [id]))
    })
  })

  test('on 300 random trees, for the questions that change nothing', () => {
    const dull = upTo(600).chain(tree => fc.tuple(fc.constant(tree), fc.nat(5)).map(dulled))
    agreeOn(noIdleQuestion, 'question', dull, 300, tree => {
      const reached = reachedQuestions(tree)
      const matter = questionsThatMatter(tree)
      return Object.keys(tree.questions).filter(id => reached.has(id) && !matter.has(id))
    })
  })

  test('on 300 random trees, for the signs that change nothing', () => {
    agreeOn(noIdleSign, 'sign', upTo(600), 300, tree => {
      const matter = signsThatMatter(tree)
      return Object.values(tree.observations).flatMap(({ id, ...rest }) =>
        rest.kind === 'signs'
          ? rest.signs.flatMap(sign => (matter.has(`${id} ${sign.id}`) ? [] : [sign.id]))
          : []
      )
    })
  })

  test('on 400 random trees, for the danger signs that rules cover', () => {
    const ruled = upTo(1000).chain(tree =>
      fc.array(randomRule(tree), { minLength: 1, maxLength: 6 }).map(rules => ({
        ...tree,
        rules: rules.map((one, i) => (i % 2 === 0 ? strict(one) : one))
      }))
    )
    const covers = { some: 0 }
    agreeOn(dangerSignsAreCovered, 'answer', ruled, 400, tree => {
      const covered = coveredDangers(tree)
      covers.some += covered.size
      return Object.values(tree.observations).flatMap(({ id, ...rest }) => {
        // Light is never asked by these trees.
        if (rest.kind === 'measure' || id === 'light') return []
        const marked = rest.kind === 'choice' ? rest.answers : rest.signs
        return marked.filter(one => one.danger && !covered.has(`${id} ${one.id}`)).map(o => o.id)
      })
    })
    expect(covers.some).toBeGreaterThan(20)
  })
})

/** A rule that covers what it names, without exceptions: random ones seldom do. */
const strict = (rule: Rule): Rule => ({
  ...rule,
  unless: [],
  restUsual: false,
  claim: { kind: 'use-at-most', use: 'not-yet' }
})

/** Both give the same standing, and each standing is met. */
function agree(
  property: Property,
  truth: (tree: Tree) => boolean,
  trees: fc.Arbitrary<Tree>,
  numRuns: number
): void {
  const seen = { proved: 0, refuted: 0 }
  const compare = (tree: Tree) => {
    const { standing } = property.prove(new TreeDiagrams(tree), {}, undefined)
    expect(standing).toBe(truth(tree) ? 'proved' : 'refuted')
    seen[standing as 'proved']++
  }
  fc.assert(fc.property(trees, compare), { numRuns })
  expect(Math.min(seen.proved, seen.refuted)).toBeGreaterThan(5)
}

/** Both find the same at fault, and there is sometimes something and sometimes nothing to find. */
function agreeOn(
  property: Property,
  fact: string,
  trees: fc.Arbitrary<Tree>,
  numRuns: number,
  faulty: (tree: Tree) => readonly string[]
): void {
  const seen = { none: 0, some: 0 }
  const compare = (tree: Tree) => {
    const { findings } = property.prove(new TreeDiagrams(tree), {}, undefined)
    const wanted = faulty(tree)
    expect(findings.map(({ facts }) => String(facts[fact])).sort()).toEqual([...wanted].sort())
    seen[wanted.length > 0 ? 'some' : 'none']++
  }
  fc.assert(fc.property(trees, compare), { numRuns })
  expect(Math.min(seen.none, seen.some)).toBeGreaterThan(5)
}

/** The tree with one question of which every answer does and leads to the same. */
function dulled([tree, at]: readonly [Tree, number]): Tree {
  const ids = Object.keys(tree.questions)
  const id = ids[at % ids.length] as string
  const question = tree.questions[id]
  if (question?.kind !== 'choice') return tree
  const [first] = Object.values(question.answers)
  if (first === undefined) return tree
  const answers = Object.fromEntries(Object.keys(question.answers).map(key => [key, first]))
  return { ...tree, questions: { ...tree.questions, [id]: { ...question, answers } } }
}
