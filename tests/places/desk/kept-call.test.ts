import fc from 'fast-check'
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import type { Fact } from '../../../src/evaluate/facts.ts'
import { dropCall, factsOf, keepCall, keptCall } from '../../../src/places/desk/kept-call.ts'
import { isInterval, signsOf } from '../../../src/tree/answers.ts'
import { measured } from '../../../src/tree/reading.ts'
import type { Tree } from '../../../src/tree/tree.ts'
import { rawCall } from '../../helpers/random-call.ts'
import { shippedTrees } from '../../helpers/shipped.ts'

const trees = await shippedTrees()
const [tree] = trees
expect.assert(tree !== undefined)
const fuzz = [{ observation: 'surface-texture', answer: 'dry-fuzzy' }]

let store: Map<string, string>
beforeEach(() => {
  store = new Map()
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => store.get(key) ?? null,
    setItem: (key: string, value: string) => void store.set(key, value),
    removeItem: (key: string) => void store.delete(key)
  })
})
afterEach(() => {
  vi.unstubAllGlobals()
})

/** A no to a sign that nobody asks for says nothing; a reading is as sure as its instrument. */
function asHeard(of: Tree, { observation, answer }: Fact): Fact {
  const about = of.observations[observation]
  if (about?.kind === 'measure' && typeof answer === 'object' && isInterval(answer)) {
    return { observation, answer: measured(about, answer.reading, answer.instrument) }
  }
  if (about?.kind !== 'signs') return { observation, answer }
  const never = new Set(about.signs.filter(({ volunteered }) => volunteered).map(({ id }) => id))
  const told = Object.entries(signsOf({ [observation]: answer }, observation))
  const heard = told.filter(([sign, value]) => value !== 'no' || !never.has(sign))
  return { observation, answer: Object.fromEntries(heard) }
}

const stored = () => [...store.values()].join()

describe.each(trees.map(each => [each.id, each] as const))(
  'an unfinished call about %s',
  (_, of) => {
    test('is kept with every fact about the jar and none about people', () => {
      const people = Object.values(of.observations).filter(({ about }) => about === 'person')
      fc.assert(
        fc.property(rawCall(of), facts => {
          store.clear()
          keepCall(of, 'en', facts)
          const aboutJar = facts.filter(
            ({ observation }) => of.observations[observation]?.about !== 'person'
          )
          const kept = keptCall()
          const heard = (told: readonly Fact[]) => told.map(fact => asHeard(of, fact))
          expect(heard(kept === null ? [] : factsOf(of, kept))).toEqual(heard(aboutJar))
          for (const { id } of people) expect(stored()).not.toContain(id)
        }),
        { numRuns: 100 }
      )
    })
  }
)

describe('what is kept', () => {
  test('is forgotten after half a day, and when it is dropped', () => {
    keepCall(tree, 'es', fuzz)
    expect(keptCall()).toMatchObject({ tree: tree.id, language: 'es' })
    expect(keptCall(Date.now() + 13 * 60 * 60 * 1000)).toBeNull()
    expect(stored()).toBe('')
    keepCall(tree, 'es', fuzz)
    dropCall()
    expect(keptCall()).toBeNull()
  })

  test.each(['{', 'null', '7', '{"tree":7}', '{"tree":"a","language":"en","facts":[7],"at":0}'])(
    'and makes no sense is no call: %s',
    text => {
      store.set('jarside-unfinished-call', text)
      expect(keptCall()).toBeNull()
    }
  )

  test('is nothing where the browser lets the page keep nothing', () => {
    const refuse = () => {
      throw new DOMException('blocked', 'SecurityError')
    }
    vi.stubGlobal('localStorage', { getItem: refuse, setItem: refuse, removeItem: refuse })
    keepCall(tree, 'en', fuzz)
    expect(keptCall()).toBeNull()
    dropCall()
  })
})
