import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import type { Fact } from '../../src/reader/fact.ts'
import { isInterval } from '../../src/tree/answers.ts'
import { EMERGENCY, emergencySigns } from '../../src/tree/emergency.ts'
import { shippedReader, suggested, TREES } from './shipped-reader.ts'

interface Line {
  readonly says: string
  /** Everything that is taken. */
  readonly takes?: readonly string[]
  /** What is among the offers. */
  readonly offers?: readonly string[]
  /** The parts that only ask. */
  readonly asks?: readonly string[]
}

/** What "everyone is fine" answers of the people: neither who had some nor who is at higher risk. */
const ILL = [
  'bad-headache',
  'headache-or-flushing',
  'illness-signs',
  'mild-upset',
  'severe-symptoms'
]

/** A fact in a line's own notation: `day: 9`, `jar-ph: 3.2 meter`, `jar-signs.tiny-eels: yes`. */
function written({ observation, answer }: Fact): string {
  if (typeof answer === 'string') return `${observation}: ${answer}`
  if (isInterval(answer))
    return [`${observation}: ${answer.reading}`, answer.instrument].filter(Boolean).join(' ')
  const [[sign, value] = ['', ''], ...others] = Object.entries(answer)
  if (Object.keys(answer).sort().join() === ILL.join()) return `${observation}: nobody ill`
  return others.length > 0 ? `${observation}: none` : `${observation}.${sign}: ${value}`
}

describe.each(TREES)('calls about %s', id => {
  const { tree, reader } = shippedReader(id)
  const file = join(import.meta.dirname, 'calls', `${id}.yaml`)
  const calls = parse(readFileSync(file, 'utf8')) as Record<string, readonly Line[]>
  const lines = Object.values(calls).flat()

  test('are ten lines and more in each language', () => {
    expect(Object.keys(calls)).toEqual(['en', 'es'])
    for (const some of Object.values(calls)) expect(some.length).toBeGreaterThanOrEqual(10)
  })

  test.each(lines.map(line => [line.says, line] as const))('%s', (says, line) => {
    const fragments = reader.read(says)
    const facts = (sure: boolean) =>
      fragments
        .flatMap(({ candidates }) => candidates.filter(each => each.sure === sure))
        .map(written)
    expect([...new Set(facts(true))].sort()).toEqual([...(line.takes ?? [])].sort())
    expect(facts(false)).toEqual(expect.arrayContaining([...(line.offers ?? [])]))
    const asks = fragments.filter(({ problem }) => problem === 'asked')
    expect(asks.map(({ text }) => text)).toEqual(line.asks ?? [])
    expect(asks.flatMap(({ candidates }) => candidates)).toEqual([])
  })

  test('offer no emergency that the line does not hold', () => {
    const emergencies = new Set(
      emergencySigns(tree)
        .filter(({ effect }) => effect.raise.includes(EMERGENCY))
        .map(({ observation, sign }) => `${observation}.${sign}: yes`)
    )
    expect(emergencies.size).toBeGreaterThan(0)
    for (const { says, takes = [], offers = [] } of lines) {
      const held = [...takes, ...offers]
      const shown = reader
        .read(says)
        .flatMap(({ candidates }) => candidates)
        .map(written)
        .filter(fact => emergencies.has(fact) && !held.includes(fact))
      expect(shown, says).toEqual([])
    }
  })

  test('offer none for what is harmless, nor while it is typed', () => {
    const harmless = [
      'dark brown',
      'cloudy',
      '65 F',
      'with a little liquid',
      'water on top',
      'capa lisa transparente',
      'can i still start a batch with it',
      'can she use it for canning',
      'it is right here',
      'i see bubbles',
      'eyes on it'
    ]
    const grave = new Set(
      (tree.observations['people-signs']?.kind === 'signs'
        ? tree.observations['people-signs'].signs
        : []
      )
        .filter(({ danger }) => danger)
        .map(sign => `people-signs.${sign.id}: yes`)
    )
    for (const line of harmless) {
      const found = [
        ...reader.read(line).flatMap(({ candidates }) => candidates),
        ...suggested(reader, line)
      ]
      expect(
        found.map(written).filter(fact => grave.has(fact)),
        line
      ).toEqual([])
    }
  })
})
