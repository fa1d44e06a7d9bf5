import { describe, expect, test } from 'vitest'
import { textsIn } from '../../src/load/texts.ts'
import { createWords } from '../../src/words/words.ts'
import { loadShipped } from '../helpers/shipped.ts'

const { words } = await loadShipped()
const spanish = createWords(words, 'es')
const texts = Object.values(words.es ?? {}).flatMap(group => [...textsIn(group).values()])
const saying = (word: RegExp) => texts.filter(text => word.test(text))

describe('what English never says, Spanish never says', () => {
  test('nobody is asked to taste', () => {
    expect(texts.length).toBeGreaterThan(500)
    expect(
      saying(/(?<!\p{L})(?:prob(?:ar|e|emos|ó)|prueb[eo]|sabore|degust|cat(?:ar|e))(?!\p{L}*ble)/iu)
    ).toEqual([])
  })
})

describe('Spanish speaks to a caller politely and alike', () => {
  test('not sure is one and the same answer everywhere', () => {
    const observations = textsIn(words.es?.observations)
    const unsure = [...observations].filter(([key]) => /(?:^|\.)unsure(?:\.label)?$/.test(key))
    expect(unsure.length).toBeGreaterThan(10)
    for (const [, text] of unsure) expect(text).toBe('No lo sé')
    expect(spanish.t('ui:not-sure')).toBe('No lo sé')
    expect(spanish.t('ui:from-memory')).toContain('“No lo sé”')
  })

  test('a draft says that it is one, and which version counts', () => {
    expect(spanish.t('ui:language')).toBe('Español')
    expect(spanish.t('ui:draft-translation')).toMatch(
      /borrador, no revisada\. Vale la versión en inglés\.$/
    )
  })
})
