import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { editDistance, nearestNames } from '../../src/findings/nearest-name.ts'

const known = ['wet-film', 'wet-islands', 'dry-fuzzy', 'dry-leathery', 'nothing-yet']

describe('the name that was likely meant is offered', () => {
  test.each([
    ['wet-flim', 'wet-film'],
    ['wetfilm', 'wet-film'],
    ['dry-fuzy', 'dry-fuzzy'],
    ['Nothing-Yet', 'nothing-yet']
  ])('%s was meant to be %s', (given, meant) => {
    expect(nearestNames(given, known)[0]).toBe(meant)
  })

  test('nothing is offered where nothing is near', () => {
    expect(nearestNames('vinegar', known)).toEqual([])
  })

  test('at most three are offered, the nearest first', () => {
    expect(nearestNames('aa', ['aab', 'aac', 'aad', 'aae', 'ab'])).toEqual(['aab', 'aac', 'aad'])
  })

  test('a name of endless length is not measured', () => {
    expect(nearestNames('x'.repeat(100_000), known)).toEqual([])
  })

  test('two neighbours that are swapped count as one slip', () => {
    expect(editDistance('wiat', 'wait')).toBe(1)
  })

  test('the distance is nothing to itself, and the same both ways', () => {
    const name = fc.string({ maxLength: 12 })
    fc.assert(
      fc.property(name, name, (a, b) => {
        expect(editDistance(a, a)).toBe(0)
        expect(editDistance(a, b)).toBe(editDistance(b, a))
        expect(editDistance(a, b) === 0).toBe(a === b)
      })
    )
  })
})
