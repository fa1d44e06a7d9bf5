import { readdirSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { PSEUDO, PSEUDO_RTL, pseudo, textsIn } from '../helpers/pseudo.ts'

const english = [...textsIn('en')]
const gapsIn = (text: string) => (text.match(/\{\{[^{}]*\}\}/g) ?? []).sort()
const withoutGaps = (text: string) => text.replace(/\{\{[^{}]*\}\}/g, '')

describe.each([PSEUDO, PSEUDO_RTL] as const)('every English text in %s', tag => {
  const made = english.map(([key, text]) => [key, text, pseudo(text, tag)] as const)
  const wrong = (is: (text: string, other: string) => boolean) =>
    made.filter(([, text, other]) => text !== '' && !is(text, other)).map(([key]) => key)

  test('keeps its gaps', () => {
    expect(english.length).toBeGreaterThan(3000)
    expect(wrong((text, other) => gapsIn(text).join() === gapsIn(other).join())).toEqual([])
  })

  test('keeps every sign that is no letter: numbers, quotes, marks', () => {
    const signs = (text: string) =>
      withoutGaps(text).replace(/[\p{L}\s⟦⟧\u202a-\u202e\u2066-\u2069]/gu, '')
    expect(wrong((text, other) => signs(text) === signs(other))).toEqual([])
  })

  test('has no plain letter left, is at least 40 % longer, and shows its ends', () => {
    expect(wrong((_, other) => !/[A-Za-z]/.test(withoutGaps(other)))).toEqual([])
    expect(wrong((text, other) => other.length >= 1.4 * withoutGaps(text).length)).toEqual([])
    expect(wrong((_, other) => /⟦/.test(other) && /⟧/.test(other))).toEqual([])
  })
})

test('from the right each stretch is isolated, and every override ends', () => {
  expect(pseudo('Call {{phone}}.', PSEUDO_RTL)).toMatch(
    /^\u2067\u202e⟦Ćàĺĺ \u202c\u2069\{\{phone\}\}\u2067\u202e\..*⟧\u202c\u2069$/
  )
})

test('no language of that name is shipped', () => {
  expect(readdirSync('locales').filter(tag => tag.startsWith('qps'))).toEqual([])
})
