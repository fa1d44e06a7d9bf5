import { describe, expect, test } from 'vitest'
import { adviceFor } from '../../src/evaluate/advice.ts'
import { walk } from '../../src/evaluate/walk.ts'
import type { Answers } from '../../src/tree/answers.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { shippedTrees } from '../helpers/shipped.ts'
import { unfolded } from '../helpers/unfolded.ts'
import { usualExcept } from '../helpers/usual.ts'
import { choice, person, sign } from './told.ts'

const trees = await shippedTrees()
const treeNamed = (id: string): Tree => {
  const tree = trees.find(one => one.id === id)
  if (tree === undefined) throw new Error(`there is no tree ${id}`)
  return tree
}
const kraut = choice('brine-kind')('sauerkraut')

/** In each tree the ways in which a batch goes out that may have harmed whoever had some. */
const BAD: readonly (readonly [tree: string, what: string, told: Answers])[] = [
  ['kombucha-jar', 'fuzz', choice('surface-texture')('dry-fuzzy')],
  ['kombucha-jar', 'mold taken off', sign('jar-signs')('mold-removed')],
  ['kombucha-jar', 'insects', sign('jar-signs')('insects-inside')],
  ['kombucha-jar', 'colored spots', choice('spots-and-color')('bright-on-top')],
  ['kombucha-jar', 'a rotten smell', sign('smell-and-liquid')('putrid')],
  ['kombucha-jar', 'insects beside eels', sign('jar-signs')('insects-inside', 'tiny-eels')],
  ['kombucha-culture', 'fuzz', choice('surface-texture')('dry-fuzzy')],
  ['kombucha-culture', 'insects', sign('culture-signs')('insects-inside')],
  ['kombucha-bottle', 'fuzz', choice('bottle-growth')('fuzz')],
  ['kombucha-bottle', 'a moldy jar', sign('bottle-story')('jar-had-mold')],
  ['brined-vegetables', 'fuzz', { ...kraut, ...choice('surface-growth')('dry-fuzzy') }],
  ['brined-vegetables', 'insects', { ...kraut, ...sign('jar-story')('insects-inside') }],
  ['milk-and-water-kefir', 'fuzz', choice('surface-growth')('dry-fuzzy')],
  ['milk-and-water-kefir', 'a rotten smell', sign('kefir-signs')('putrid')],
  ['sourdough-starter', 'fuzz', choice('surface-growth')('dry-fuzzy')],
  ['sourdough-starter', 'pink dough', choice('dough-color')('pink-or-orange-streak')],
  ['vinegar-mother', 'fuzz', choice('surface-growth')('dry-fuzzy')],
  ['vinegar-mother', 'spots on the mother', choice('mother-look')('colored-spots')],
  ['wild-sodas', 'fuzz', choice('surface-growth')('dry-fuzzy')],
  ['wild-sodas', 'colored spots', sign('soda-signs')('colored-spots')],
  ['wild-sodas', 'a rotten smell', sign('soda-signs')('rotten')]
]

/** What is thrown out for other reasons: nobody watches for what mold may do. */
const OTHERWISE: readonly (readonly [tree: string, what: string, told: Answers])[] = [
  ['kombucha-jar', 'eels', sign('jar-signs')('tiny-eels')],
  ['kombucha-jar', 'a metal vessel', sign('jar-signs')('bare-metal-vessel')],
  ['kombucha-culture', 'eels', sign('culture-signs')('tiny-eels')],
  ['kombucha-bottle', 'a metal vessel', sign('bottle-story')('bare-metal-vessel')],
  ['brined-vegetables', 'a metal vessel', { ...kraut, ...sign('jar-story')('reactive-metal') }],
  ['milk-and-water-kefir', 'a metal vessel', sign('vessel-story')('reactive-metal')],
  ['sourdough-starter', 'a metal vessel', sign('vessel-story')('reactive-metal')],
  ['vinegar-mother', 'a metal vessel', sign('vessel-story')('reactive-metal')],
  ['wild-sodas', 'a metal vessel', sign('vessel-story')('reactive-metal')],
  [
    'wild-sodas',
    'cracked glass',
    { ...choice('soda-kind')('ginger-bug'), ...sign('container-signs')('cracked-glass') }
  ]
]

const outcomeOf = (id: string, told: Answers) => {
  const tree = treeNamed(id)
  const answers = usualExcept(tree, told)
  const { outcome, finished } = walk(tree, answers)
  expect(finished).toBe(true)
  return { outcome, advice: unfolded(adviceFor(tree, outcome, answers)) }
}

// Own caution: healthy adults keep the verdict of the batch, and hear what to do before all else.
describe.each(BAD)('%s, %s', (id, _, told) => {
  test('whoever is well hears it as the first step, and no verdict', () => {
    const { outcome, advice } = outcomeOf(id, { ...told, ...person('someone-drank') })
    expect(outcome).toMatchObject({ person: null, use: 'never' })
    expect(advice.doNow[0]).toBe('well-after-a-bad-batch')
  })

  test.each(['at-risk-drank', 'young-drank'])('%s is a call to Poison Help', who => {
    const { outcome, advice } = outcomeOf(id, { ...told, ...person(who, 'someone-drank') })
    expect(outcome.person).toBe('poison-help')
    expect(advice.doNow[0]).toBe('call-poison-help')
    expect(advice.doNow.includes('care-team-today')).toBe(who === 'at-risk-drank')
    expect(advice.doNow).not.toContain('well-after-a-bad-batch')
  })

  test.each(['mild-upset', 'illness-signs'])('%s is not told what the well do', ill => {
    const { advice } = outcomeOf(id, { ...told, ...person(ill, 'someone-drank') })
    expect(advice.doNow).not.toContain('well-after-a-bad-batch')
    expect(advice.doNow).not.toContain('well-and-called')
    expect(advice.doNow).toContain('ask-health-department')
  })

  test('nobody had any: nobody is told anything about it', () => {
    const { outcome, advice } = outcomeOf(id, told)
    expect(outcome.person).toBeNull()
    expect(advice.doNow).not.toContain('well-after-a-bad-batch')
  })
})

describe.each(OTHERWISE)('%s, %s', (id, _, told) => {
  test('whoever is well hears nothing of ten days', () => {
    const { outcome, advice } = outcomeOf(id, { ...told, ...person('someone-drank') })
    expect(outcome).toMatchObject({ person: null, batch: 'discard-and-sanitize' })
    expect(advice.doNow).not.toContain('well-after-a-bad-batch')
  })

  test('at higher risk it is still a call', () => {
    expect(outcomeOf(id, { ...told, ...person('at-risk-drank') }).outcome.person).toBe(
      'poison-help'
    )
  })
})

describe('a cleaner is a call for everybody', () => {
  test.each([
    ['kombucha-jar', sign('jar-signs')],
    ['kombucha-culture', sign('culture-signs')],
    ['kombucha-bottle', sign('bottle-story')],
    ['milk-and-water-kefir', sign('vessel-story')],
    ['sourdough-starter', sign('vessel-story')],
    ['vinegar-mother', sign('vessel-story')],
    ['wild-sodas', sign('vessel-story')]
  ])('%s', (id, story) => {
    for (const who of ['someone-drank', 'young-drank', 'at-risk-drank']) {
      const told = { ...story('cleaner-got-in'), ...person(who) }
      expect(outcomeOf(id, told).outcome.person, who).toBe('poison-help')
      expect(outcomeOf(id, told).advice.doNow).not.toContain('well-after-a-bad-batch')
    }
  })
})
