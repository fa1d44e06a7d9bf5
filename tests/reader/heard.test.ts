import { describe, expect, test } from 'vitest'
import type { Fact, Told } from '../../src/reader/fact.ts'
import { without } from '../../src/reader/heard.ts'
import { shippedReader } from './shipped-reader.ts'

const sign = (observation: string, id: string, value = 'yes') =>
  ({ observation, answer: { [id]: value } }) as Fact

/** The facts of a call after one line and another. */
const hearing = (tree: string) => {
  const { reader } = shippedReader(tree)
  return (...lines: readonly string[]): readonly Fact[] =>
    lines
      .reduce<readonly Told[]>((facts, line) => {
        const { told, takenBack } = reader.hear(facts, reader.read(line))
        return [...without(facts, takenBack), ...told]
      }, [])
      .map(({ observation, answer }) => ({ observation, answer }))
}
const called = hearing('kombucha-jar')
const vinegar = hearing('vinegar-mother')
const bottle = hearing('kombucha-bottle')

describe('a later line takes back what it corrects', () => {
  test.each<[string, string, readonly Fact[]]>([
    [
      'it is hairy',
      'no wait, it is jelly',
      [{ observation: 'surface-texture', answer: 'wet-film' }]
    ],
    ['smells boozy', 'no it smells like vinegar', []],
    ['boozy', 'not boozy', [sign('smell-and-liquid', 'boozy', 'no')]],
    ['we drank it', 'no, nobody had any', [sign('drinkers', 'someone-drank', 'no')]],
    ['my grandma drank some', 'no, nobody had any', [sign('drinkers', 'someone-drank', 'no')]],
    ['fuzzy', 'no wait, no fuzz', []],
    ['maggots', 'sorry, no maggots', []],
    [
      'day 9',
      'sorry, day 12',
      [{ observation: 'day', answer: { low: 12, reading: 12, high: 12 } }]
    ],
    ['tiene moho', 'no, perdón, no era moho', []],
    ['la probamos', 'no, nadie la ha probado', [sign('drinkers', 'someone-drank', 'no')]]
  ])('%j, then %j', (first, second, facts) => {
    expect(called(first).length).toBeGreaterThan(0)
    expect(called(first, second)).toEqual(facts)
  })

  test('by what it is not', () => {
    expect(vinegar('smells like nail polish')).toEqual([sign('vinegar-smell', 'solvent')])
    expect(vinegar('smells like nail polish', 'not nail polish, vinegar')).toEqual(
      vinegar('not nail polish')
    )
  })

  test('and nothing else', () => {
    const told = called('day 9', 'maggots', 'boozy', 'no wait, day 12')
    expect(told).toContainEqual(sign('jar-signs', 'insects-inside'))
    expect(told).toContainEqual(sign('smell-and-liquid', 'boozy'))
  })

  test('of a whole screen only the sign that was meant', () => {
    const { reader } = shippedReader()
    const screen: Fact = {
      observation: 'smell-and-liquid',
      answer: { boozy: 'yes', musty: 'no', putrid: 'no' }
    }
    const { takenBack } = reader.hear([screen], reader.read('not boozy'))
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
    // A "no" about one place is none about another.
    ['fuzzy', 'no fuzz in the liquid'],
    ['maggots', 'no maggots'],
    ['my grandma drank some', 'nobody else had any'],
    ['my grandma drank some', 'nobody had any'],
    ['hairy', 'can I eat it if there is no fuzz'],
    // What only may be meant replaces no danger.
    ['hairy', 'no, it is white']
  ])('%j, then %j', (first, second) => {
    expect(called(first).length).toBeGreaterThan(0)
    expect(called(first, second)).toEqual(expect.arrayContaining([...called(first)]))
  })

  test('one sign of a danger denied leaves what was told in other words', () => {
    for (const second of ['it is not hissing', 'no, it is not hissing', 'no wait, not leaking']) {
      expect(called('the lid is bulging', second), second).toContainEqual(
        sign('container-signs', 'lid-bulging-or-hissing')
      )
    }
    expect(bottle('one is bulging', 'no, none of them leak')).toContainEqual(
      sign('bottle-signs', 'bulging')
    )
  })

  test('a danger marked by hand is taken off by hand', () => {
    const { reader } = shippedReader()
    const marked = sign('container-signs', 'lid-bulging-or-hissing')
    expect(reader.hear([marked], reader.read('no, not hissing')).takenBack).toEqual([])
  })

  test('what befalls a person stays told', () => {
    for (const [first, second] of [
      ['high fever', 'no, no fever'],
      ['she cannot breathe', 'no, wait, she can breathe'],
      ['throwing up blood', 'no she is not throwing up blood'],
      ['my kid drank bleach', 'no sorry, he drank kombucha']
    ] as const) {
      expect(called(first).length, first).toBeGreaterThan(0)
      expect(called(first, second), second).toEqual(expect.arrayContaining([...called(first)]))
    }
  })
})
