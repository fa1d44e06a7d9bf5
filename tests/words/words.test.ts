import { describe, expect, test } from 'vitest'
import { kindOf } from '../../src/words/kinds.ts'
import { createWords, MissingText } from '../../src/words/words.ts'

const resources = {
  en: {
    ui: { back: 'Back', units: { day_one: '{{count}} day', day_other: '{{count}} days' } },
    steps: { 'bag-it': 'Put it in a bag.' },
    observations: { day: { ask: 'How <old> is it at {{place}}?' } }
  },
  es: { ui: { units: { day_one: '{{count}} día', day_other: '{{count}} días' } }, steps: {} }
}

describe('a safety text is never replaced by another language', () => {
  const spanish = createWords(resources, 'es')

  test('a missing step stops with an error that names it', () => {
    expect(() => spanish.t('steps:bag-it')).toThrow(MissingText)
    expect(() => spanish.t('steps:bag-it')).toThrow(/`steps:bag-it` is missing in `es`/)
  })

  test('a missing label is shown in English', () => {
    expect(spanish.t('ui:back')).toBe('Back')
  })

  test('a label missing in every language stops too: no raw key is shown', () => {
    // A key that the screens know, and that these few texts lack.
    expect(() => spanish.t('ui:quit')).toThrow(MissingText)
    expect(() => createWords(resources, 'en').t('ui:quit')).toThrow(MissingText)
  })

  test('a misspelled key does not compile', () => {
    // @ts-expect-error: there is no such key in locales/en/ui.json.
    expect(() => createWords(resources, 'en').t('ui:bakc')).toThrow(MissingText)
  })

  test('a group of texts is no text', () => {
    // @ts-expect-error: the key of a group does not compile; a key put together at run time may be one.
    expect(() => createWords(resources, 'en').t('ui:units')).toThrow(MissingText)
  })
})

describe('words are put together as their language does', () => {
  test('a count chooses the plural', () => {
    const spanish = createWords(resources, 'es')
    expect(spanish.t('ui:units.day', { count: 1 })).toBe('1 día')
    expect(spanish.t('ui:units.day', { count: 9 })).toBe('9 días')
  })

  test('nothing is escaped as if it were a web page', () => {
    expect(createWords(resources, 'en').t('observations:day.ask', { place: 'A & B' })).toBe(
      'How <old> is it at A & B?'
    )
  })
})

describe('the key of a text tells what it is for', () => {
  test.each([
    ['steps', 'call-911', 'action'],
    ['notes', 'too-cold', 'advice'],
    ['verdicts', 'likely-mold.message', 'advice'],
    ['verdicts', 'likely-mold.why', 'advice'],
    ['verdicts', 'likely-mold.name', 'label'],
    ['kombucha-jar', 'verdicts.likely-mold.message', 'advice'],
    ['kombucha-jar', 'use.never', 'advice'],
    ['kombucha-jar', 'cautions.not-proof', 'caution'],
    ['kombucha-jar', 'title', 'label'],
    ['ui', 'referral.office.say', 'referral'],
    ['ui', 'draft', 'caution'],
    ['ui', 'back', 'label'],
    ['observations', 'day.ask', 'label']
  ])('%s:%s is of the kind %s', (namespace, key, kind) => {
    expect(kindOf(namespace, key)).toBe(kind)
  })
})
