import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { walk } from '../../src/evaluate/walk.ts'
import { createSession, type Session } from '../../src/machine/session.ts'
import type { Answer } from '../../src/tree/answers.ts'
import { completeAnswers, randomTree } from '../helpers/random-tree.ts'
import { sketch } from '../helpers/sketch.ts'

describe('a session holds nothing but the answers told', () => {
  test('after any tellings and takings back it stands where a fresh one would', () => {
    const acts = randomTree.chain(tree =>
      fc.tuple(
        fc.constant(tree),
        completeAnswers(tree),
        fc.array(fc.tuple(fc.constantFrom(...Object.keys(tree.observations)), fc.boolean()), {
          maxLength: 12
        })
      )
    )
    fc.assert(
      fc.property(acts, ([tree, all, told]) => {
        const session = createSession(tree)
        for (const [id, back] of told) {
          if (back) session.withdraw(id)
          else session.observe(id, all[id] as Answer)
        }
        const fresh = walk(tree, session.evaluation().answers)

        expect(askedBy(session)).toBe(fresh.asks?.question ?? null)
        expect(session.evaluation().walk.outcome).toEqual(fresh.outcome)
      }),
      { numRuns: 300 }
    )
  })

  test('a sign told leaves the other signs of its screen open', () => {
    const tree = sketch({
      insects: { '?!inside': '+discard-and-sanitize', '?eels': '', else: '= normal-growth' }
    })
    const session = createSession(tree)

    session.observe('insects', { inside: 'yes' })
    expect(askedBy(session)).toBe('insects')
    session.observe('insects', { eels: 'no' })

    expect(askedBy(session)).toBeNull()
    expect(session.evaluation().walk.outcome.batch).toBe('discard-and-sanitize')
  })

  test('an answer told in place of another leaves none of its signs', () => {
    const tree = sketch({
      insects: { '?!inside': '+discard-and-sanitize', '?eels': '', else: '= normal-growth' }
    })
    const session = createSession(tree, { insects: { inside: 'yes', eels: 'no' } })

    session.replace('insects', { eels: 'no' })

    expect(session.evaluation().answers).toEqual({ insects: { eels: 'no' } })
    expect(askedBy(session)).toBe('insects')
  })

  test('those who listen hear every telling until they stop', () => {
    const session = createSession(
      sketch({ color: { pink: '= discard-and-sanitize', unsure: '= wait-and-recheck' } })
    )
    const heard: (string | null)[] = []
    const stop = session.subscribe(() => heard.push(askedBy(session)))

    session.observe('color', 'pink')
    stop()
    session.withdraw('color')

    expect(heard).toEqual([null])
  })
})

/** The question that waits; null once the walk is finished. */
const askedBy = (session: Session): string | null =>
  session.evaluation().walk.asks?.question ?? null
