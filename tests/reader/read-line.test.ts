import { describe, expect, test } from 'vitest'
import { offered, shippedReader, sureOf } from './shipped-reader.ts'

const { reader } = shippedReader()
const texts = (line: string) => reader.read(line).map(({ text }) => text)
const fact = (observation: string, answer: unknown) => ({ observation, answer })

describe('a voicemail in one line is read part by part', () => {
  test('the facts of the line are all taken', () => {
    expect(reader.read('hairy, day 9, ph 4.1 strip, 75 F')).toEqual([
      {
        text: 'hairy',
        candidates: [{ ...fact('surface-texture', 'dry-fuzzy'), matched: 'hairy', sure: true }]
      },
      {
        text: 'day 9',
        candidates: [
          { ...fact('day', { low: 9, reading: 9, high: 9 }), matched: 'day 9', sure: true }
        ]
      },
      {
        text: 'ph 4.1 strip',
        candidates: [
          {
            ...fact('jar-ph', { low: 3.6, reading: 4.1, high: 4.6 }),
            matched: 'ph 4.1 strip',
            sure: true
          }
        ]
      },
      {
        text: '75 F',
        candidates: [
          {
            ...fact('room-temperature', { low: 73, reading: 75, high: 77 }),
            matched: '75 F',
            sure: true
          }
        ]
      }
    ])
  })

  test.each([
    ['hairy; day 9. boozy\nph 4', ['hairy', 'day 9', 'boozy', 'ph 4']],
    ['hairy and boozy but cold', ['hairy', 'boozy', 'cold']],
    ['peludo y vinagre pero frío', ['peludo', 'vinagre', 'frío']],
    ['day 9,ph 4.1.', ['day 9', 'ph 4.1']],
    ['ph 4,1', ['ph 4,1']],
    ['a sip of it', ['a sip of it']],
    ['2 and a half weeks', ['2 and a half weeks']],
    ['p.h. 4.1', ['p.h. 4.1']],
    ['Pregnant and drank it', ['Pregnant and drank it']],
    ['no fuzz, mold, or hair, day 9', ['no fuzz, mold, or hair', 'day 9']],
    [' ,, . ; ', []]
  ])('%j is cut only between facts', (line, parts) => {
    expect(texts(line)).toEqual(parts)
  })

  test('what lies beyond twenty parts is handed back unread', () => {
    const read = reader.read(Array(25).fill('hairy').join(', '))
    expect(read).toHaveLength(25)
    expect(read.slice(0, 20).every(({ candidates }) => candidates.length === 1)).toBe(true)
    expect(read.slice(20)).toEqual(
      Array(5).fill({ text: 'hairy', candidates: [], problem: 'not-understood' })
    )
  })
})

describe('what could mean two things is never taken', () => {
  test.each([
    ['pink', ['bright-on-top', 'even-tint']],
    ['hairy or wrinkled', ['dry-fuzzy', 'flat-wrinkled-film']],
    ['fuzzy wet spots', ['dry-fuzzy', 'wet-islands']]
  ])('%j lists its answers, the most worrying first', (line, answers) => {
    const listed = offered(reader, line)
    expect(listed.slice(0, 2).map(({ answer }) => answer)).toEqual(answers)
    expect(listed.some(({ sure }) => sure)).toBe(false)
  })

  test.each([
    'cheese',
    'is it mold?',
    'used to be hairy',
    'if it were moldy',
    'hairy? no',
    'is there mold',
    'anything but fuzzy'
  ])('%j is only offered', line => {
    expect(offered(reader, line).length).toBeGreaterThan(0)
    expect(sureOf(reader, line)).toEqual([])
  })

  test('a gentle word in a sentence about something else is only offered', () => {
    for (const line of ['my skin has a rash', 'the jar is clear glass', 'first time brewing']) {
      expect(sureOf(reader, line), line).toEqual([])
    }
  })

  test('a danger sign stands in a sentence that says more', () => {
    expect(sureOf(reader, 'there was mold all over the left edge')).toEqual([
      fact('surface-texture', 'dry-fuzzy')
    ])
    // What smells like eggs is no egg.
    expect(sureOf(reader, 'smells like eggs')).toEqual([])
  })

  test('more words than one fact takes are only offered', () => {
    const line = `hairy ${'well '.repeat(80)}`
    expect(offered(reader, line)[0]).toMatchObject({ answer: 'dry-fuzzy', sure: false })
  })
})
