import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type CallEvent, callMachine, createCalls } from '../../src/machine/calls.ts'

const fact = { observation: 'people-signs', answer: { 'mild-upset': 'yes' } } as const
const EVENTS: readonly CallEvent[] = [
  { type: 'tell' },
  { type: 'answer' },
  { type: 'choose', tree: 'two', facts: [fact] },
  { type: 'choose', tree: 'one', facts: [] },
  { type: 'speak', language: 'es' },
  { type: 'next-call' }
]
const events = fc.array(fc.constantFrom(...EVENTS), { maxLength: 25 })

describe('a desk from call to call', () => {
  test('types until a question is answered, and from the next fact, tree or call on again', () => {
    const seen = new Set<boolean>()
    fc.assert(
      fc.property(events, all => {
        const desk = createCalls('en', 'one')
        expect(desk.view().typing).toBe(true)
        for (const event of all) desk.send(event)
        const last = all.findLast(({ type }) => type !== 'speak')
        expect(desk.view().typing).toBe(last?.type !== 'answer')
        seen.add(desk.view().typing)
      })
    )
    expect(seen.size).toBe(Object.keys(callMachine.config.states ?? {}).length)
  })

  test('leaves the next caller the tree, and nothing of the one before', () => {
    fc.assert(
      fc.property(events, all => {
        const desk = createCalls('en', 'one')
        for (const event of all) desk.send(event)
        const { tree, calls } = desk.view()
        desk.send({ type: 'next-call' })
        expect(desk.view()).toMatchObject({ tree, facts: [], caller: 'en', calls: calls + 1 })
        expect(JSON.stringify(desk.view())).not.toContain('mild-upset')
      })
    )
  })

  test('keeps the facts and the language when another tree is chosen', () => {
    const desk = createCalls('en', 'one')
    desk.send({ type: 'speak', language: 'es' })
    desk.send({ type: 'choose', tree: 'two', facts: [fact] })
    expect(desk.view()).toMatchObject({ tree: 'two', facts: [fact], caller: 'es', asked: 2 })
  })

  test('is told of each change until nobody listens any more', () => {
    const desk = createCalls('en', null)
    let heard = 0
    const deaf = desk.subscribe(() => {
      heard += 1
    })
    desk.send({ type: 'answer' })
    deaf()
    desk.send({ type: 'tell' })
    expect(heard).toBe(1)
  })
})
