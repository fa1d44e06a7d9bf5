import { describe, expect, test } from 'vitest'
import { verdictText } from '../../src/words/verdict-text.ts'
import { createWords, MissingText } from '../../src/words/words.ts'

const resources = {
  en: {
    verdicts: { 'normal-growth': { name: 'Normal growth', message: 'Growth looks normal.' } },
    jar: {
      verdicts: { 'normal-growth': { message: 'Not ready yet.', 'message-never': 'Not for them.' } }
    }
  },
  es: { verdicts: { 'normal-growth': { message: 'Crecimiento normal.' } }, jar: {} }
}

describe('a verdict speaks in the words of its tree', () => {
  const words = createWords(resources, 'en')

  test('those for this use come first', () => {
    expect(verdictText(words, 'jar', 'normal-growth', 'message', { use: 'never' })).toBe(
      'Not for them.'
    )
  })

  test('those for any use come next', () => {
    expect(verdictText(words, 'jar', 'normal-growth', 'message', { use: 'not-yet' })).toBe(
      'Not ready yet.'
    )
  })

  test('those of the verdict itself come last', () => {
    expect(verdictText(words, 'crock', 'normal-growth', 'message')).toBe('Growth looks normal.')
    expect(verdictText(words, 'jar', 'normal-growth', 'name')).toBe('Normal growth')
  })

  test('another language never falls back to a gentler, general wording', () => {
    const spanish = createWords(resources, 'es')
    expect(() => verdictText(spanish, 'jar', 'normal-growth', 'message', { use: 'never' })).toThrow(
      MissingText
    )
  })
})
