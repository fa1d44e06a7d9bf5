import { describe, expect, test } from 'vitest'
import type { Fact } from '../../../src/words/facts/fact.ts'
import { heard, without } from '../../../src/words/facts/heard.ts'
import { shippedReader } from './shipped-reader.ts'

const { reader } = shippedReader()
const sign = (observation: string, id: string, value = 'yes') =>
  ({ observation, answer: { [id]: value } }) as Fact

/** The facts of a call after one line and another. */
function after(...lines: readonly string[]): readonly Fact[] {
  return lines.reduce<readonly Fact[]>((facts, line) => {
    const { told, takenBack } = heard(facts, reader.read(line))
    return [...without(facts, takenBack), ...told]
  }, [])
}

describe('a later line takes back what it corrects', () => {
  test.each<[string, string, readonly Fact[]]>([
    ['it is hairy', 'no wait, it is jelly', [{ observation: 'surface-texture', answer: 'wet-film' }]],
    ['smells boozy', 'no it smells like vinegar', []],
    ['boozy', 'not boozy', [sign('smell-and-liquid', 'boozy', 'no')]],
    ['we drank it', 'no, nobody had any', [sign('people-signs', 'someone-drank', 'no')]],
    ['my grandma drank some', 'no, nobody had any', [sign('people-signs', 'someone-drank', 'no')]],
    ['fuzzy', 'no fuzz', []],
    ['day 9', 'sorry, day 12', [{ observation: 'day', answer: { low: 12, reading: 12, high: 12 } }]],
    ['tiene moho', 'no, perdón, no era moho', []]
  ])('%j, then %j', (first, second, facts) => {
    expect(after(first).length).toBeGreaterThan(0)
    expect(after(first, second)).toEqual(facts)
  })

  test('and nothing else', () => {
    const told = after('day 9', 'maggots', 'boozy', 'no wait, day 12')
    expect(told).toContainEqual(sign('jar-signs', 'insects-inside'))
    expect(told).toContainEqual(sign('smell-and-liquid', 'boozy'))
  })

  test('of a whole screen only the sign that was meant', () => {
    const screen: Fact = {
      observation: 'smell-and-liquid',
      answer: { boozy: 'yes', musty: 'no', putrid: 'no' }
    }
    const { takenBack } = heard([screen], reader.read('not boozy'))
    expect(takenBack).toEqual([sign('smell-and-liquid', 'boozy')])
    expect(without([screen], takenBack)).toEqual([
      { observation: 'smell-and-liquid', answer: { musty: 'no', putrid: 'no' } }
    ])
  })
})

describe('what is not a correction takes nothing back', () => {
  test.each([
    ['hairy', 'jelly'],
    ['ph 3.1', 'ph 3.4'],
    ['maggots', 'no maggots? I am not sure'],
    ['hairy', 'can I eat it if there is no fuzz']
  ])('%j, then %j', (first, second) => {
    expect(after(first, second)).toEqual(expect.arrayContaining([...after(first)]))
  })

  test('what befalls a person stays told', () => {
    for (const [first, second] of [
      ['high fever', 'no, no fever'],
      ['she cannot breathe', 'no, wait, she can breathe'],
      ['throwing up blood', 'no she is not throwing up blood']
    ] as const) {
      expect(after(first, second), second).toEqual(expect.arrayContaining([...after(first)]))
    }
  })
})
