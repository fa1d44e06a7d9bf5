import { describe, expect, test } from 'vitest'
import { possible } from '../../src/evaluate/possible.ts'
import { mostScreens } from '../../src/evaluate/progress.ts'
import { walk } from '../../src/evaluate/walk.ts'
import { figuresAsAsked } from '../../src/figures/figures.ts'
import { answerSets, prove } from '../../src/prove/prove.ts'
import type { Answers } from '../../src/tree/answers.ts'
import { noneOf } from '../../src/tree/tell.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { isUpperBound } from '../../src/tree/upper-bound.ts'
import { loadShipped } from '../helpers/shipped.ts'
import { usualExcept } from '../helpers/usual.ts'

const { trees, places, sources } = await loadShipped()
const tree = trees.find(({ id }) => id === 'kombucha-jar') as Tree

describe('the rules of the tree', () => {
  test('are all proved over the whole answer space', () => {
    const all = prove(tree, places[tree.id], sources)
    expect(all.filter(({ standing }) => standing !== 'proved')).toEqual([])
    expect(answerSets(tree)).toBeGreaterThan(10n ** 15n)
  })

  test('number at least thirty, a quarter of them upper bounds', () => {
    const upper = tree.rules.filter(({ claim }) => isUpperBound(claim))
    expect(tree.rules.length).toBeGreaterThanOrEqual(30)
    expect(upper.length).toBeGreaterThanOrEqual(tree.rules.length / 4)
  })

  test('each say what they rest on', () => {
    expect(tree.rules.filter(({ because }) => because.length === 0)).toEqual([])
  })
})

describe('a call stays short', () => {
  // Thirteen only where somebody had some from a vessel that may hold lead: its signs are asked for.
  test('no walk asks more than fourteen things', () => {
    const { method, screens } = figuresAsAsked(tree)
    expect(method.kind).toBe('exact')
    expect(screens.longest).toBeLessThanOrEqual(14)
    // What a caller is told beforehand may be one too many, never too few.
    expect(mostScreens(tree)).toBeLessThanOrEqual(15)
  })

  test('mold is settled after four screens, and whom to call after a fifth', () => {
    const screens = ['people-signs', 'container-signs', 'jar-signs'].reduce<Answers>((so, id) => {
      const observation = tree.observations[id]
      return observation?.kind === 'signs' ? noneOf(so, observation) : so
    }, {})

    const moldy = { ...screens, 'surface-texture': 'dry-fuzzy' }
    const after = possible(tree, moldy)
    expect(after.batch).toEqual(['likely-mold'])
    expect(after.use).toEqual(['never'])
    expect(after.settled).toBe(false)

    const { drinkers } = tree.observations
    expect.assert(drinkers?.kind === 'signs')
    expect(possible(tree, noneOf(moldy, drinkers)).settled).toBe(true)
  })
})

describe('an emergency comes before everything', () => {
  const emergency: Answers = { 'people-signs': { 'severe-symptoms': 'yes' } }

  test('it ends the walk while the signs beside it are open', () => {
    expect(walk(tree, emergency)).toMatchObject({
      finished: true,
      outcome: { person: 'emergency', container: null, batch: null, use: 'never' }
    })
  })

  test('whatever else is told, the jar stays unspoken', () => {
    const all = usualExcept(tree, { ...emergency, 'surface-texture': 'dry-fuzzy' })
    expect(walk(tree, all).outcome).toMatchObject({ person: 'emergency', batch: null })
  })

  test('with that sign set aside the jar is judged on a second walk', () => {
    const aside = usualExcept(tree, { 'surface-texture': 'dry-fuzzy' })
    expect(walk(tree, aside).outcome.batch).toBe('likely-mold')
  })
})
