import { describe, expect, test } from 'vitest'
import { adviceFor } from '../../src/evaluate/advice.ts'
import { walk } from '../../src/evaluate/walk.ts'
import type { Answers } from '../../src/tree/answers.ts'
import { shippedTrees } from '../helpers/shipped.ts'
import { unfolded } from '../helpers/unfolded.ts'
import { usualExcept } from '../helpers/usual.ts'
import { choice, doubt, person, sign } from './told.ts'

const trees = await shippedTrees()
const outcomeOf = (id: string, told: Answers) => {
  const tree = trees.find(one => one.id === id)
  if (tree === undefined) throw new Error(`there is no tree ${id}`)
  const answers = usualExcept(tree, told)
  const { outcome, finished } = walk(tree, answers)
  expect(finished).toBe(true)
  return { outcome, advice: unfolded(adviceFor(tree, outcome, answers)) }
}

const kraut = choice('brine-kind')('sauerkraut')
const ill = sign('lead-signs')('signs-of-lead')

/** The vessel that may hold lead, as each tree asks after it. */
const LEAD: readonly (readonly [tree: string, told: Answers, doubted: Answers])[] = [
  ['kombucha-jar', sign('jar-signs')('lead-risk-vessel'), doubt('jar-signs')('lead-risk-vessel')],
  [
    'kombucha-culture',
    sign('culture-signs')('lead-risk-vessel'),
    doubt('culture-signs')('lead-risk-vessel')
  ],
  [
    'kombucha-bottle',
    sign('bottle-story')('lead-risk-vessel'),
    doubt('bottle-story')('lead-risk-vessel')
  ],
  [
    'brined-vegetables',
    { ...kraut, ...sign('jar-story')('old-pottery') },
    { ...kraut, ...doubt('jar-story')('old-pottery') }
  ],
  ...['milk-and-water-kefir', 'sourdough-starter', 'vinegar-mother', 'wild-sodas'].map(
    id => [id, sign('vessel-story')('old-pottery'), doubt('vessel-story')('old-pottery')] as const
  )
]

// Own caution, after FDA on traditional pottery and a published case of lead from kombucha.
describe.each(LEAD)('a vessel that may hold lead: %s', (id, told, doubted) => {
  test('whoever is well asks a doctor this week, and hears nothing of ten days', () => {
    const { outcome, advice } = outcomeOf(id, { ...told, ...person('someone-drank') })
    expect(outcome.person).toBe('ask-doctor')
    expect(advice.doNow).toContain('lead-test-for-all')
    expect(advice.doNow).not.toContain('watch-ten-days')
    expect(advice.doNow).not.toContain('well-after-a-bad-batch')
  })

  test.each(['at-risk-drank', 'young-drank'])('%s and well: Poison Help', who => {
    for (const vessel of [told, doubted]) {
      expect(outcomeOf(id, { ...vessel, ...person(who) }).outcome.person).toBe('poison-help')
    }
  })

  test('signs of lead are for a doctor today, who is told that it may be lead', () => {
    for (const vessel of [told, doubted]) {
      const { outcome, advice } = outcomeOf(id, { ...vessel, ...person('someone-drank'), ...ill })
      expect(outcome).toMatchObject({ person: 'doctor-today', use: 'never' })
      expect(advice.doNow).toContain('ask-for-a-lead-test')
      expect(advice.doNow).toContain('ask-health-department')
    }
  })

  test('nobody is asked for them where nobody had any', () => {
    const tree = trees.find(one => one.id === id)
    expect.assert(tree)
    const { trail } = walk(tree, usualExcept(tree, told))
    expect(trail.map(({ observation }) => observation)).not.toContain('lead-signs')
  })
})

const canned = choice('brine-kind')('canned')
const closed = choice('outside-kind')('canned-jar')

/** What may hold a toxin, and what is said of it to who answers 911. */
const TOXIN: readonly (readonly [tree: string, what: string, told: Answers, says: string])[] = [
  [
    'brined-vegetables',
    'food under oil in a warm room',
    { ...choice('brine-kind')('in-oil'), ...choice('oil-kept')('warm-or-over-four-days') },
    'say-possible-botulism'
  ],
  [
    'brined-vegetables',
    'home-made tofu ferment',
    choice('brine-kind')('fermented-tofu'),
    'say-possible-botulism'
  ],
  [
    'brined-vegetables',
    'a canned jar that bulges',
    { ...canned, ...sign('lid-and-glass')('lid-domed-or-leaking') },
    'say-possible-botulism'
  ],
  [
    'brined-vegetables',
    'press cake',
    choice('brine-kind')('press-cake-tempeh'),
    'say-what-was-eaten'
  ],
  [
    'outside-this-tool',
    'a canned jar that spurted',
    { ...closed, ...sign('closed-jar-signs')('spurted') },
    'say-possible-botulism'
  ],
  [
    'outside-this-tool',
    'oil or tofu',
    choice('outside-kind')('oil-or-tofu'),
    'say-possible-botulism'
  ],
  [
    'outside-this-tool',
    'press cake',
    choice('outside-kind')('press-cake-tempeh'),
    'say-what-was-eaten'
  ],
  [
    'kombucha-bottle',
    'closed without acid',
    { 'bottling-ph': { low: 4.8, reading: 4.9, high: 5 } },
    'say-possible-botulism'
  ],
  [
    'wild-sodas',
    'closed without acid',
    { ...choice('soda-kind')('soda-bottle'), 'soda-ph': { low: 4.8, reading: 4.9, high: 5 } },
    'say-possible-botulism'
  ]
]

// Gut signs belong to botulism: Government of Canada. That any one of them is an emergency is own caution.
describe.each(TOXIN)('%s, %s', (id, _, told, says) => {
  test.each(['mild-upset', 'illness-signs', 'headache-or-flushing'])(
    '%s is a call to 911',
    what => {
      const { outcome, advice } = outcomeOf(id, { ...told, ...person(what, 'someone-drank') })
      expect(outcome).toMatchObject({ person: 'emergency', use: 'never' })
      expect(advice.doNow[0]).toBe('call-911')
      expect(advice.doNow).toContain(says)
      expect(advice.doNow).toContain('others-who-had-some')
      const others = ['say-possible-botulism', 'say-what-was-eaten'].filter(one => one !== says)
      for (const other of [...others, 'watch-ten-days', 'call-poison-help']) {
        expect(advice.doNow).not.toContain(other)
      }
    }
  )

  test.each(['someone-drank', 'young-drank', 'at-risk-drank'])('%s and well: Poison Help', who => {
    const { outcome, advice } = outcomeOf(id, { ...told, ...person(who) })
    expect(outcome).toMatchObject({ person: 'poison-help', batch: 'possible-toxin' })
    expect(advice.doNow).toContain('bag-twice-and-keep-cold')
    expect(advice.doNow).not.toContain('bag-twice')
  })

  test('nobody had any: no verdict about people', () => {
    expect(outcomeOf(id, told).outcome.person).toBeNull()
  })
})

describe('an upset stomach after a raw, open ferment stays a call to Poison Help', () => {
  test.each([
    ['brined-vegetables', kraut],
    ['kombucha-jar', {}],
    ['milk-and-water-kefir', {}],
    ['wild-sodas', choice('soda-kind')('open-soda')]
  ] as const)('%s', (id, told) => {
    const { outcome } = outcomeOf(id, { ...told, ...person('mild-upset', 'someone-drank') })
    expect(outcome.person).toBe('poison-help')
  })
})
