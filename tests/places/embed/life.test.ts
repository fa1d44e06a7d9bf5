import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { assign, createMachine, initialTransition, transition } from 'xstate'
import {
  born,
  CHANGES,
  follow,
  LIFE,
  type LifeContext,
  type LifeEvent
} from '../../../src/places/embed/life.ts'

/** The same chart, read by the library whose form it is written in. */
const actions = Object.fromEntries(
  Object.entries(CHANGES).map(([name, change]) => [
    name,
    assign(({ context, event }: { context: LifeContext; event: LifeEvent }) =>
      change(context, event)
    )
  ])
)
const machine = createMachine(
  { ...structuredClone(LIFE), context: born('en').context } as never,
  { actions } as never
)

const first = { tag: 'en', question: { atMostMore: 3 } }
const rest = { tag: 'en', texts: {}, whole: {} }
const EVENTS = [
  { type: 'first-came', first },
  { type: 'first-failed' },
  { type: 'rest-came', rest },
  { type: 'rest-failed' },
  { type: 'drawings-came', drawings: { lid: '<svg/>' } },
  { type: 'answered', answers: { 'people-signs': {} } },
  { type: 'again' },
  { type: 'start-over' },
  { type: 'speak', language: 'es' }
] as unknown as readonly LifeEvent[]

const events = fc.array(fc.constantFrom(...EVENTS), { maxLength: 30 })

describe("an element's life", () => {
  test('goes as XState takes the chart, whatever comes in whatever order', () => {
    const seen = new Set<string>()
    fc.assert(
      fc.property(events, all => {
        let life = born('en')
        let [snapshot] = initialTransition(machine)
        for (const event of all) {
          life = follow(life, event)
          ;[snapshot] = transition(machine, snapshot, event as never)
          expect([life.at, life.context]).toEqual([snapshot.value, snapshot.context])
          seen.add(life.at)
        }
      }),
      { numRuns: 2000 }
    )
    expect([...seen].sort()).toEqual(Object.keys(LIFE.states).sort())
  })

  test('shows nothing that has not come, and runs on answers alone', () => {
    fc.assert(
      fc.property(events, all => {
        let life = born('en')
        for (const event of all) {
          life = follow(life, event)
          const { at, context } = life
          if (!['opening', 'not-opened'].includes(at)) expect(context.first).not.toBeNull()
          if (at === 'running' || at === 'ready') expect(context.rest).not.toBeNull()
          if (at === 'running' || at === 'waiting') expect(context.answers).not.toEqual({})
          if (at === 'first' || at === 'ready') expect(context.answers).toEqual({})
        }
      })
    )
  })

  test('tries once more by itself what failed before the reader answered', () => {
    const told = EVENTS.filter(({ type }) => type === 'first-came' || type === 'rest-failed')
    const lacking = told.reduce(follow, born('en'))
    expect(lacking.at).toBe('lacking')
    const answered = follow(lacking, { type: 'answered', answers: {} })
    expect([answered.at, answered.context.attempt]).toEqual(['waiting', 1])
  })
})
