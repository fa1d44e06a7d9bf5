import { describe, expect, test } from 'vitest'
import { adviceFor } from '../../src/evaluate/advice.ts'
import { reportOf } from '../../src/report/report.ts'
import { NOTHING_YET, type Outcome } from '../../src/tree/caution.ts'
import { changesKeptFood } from '../../src/tree/does.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { say } from '../../src/words/say.ts'
import { createWords } from '../../src/words/words.ts'
import { loadShipped } from '../helpers/shipped.ts'

const { trees, sources, words } = await loadShipped()
const jar = trees.find(({ id }) => id === 'kombucha-jar') as Tree
const asked = (tree: Tree, outcome: Partial<Outcome>) =>
  adviceFor(tree, { ...NOTHING_YET, ...outcome }, {}).followUps.map(({ id }) => id)
const moldy = { batch: 'likely-mold', use: 'never' } as const

/** What callers ask afterwards, by the verdict after which each must be answered. */
const WANTED: Readonly<Record<string, readonly string[]>> = {
  'likely-mold': [
    'scooping-it-off',
    'rinsing-the-culture',
    'baking-or-boiling-it',
    'bottles-already-filled',
    'other-jars-nearby',
    'the-piece-i-gave-away',
    'the-dog',
    'the-compost',
    'had-it-all-week'
  ],
  'discard-and-sanitize': [
    'baking-or-boiling-it',
    'bottles-already-filled',
    'the-piece-i-gave-away',
    'the-dog',
    'the-compost',
    'had-it-all-week'
  ],
  'normal-growth': ['the-dog', 'had-much-of-it']
}

describe('what callers ask once they know is answered where it fits', () => {
  test.each(Object.entries(WANTED))('after %s of a jar', (batch, wanted) => {
    expect(asked(jar, { batch })).toEqual(expect.arrayContaining([...wanted]))
  })

  test('each stands behind some verdict that its tree gives', () => {
    for (const tree of trees) {
      const given = new Set(tree.verdicts.map(({ id }) => id))
      for (const { id, after } of tree.advice.followUps) {
        expect(
          after.filter(verdict => given.has(verdict)),
          `${tree.id}: ${id}`
        ).not.toEqual([])
      }
    }
  })

  test('mold on vegetables says that we are stricter than some recipes', () => {
    const vegetables = trees.find(({ id }) => id === 'brined-vegetables') as Tree
    expect(asked(vegetables, moldy)).toContain('scooping-it-off-the-brine')
    expect(asked(vegetables, moldy)).not.toContain('scooping-it-off')
  })
})

describe('no answer sends anybody where they should not go', () => {
  test('nothing is offered in an emergency', () => {
    expect(asked(jar, { ...moldy, person: 'emergency' })).toEqual([])
  })

  test('beside a jar that may burst only the gas is spoken of', () => {
    expect(asked(jar, { ...moldy, container: 'pressure-hazard' })).toEqual(['letting-the-gas-out'])
  })

  test('while somebody is ill none says to throw anything away', () => {
    const told = asked(jar, { ...moldy, person: 'doctor-today', notes: ['somebody-is-ill'] })
    expect(told).toContain('scooping-it-off')
    expect(told).not.toContain('bottles-already-filled')
    const english = createWords(words, 'en')
    const ill = trees.flatMap(({ advice }) =>
      advice.followUps.filter(({ does }) => !changesKeptFood(does))
    )
    for (const { id } of ill) {
      const answer = english.t(`follow-ups:${id}.answer`)
      expect(answer, id).not.toMatch(/throw|bag it|\bbin\b/i)
    }
  })

  test('each is told with its sources, in every language', () => {
    for (const tag of Object.keys(words)) {
      const outcome = { ...NOTHING_YET, ...moldy }
      const report = reportOf(jar, outcome, null, new Date('2026-11-25'))
      const { followUps } = say(report, createWords(words, tag), sources)
      expect(followUps.length).toBeGreaterThan(8)
      for (const { ask, answer, sources } of followUps) {
        expect(ask).toMatch(/[?？؟]$/)
        // Chinese says as much in a third of the signs.
        expect(answer.length).toBeGreaterThan(tag === 'zh' ? 20 : 60)
        expect(sources.length).toBeGreaterThan(0)
      }
    }
  })
})
