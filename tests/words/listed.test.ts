import { describe, expect, test } from 'vitest'
import { listedText } from '../../src/words/listed.ts'
import { loadShipped } from '../helpers/shipped.ts'

describe('a sentence that is a list', () => {
  test.each([
    ['in English', 'Call for any of these: a; b, or c; d; e.', ['a', 'b, or c', 'd', 'e.']],
    ['in Chinese', '如有以下情况：甲；乙；丙；丁。', ['甲', '乙', '丙', '丁。']],
    ['in Arabic', 'عند أي مما يلي: أ؛ ب؛ ج؛ د.', ['أ', 'ب', 'ج', 'د.']]
  ])('is told apart %s', (_, text, parts) => {
    expect(listedText(text)?.parts).toEqual(parts)
  })

  test.each([
    ['of three parts is read as a sentence', 'Look for: a; b; c.'],
    ['without a lead is one', 'a; b; c; d; e.'],
    ['with a colon after its first part is one', 'a; b: c; d; e; f.']
  ])('%s', (_, text) => {
    expect(listedText(text)).toBe(null)
  })
})

test('whom to call for which sign is a list in every language and every tree, as long as the English', async () => {
  const { words, trees } = await loadShipped()
  for (const { id } of trees) {
    for (const caution of ['call-911', 'call-doctor']) {
      const parts = Object.values(words).map(
        texts =>
          listedText(`${Reflect.get(Reflect.get(Object(texts[id]), 'cautions'), caution)}`)?.parts
            .length
      )
      expect([id, caution, new Set(parts).size, (parts[0] ?? 0) > 5]).toEqual([
        id,
        caution,
        1,
        true
      ])
    }
  }
})
