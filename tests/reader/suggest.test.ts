import { describe, expect, test } from 'vitest'
import { shippedReader, suggested } from './shipped-reader.ts'

const { reader } = shippedReader()
const answers = (text: string) => suggested(reader, text).map(({ answer }) => answer)

describe('words being typed are completed', () => {
  test.each([
    ['hair', 'dry-fuzzy'],
    ['fuz', 'dry-fuzzy'],
    ['bubb', 'wet-bumps-or-blisters'],
    ['ph 4.1, wrink', 'flat-wrinkled-film'],
    ['coffee f', 'tight-cloth']
  ])('%j leads to its answer', (text, answer) => {
    expect(answers(text)).toContain(answer)
  })

  test('a sign is completed as it stands: denied or doubted', () => {
    expect(answers('no magg')).toContainEqual({ 'insects-inside': 'no' })
    expect(answers('maybe magg')).toContainEqual({ 'insects-inside': 'unsure' })
  })

  test('the name of what one is not sure about is completed', () => {
    expect(answers('not sure about the surf')).toContain('unsure')
  })

  test('the most worrying of those that begin alike stands first', () => {
    expect(answers('pink').slice(0, 2)).toEqual(['bright-on-top', 'even-tint'])
    expect(answers('fur')[0]).toBe('dry-fuzzy')
  })

  test('there are at most eight, and none for nothing', () => {
    for (const text of ['a', 's', 'e', 'the s', 'spots', '9']) {
      expect(answers(text).length).toBeLessThanOrEqual(8)
    }
    expect(answers('')).toEqual([])
    expect(answers(' , ')).toEqual([])
  })

  test('what is only begun is never sure', () => {
    for (const text of ['hair', 'magg', 'bubb', 'no boo', 'maybe magg']) {
      expect(
        suggested(reader, text).some(({ sure }) => sure),
        text
      ).toBe(false)
    }
  })
})
