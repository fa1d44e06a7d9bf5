import { describe, expect, test } from 'vitest'
import { textsIn } from '../../src/load/texts.ts'
import type { TextKey } from '../../src/words/text-key.ts'
import { createWords } from '../../src/words/words.ts'
import { loadShipped } from '../helpers/shipped.ts'

const { words } = await loadShipped()
const tags = Object.keys(words).filter(tag => tag !== 'en')

interface Pair {
  readonly key: TextKey
  readonly english: string
  readonly other: string | undefined
}

/** Every English text with its translation, as the files hold them. */
const pairsOf = (tag: string): readonly Pair[] =>
  Object.entries(words.en ?? {}).flatMap(([stem, group]) => {
    const translated = textsIn(words[tag]?.[stem])
    return [...textsIn(group)].map(([key, english]) => ({
      key: `${stem}:${key}` as TextKey,
      english,
      other: translated.get(key)
    }))
  })

describe.each(tags)('the words of %s say what the English say', tag => {
  const pairs = pairsOf(tag)
  const speaks = createWords(words, tag)

  test('every text is there, in the order of the English', () => {
    expect(pairs.length).toBeGreaterThan(500)
    expect(pairs.filter(({ other }) => other === undefined)).toEqual([])
    for (const [stem, group] of Object.entries(words.en ?? {})) {
      const english = [...textsIn(group).keys()]
      const others = [...textsIn(words[tag]?.[stem]).keys()]
      expect(others.filter(key => english.includes(key))).toEqual(english)
    }
  })

  test('every text is spoken in the language itself', () => {
    const whole = pairs.filter(({ english }) => !english.includes('{{'))
    for (const { key, other } of whole) expect(speaks.t(key)).toBe(other)
  })

  test('signal words of one language are four different words', () => {
    const ids = ['danger', 'warning', 'caution', 'notice'] as const
    const signals = ids.map(id => speaks.t(`ui:signal.${id}`))
    expect(new Set(signals).size).toBe(4)
    for (const signal of signals) expect(signal).toBe(signal.toLocaleUpperCase(tag))
  })
})
