import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { spaceOf, withValue } from '../../src/diagrams/space.ts'
import { TreeDiagrams } from '../../src/diagrams/tree-diagrams.ts'
import { walk } from '../../src/evaluate/walk.ts'
import type { Finding } from '../../src/findings/finding.ts'
import { createSession, type Session } from '../../src/machine/session.ts'
import { isUsual } from '../../src/prove/open.ts'
import { PROPERTIES, proveWith } from '../../src/prove/prove.ts'
import type { Answers } from '../../src/tree/answers.ts'
import { level, type Outcome, useLevel } from '../../src/tree/caution.ts'
import { TRACKS } from '../../src/tree/observation.ts'
import type { Rule, Tree } from '../../src/tree/tree.ts'
import { everySet, holdsClaim, sizeOf, speaks, valueIn } from '../helpers/brute-force.ts'
import { randomRule, randomTree } from '../helpers/random-tree.ts'
import { rule, sketch } from '../helpers/sketch.ts'

const ruled = randomTree
  .filter(tree => sizeOf(tree) <= 600)
  .chain(tree =>
    fc.array(randomRule(tree), { minLength: 1, maxLength: 3 }).map(rules => ({
      ...tree,
      rules: rules.map((each, index) => ({ ...each, id: `rule-${index}` })),
      advice: { ...tree.advice, unsureNote: { person: 'note-a' } }
    }))
  )

const findingsOn = (tree: Tree): readonly Finding[] =>
  proveWith(new TreeDiagrams(tree), {}, {}, PROPERTIES).flatMap(({ findings }) => findings)

/** The findings that a walk's outcome shows, by name. */
const ABOUT_OUTCOMES: readonly string[] = [
  'danger-uncovered',
  'listed-too-early',
  'rule-refuted',
  'second-answer-reassures',
  'unsure-danger-too-gentle',
  'unsure-person-note-missing',
  'unsure-reassures'
]

describe('what refutes a property can be walked', () => {
  test('on 300 random trees each witness shows its finding, walked and by the machine', () => {
    const seen = new Map<string, number>()
    fc.assert(
      fc.property(ruled, tree => {
        for (const finding of findingsOn(tree)) {
          const { code, answers } = finding
          // What is said of an outcome is held to the advice itself: said-agrees-with-advice.test.ts.
          if (answers === undefined || !ABOUT_OUTCOMES.includes(code)) continue
          const { finished, outcome } = walk(tree, answers)
          expect(finished).toBe(true)
          const session = createSession(tree, answers)
          expect([askedBy(session), session.evaluation().walk.outcome]).toEqual([null, outcome])
          expect([code, shows(tree, finding, answers)]).toEqual([code, true])
          seen.set(code, (seen.get(code) ?? 0) + 1)
        }
      }),
      { numRuns: 300 }
    )
    const often = [...seen].filter(([, times]) => times > 5).map(([code]) => code)
    expect(often.sort()).toEqual(ABOUT_OUTCOMES)
  })

  test('on 100 random trees no set that breaks a rule has fewer unusual answers', () => {
    let refuted = 0
    fc.assert(
      fc.property(ruled, tree => {
        for (const { code, facts, answers } of findingsOn(tree)) {
          if (code !== 'rule-refuted' || answers === undefined) continue
          const one = tree.rules.find(({ id }) => id === facts.rule) as Rule
          const breaking = [...everySet(tree)].filter(set => breaks(tree, one, set))
          const fewest = Math.min(...breaking.map(set => unusual(tree, set)))
          expect(unusual(tree, answers)).toBe(fewest)
          refuted++
        }
      }),
      { numRuns: 100 }
    )
    expect(refuted).toBeGreaterThan(50)
  })

  test('an emergency that a rule forgot is shown by the answer that ends the walk', () => {
    const severe = {
      kind: 'sign' as const,
      observation: 'people',
      sign: 'severe',
      among: ['yes'] as const
    }
    const tree = sketch(
      { people: { '?!severe': '+emergency ~never', else: '= normal-growth' } },
      {
        about: { people: 'person' },
        rules: [rule('mild', [severe], { kind: 'at-most', verdict: 'doctor-today' })]
      }
    )
    const finding = findingsOn(tree).find(({ code }) => code === 'rule-refuted')
    expect(finding?.witness).toEqual([{ observation: 'people', answer: 'severe' }])
    expect(createSession(tree, finding?.answers).evaluation().walk.outcome.person).toBe('emergency')
  })
})

const breaks = (tree: Tree, one: Rule, answers: Answers): boolean =>
  speaks(tree, one, answers) && !holdsClaim(tree, one.claim, walk(tree, answers))

function unusual(tree: Tree, answers: Answers): number {
  return spaceOf(tree).filter(
    variable => !isUsual(tree, variable, valueIn(tree, variable, answers))
  ).length
}

/** Whether some side of one outcome is gentler than that of another. */
const gentler = (tree: Tree, one: Outcome, other: Outcome): boolean =>
  useLevel(one.use) < useLevel(other.use) ||
  TRACKS.some(track => level(tree, track, one[track]) < level(tree, track, other[track]))

/** Whether the answers are what the finding says, judged by walks alone. */
function shows(tree: Tree, { code, facts }: Finding, answers: Answers): boolean {
  const { outcome } = walk(tree, answers)
  switch (code) {
    case 'rule-refuted':
      return breaks(tree, tree.rules.find(({ id }) => id === facts.rule) as Rule, answers)
    case 'danger-uncovered':
      return !tree.rules.some(
        one =>
          speaks(tree, one, answers) &&
          one.when.some(when => JSON.stringify(when).includes(`"${facts.answer}"`)) &&
          one.claim.kind === 'use-at-most' &&
          one.claim.use !== 'as-directed'
      )
    case 'unsure-reassures': {
      const variable = spaceOf(tree).find(
        one => one.observation === facts.observation && (one.sign ?? '') === facts.sign
      )
      const others = (variable?.values ?? []).map(value =>
        variable ? walk(tree, withValue(answers, variable, value)).outcome.use : 'as-directed'
      )
      return outcome.use === 'as-directed' && others.some(use => use !== 'as-directed')
    }
    case 'unsure-danger-too-gentle':
      return (
        outcome.use === 'as-directed' ||
        outcome.container === null ||
        level(tree, 'batch', outcome.batch) < level(tree, 'batch', 'wait-and-recheck')
      )
    case 'unsure-person-note-missing':
      return !outcome.notes.includes('note-a')
    case 'listed-too-early': {
      const later = walk(tree, { ...answers, [String(facts.observation)]: String(facts.next) })
      return gentler(tree, outcome, later.outcome)
    }
    case 'second-answer-reassures': {
      const { outcome: before } = walk(tree, { ...answers, [String(facts.settler)]: 'unsure' })
      return gentler(tree, outcome, before)
    }
    default:
      return false
  }
}

/** The question that waits; null once the walk is finished. */
const askedBy = (session: Session): string | null =>
  session.evaluation().walk.asks?.question ?? null
