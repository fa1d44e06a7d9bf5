import { describe, expect, test } from 'vitest'
import { load } from '../../src/load/load.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { projectWhere, wholeProject } from './project-files.ts'

const tree = async (files = wholeProject()): Promise<Tree> => {
  const { trees, findings } = await load(files)
  expect(findings).toEqual([])
  expect.assert(trees[0])
  return trees[0]
}
const nothing = { raise: [], use: 'as-directed', notes: [] }

describe('what authors leave out is made plain', () => {
  test('a piece is copied in under its name, and leaves where the tree says', async () => {
    const { start, questions } = await tree()
    expect(start).toBe('start-vessel')
    expect(questions['start-vessel']).toMatchObject({
      asks: 'vessel',
      otherwise: { ...nothing, leads: { to: 'growth' } }
    })
  })

  test('the notes of a piece join those of the tree', async () => {
    expect(Object.keys((await tree()).advice.notes)).toEqual([
      'cloudy',
      'look-again',
      'cloth-not-lid'
    ])
  })

  test('the rules of a piece are those of the tree, under its name', async () => {
    const files = projectWhere(
      'shared/pieces/start.yaml',
      'notes:',
      `rules:
  - { id: insects-are-discarded, when: { vessel: insects }, then: { use-is: never }, basis: published, because: guide }
notes:`
    )
    expect((await tree(files)).rules.map(({ id }) => id)).toEqual([
      'start-insects-are-discarded',
      'fuzz-is-discarded',
      'insects-are-discarded',
      'an-ordinary-jar-is-normal'
    ])
  })

  test('a sign without a word on doubt takes the screen’s', async () => {
    const { questions } = await tree()
    expect(questions['start-vessel']).toMatchObject({
      signs: {
        insects: { yes: { raise: ['discard'] }, unsure: { raise: ['wait'] } },
        cloudy: { yes: { raise: [], notes: ['cloudy'] }, unsure: { raise: ['wait'] } }
      }
    })
  })

  test('others serve every answer that is not listed, never unsure', async () => {
    const { questions } = await tree()
    expect(questions.growth).toMatchObject({
      answers: {
        fuzzy: { ...nothing, raise: ['discard'] },
        wrinkled: { ...nothing, leads: { to: 'acidity' } },
        wet: { ...nothing, leads: { to: 'acidity' } },
        unsure: { raise: ['wait'], leads: { to: 'side' } }
      }
    })
    expect(
      Object.keys(questions.growth?.kind === 'choice' ? questions.growth.answers : {})
    ).toEqual(['fuzzy', 'wrinkled', 'wet', 'unsure'])
  })

  test('a question like another answers like it, and its own keys win', async () => {
    const later = `  later:
    asks: acidity
    because: guide
    like: acidity
    ranges: [{ at-most: 4.6, end: normal }, { over: 4.6, end: discard }]
`
    const { questions } = await tree(
      projectWhere(
        'trees/jar/tree.yaml',
        /under: 7, end: wait([\s\S]*?)after:/,
        `under: 7, to: later$1${later}after:`
      )
    )
    expect(questions.later).toMatchObject({
      ranges: [{ range: { atMost: 4.6 }, leads: { end: 'normal' } }, { range: { over: 4.6 } }],
      borderline: { leads: { end: 'wait' } },
      unsure: { leads: { end: 'wait' } }
    })
  })

  test('a measure without a word on the borderline takes what unsure does', async () => {
    const { questions } = await tree()
    expect(questions.age).toMatchObject({ borderline: { leads: { end: 'wait' } } })
  })

  test('steps of the tree stand before those of the verdict, list by list', async () => {
    const files = projectWhere(
      'trees/jar/tree.yaml',
      'advice:\n',
      'advice:\n  discard: { keep: [keep-it], because: guide }\n'
    )
    const { advice } = await tree(files)
    expect(advice.verdicts.discard).toMatchObject({ doNow: ['throw-out'], keep: ['keep-it'] })
    expect(advice.verdicts.wait?.recheck).toEqual({ hours: [24, 48] })
  })

  test('verdicts stand by track, gentlest first, with ceiling and signal word', async () => {
    expect((await tree()).verdicts).toEqual([
      { id: 'ask-doctor', track: 'person', ceiling: 'as-directed', signal: 'notice' },
      { id: 'pressure', track: 'container', ceiling: 'not-yet', signal: 'caution' },
      { id: 'normal', track: 'batch', ceiling: 'as-directed', signal: 'none' },
      { id: 'wait', track: 'batch', ceiling: 'not-yet', signal: 'notice' },
      { id: 'discard', track: 'batch', ceiling: 'never', signal: 'caution' }
    ])
  })

  test('observations stand in the order in which a walk asks them', async () => {
    const { observations, questions } = await tree()
    expect(Object.keys(observations)).toEqual([
      'vessel',
      'growth',
      'side-look',
      'acidity',
      'age',
      'cover'
    ])
    expect(Object.keys(questions)).toEqual(['start-vessel', 'growth', 'side', 'acidity', 'age'])
  })

  test('rules in a file of their own join those in the tree', async () => {
    const rule = `rules:
  - id: young-waits
    when: { age: { under: 7 }, rest: usual }
    unless: [{ vessel: { insects: unsure } }]
    then: { use-at-most: not-yet }
    basis: own-caution
    because: guide
`
    const { rules } = await tree([...wholeProject(), { path: 'trees/jar/rules.yaml', text: rule }])
    expect(rules.at(-1)).toEqual({
      id: 'young-waits',
      when: [{ kind: 'measure', observation: 'age', is: { within: { under: 7 } } }],
      unless: [[{ kind: 'sign', observation: 'vessel', sign: 'insects', among: ['unsure'] }]],
      restUsual: true,
      claim: { kind: 'use-at-most', use: 'not-yet' },
      basis: 'own-caution',
      because: ['guide']
    })
  })
})
