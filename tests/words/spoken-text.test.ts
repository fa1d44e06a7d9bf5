import { describe, expect, test } from 'vitest'
import { digitByDigit, spokenSentences } from '../../src/words/spoken-text.ts'

describe('a phone number', () => {
  test.each([
    ['911', '9 1 1'],
    ['1-800-222-1222', '1, 8 0 0, 2 2 2, 1 2 2 2'],
    ['555-0110', '5 5 5, 0 1 1 0'],
    ['(555) 555-0110 ext. 4', '(5 5 5, 5 5 5, 0 1 1 0 ext. 4'],
    ['\u2066555-0110\u2069', '5 5 5, 0 1 1 0']
  ])('%s is said digit by digit', (number, spoken) => {
    expect(digitByDigit(number)).toBe(spoken)
  })
})

describe('texts that are spoken', () => {
  test('come a sentence at a time, with their phone numbers digit by digit', () => {
    expect(
      spokenSentences(['Call 911 now. Or call Poison Help, 1-800-222-1222.', '', 'Wait.'], 'en')
    ).toEqual(['Call 9 1 1 now.', 'Or call Poison Help, 1, 8 0 0, 2 2 2, 1 2 2 2.', 'Wait.'])
  })

  test('keep every other number as it is', () => {
    const text = 'Test the pH: at 4.2 or less, after 1,911 or 10-12 days, it was 3.911.'
    expect(spokenSentences([text], 'en')).toEqual([text])
  })

  test.each([
    ['es', '¿Hay alguien enfermo? Llame al 911.', ['¿Hay alguien enfermo?', 'Llame al 9 1 1.']],
    ['zh', '请立即拨打911。不要等。', ['请立即拨打9 1 1。', '不要等。']],
    ['ar', 'اتصل بالرقم \u2066911\u2069 الآن. لا تنتظر.', ['اتصل بالرقم 9 1 1 الآن.', 'لا تنتظر.']]
  ])('in %s', (tag, text, spoken) => {
    expect(spokenSentences([text], tag)).toEqual(spoken)
  })
})
