import { describe, expect, test } from 'vitest'
import { textsIn } from '../../src/load/texts.ts'
import type { TextKey } from '../../src/words/text-key.ts'
import { createWords } from '../../src/words/words.ts'
import { loadShipped } from '../helpers/shipped.ts'
import { negatedIn } from './negations.ts'

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

/** Texts that two languages write alike. */
const ALIKE: readonly RegExp[] = [
  // Units are written alike.
  /^(?:pH|%|°F|°C|°Bx|°Brix|mL|g|g\/L|kg|ppm|kPa|bar|psi|atm)$/,
  /^(?:pH )?\{\{value\}\}(?: °F|%| mL| g| g\/L| pH)?$/,
  // A food of the same name.
  /^Kimchi$/,
  /^Color$/,
  // The same in both: a sign that is not there, and two names side by side.
  /^no$/i,
  /^\{\{some\}\} \/ \{\{other\}\}$/,
  /^\{\{from\}\}, \{\{to\}\}$/,
  // A caller's own words, said back.
  /^“\{\{words\}\}”$/
]

/** Sentences that say no in one language only, each with the reason. */
const SAY_NO_DIFFERENTLY: Readonly<Record<string, Readonly<Record<string, string>>>> = { es: {} }

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

  test('no text is left in English', () => {
    const left = pairs.filter(({ english, other }) => english === other)
    expect(left.filter(({ english }) => !ALIKE.some(alike => alike.test(english)))).toEqual([])
  })

  test('every text is spoken in the language itself', () => {
    const whole = pairs.filter(({ english }) => !english.includes('{{'))
    for (const { key, other } of whole) expect(speaks.t(key)).toBe(other)
  })

  test('a sentence says no exactly where the English does', () => {
    const excepted = SAY_NO_DIFFERENTLY[tag] ?? {}
    const turned = pairs.filter(
      ({ english, other = '' }) =>
        JSON.stringify(negatedIn('en', english)) !== JSON.stringify(negatedIn(tag, other))
    )
    expect(turned.filter(({ key }) => !Object.hasOwn(excepted, key))).toEqual([])
    // An exception that is no longer needed would hide the next slip.
    expect(turned.map(({ key }) => key).sort()).toEqual(Object.keys(excepted).sort())
  })

  test('signal words of one language are four different words', () => {
    const ids = ['danger', 'warning', 'caution', 'notice'] as const
    const signals = ids.map(id => speaks.t(`ui:signal.${id}`))
    expect(new Set(signals).size).toBe(4)
    for (const signal of signals) expect(signal).toBe(signal.toLocaleUpperCase(tag))
  })
})

describe('a negation that is lost or added is seen', () => {
  test.each([
    ['Do not open it. Bag it.', 'No lo abra. Métalo en una bolsa.', true],
    ['Do not open it. Bag it.', 'Ábralo. Métalo en una bolsa.', false],
    ['Open it. Do not bag it.', 'No lo abra. Métalo en una bolsa.', false],
    ['Never freeze it.', 'Nunca lo congele.', true],
    ['Isn’t it cold?', '¿No está frío?', true],
    ['Keep none of it.', 'Ninguna parte se guarda.', true],
    ['Note the notice.', 'Anote el aviso de la nota, en noviembre.', true]
  ])('%s / %s', (english, spanish, same) => {
    const alike = negatedIn('en', english).join() === negatedIn('es', spanish).join()
    expect(alike).toBe(same)
  })
})
