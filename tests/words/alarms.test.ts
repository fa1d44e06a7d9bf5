import { describe, expect, test } from 'vitest'
import { walk } from '../../src/evaluate/walk.ts'
import type { Answers } from '../../src/tree/answers.ts'
import { isAskedFromMemory } from '../../src/tree/caution.ts'
import type { Observation } from '../../src/tree/observation.ts'
import { alarmsOf } from '../../src/words/alarms.ts'
import { askKey, howKey } from '../../src/words/ask-key.ts'
import { createWords, type Words } from '../../src/words/words.ts'
import { loadShipped } from '../helpers/shipped.ts'

const { trees, words } = await loadShipped()
const [tree] = trees
if (tree === undefined) throw new Error('no tree loads')
const english = createWords(words, 'en')
const nobody = Object.fromEntries(
  tree.observations['people-signs']?.kind === 'signs'
    ? tree.observations['people-signs'].signs.map(({ id }) => [id, 'no' as const])
    : []
)
const alarms = (answers: Answers) => alarmsOf(tree, walk(tree, answers).outcome, english)
const container = (sign: string): Answers => ({
  'people-signs': nobody,
  'container-signs': {
    'burst-or-out-of-reach': 'no',
    'lid-bulging-or-hissing': 'no',
    'cracked-glass': 'no',
    'closed-too-long': 'no',
    'tight-lid': 'no',
    [sign]: 'yes'
  }
})

describe('what cannot wait is said while the walk goes on', () => {
  test('a jar that may burst, with the word that nobody goes back to look', () => {
    const [alarm] = alarms(container('burst-or-out-of-reach'))
    expect(alarm).toMatchObject({ id: 'pressure-hazard', signal: 'danger' })
    expect(alarm?.meanwhile).toContain('Do not go back to look')
  })

  test('a person who needs help today, before any question about the jar', () => {
    const ill = { 'people-signs': { ...nobody, 'illness-signs': 'yes' as const } }
    expect(alarms(ill).map(({ id }) => id)).toEqual(['doctor-today'])
  })

  test('a lid that is merely tight, and a doctor this week, can wait for the end', () => {
    expect(alarms(container('tight-lid'))).toEqual([])
    expect(
      alarms({ 'people-signs': nobody, drinkers: { 'at-risk-drank': 'yes' as const } })
    ).toEqual([])
  })
})

describe('nobody handles a jar under pressure to answer', () => {
  test.each(trees)('$id: what is asked of the jar and the batch can be asked from memory', tree => {
    const spanish = createWords(words, 'es')
    const asked = Object.values(tree.questions)
      .map(({ asks }) => asks)
      .filter(asks => tree.observations[asks]?.about !== 'person')
    const vague = (told: Words) =>
      asked.filter(asks => askKey(told, asks, true) === 'ui:recall.anything')
    expect(asked.length).toBeGreaterThan(0)
    expect({ en: vague(english), es: vague(spanish) }).toEqual({ en: [], es: [] })
  })

  test.each(trees)('$id: not one that may burst, nor one that is merely shut', tree => {
    const under = ['pressure-hazard', 'pressure-caution'].filter(id => tree.advice.verdicts[id])
    expect(under.length).toBeGreaterThan(0)
    expect(under.filter(id => !isAskedFromMemory(tree, id))).toEqual([])
    expect(isAskedFromMemory(tree, null)).toBe(false)
  })

  test('days are counted as they always are, and nothing sends anybody to the jar', () => {
    const [day, surface] = ['day', 'surface-texture'].map(
      id => tree.observations[id] as Observation
    )
    expect(howKey(english, day as Observation, true)).toBe('observations:day.how')
    expect(howKey(english, surface as Observation, true)).toBe('ui:hands-off')
    expect(howKey(english, surface as Observation, false)).toBe('observations:surface-texture.how')
  })
})
