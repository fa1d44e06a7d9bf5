import { existsSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { lookAlikesFor } from '../../src/tree/look-alikes.ts'
import { loadShipped } from '../helpers/shipped.ts'

const { trees, lookAlikes } = await loadShipped()

/** What is confused most, by the sheet on how callers describe jars; common practice, no source. */
const CONFUSED = [
  ['wet-film', 'early-mold'],
  ['flat-wrinkled-film', 'dry-fuzzy'],
  ['strands-or-sediment', 'dry-fuzzy'],
  ['wet-islands', 'dry-raised-circles'],
  ['brine-flat-film', 'brine-fuzz']
]

describe('what callers mix up stands side by side', () => {
  test.each(CONFUSED)('%s and %s', (one, other) => {
    expect(lookAlikes.some(pair => pair.one.above === one && pair.other.above === other)).toBe(true)
  })

  test.each(lookAlikes)('$id has its drawings, and a question that needs it', pair => {
    const drawings = [pair.one, pair.other].flatMap(({ above, side }) => [above, side ?? above])
    expect(drawings.filter(id => !existsSync(`shared/pictures/${id}.svg`))).toEqual([])
    // Both are seen the same ways, or they could not be compared.
    expect(pair.one.side === null).toBe(pair.other.side === null)
    for (const id of pair.trees.length < trees.length ? pair.trees : []) {
      const tree = trees.find(one => one.id === id)
      expect(pair.asked.some(asked => Object.hasOwn(tree?.observations ?? {}, asked))).toBe(true)
    }
  })

  test('at every question about fur, and at none about people', () => {
    for (const asked of ['surface-texture', 'side-light', 'surface-growth', 'mother-look']) {
      expect(lookAlikesFor(lookAlikes, asked).length).toBeGreaterThan(0)
    }
    expect(lookAlikesFor(lookAlikes, 'people-signs')).toEqual([])
  })
})
