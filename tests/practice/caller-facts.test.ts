import { describe, expect, test } from 'vitest'
import { callerFacts, mistakenIn, outcomeFor } from '../../src/practice/caller-facts.ts'
import { must } from '../../src/tree/must.ts'
import { loadShipped } from '../helpers/shipped.ts'

const { trees, practice } = await loadShipped()
const played = (id: string) => {
  const caller = must(
    practice.find(each => each.id === id),
    id
  )
  return {
    tree: must(
      trees.find(each => each.id === caller.tree),
      caller.tree
    ),
    caller
  }
}

describe('what decided a call', () => {
  test('is the fur, not the pH that the caller is proud of', () => {
    const { tree, caller } = played('white-fuzz')
    const facts = callerFacts(tree, caller.answers, {})
    expect(facts.filter(({ decides }) => decides)).toEqual([
      { observation: 'surface-texture', answer: 'dry-fuzzy', decides: true, entered: 'not' }
    ])
  })

  test('of two dangers is each that alone brings its verdict', () => {
    const { tree, caller } = played('spots-in-the-jar')
    const deciding = callerFacts(tree, caller.answers, {}).filter(({ decides }) => decides)
    expect(deciding.map(({ answer }) => answer)).toContainEqual({ 'young-drank': 'yes' })
    expect(deciding.map(({ answer }) => answer)).toContainEqual({ 'colored-spots': 'yes' })
  })

  test.each(practice.map(({ id }) => id))('of %s is found where it is not an ordinary one', id => {
    const { tree, caller } = played(id)
    const facts = callerFacts(tree, caller.answers, caller.answers)
    const { notes: _, ...expected } = outcomeFor(tree, caller.answers)
    const { notes: __, ...ordinary } = outcomeFor(tree, {})
    const differs = JSON.stringify(expected) !== JSON.stringify(ordinary)
    if (differs) expect(facts.some(({ decides }) => decides)).toBe(true)
    expect(facts.every(({ entered }) => entered === 'so')).toBe(true)
  })
})

describe('what a volunteer entered', () => {
  test('is held against what the caller says', () => {
    const { tree, caller } = played('white-fuzz')
    const entered = {
      'surface-texture': 'wet-film',
      'jar-signs': { 'insects-inside': 'yes', 'tiny-eels': 'no' },
      'spots-and-color': 'dark-on-top',
      'looked-before': 'first-look'
    } as const
    const [fur] = callerFacts(tree, caller.answers, entered)
    expect(fur).toMatchObject({ observation: 'surface-texture', entered: 'otherwise' })
    expect(mistakenIn(tree, caller.answers, entered)).toEqual([
      { observation: 'jar-signs', answer: { 'insects-inside': 'yes' } },
      { observation: 'spots-and-color', answer: 'dark-on-top' }
    ])
  })
})
