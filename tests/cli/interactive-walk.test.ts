import { describe, expect, test } from 'vitest'
import { runCommand } from './run-command.ts'

const jar = ['walk', 'kombucha-jar']
const walkTyped = (...typed: string[]) => runCommand(jar, { typed })

/** The numbered line of an answer, by the words of its label. */
/** An untroubled jar on day 9, with a reading of 3.2 by meter; nobody has had any. */
const GENTLE = ['0', '0', '0', '10', '7', '0', '9', '3.2', '1', '0']
const lineOf = (output: string, words: RegExp) => output.split('\n').find(line => words.test(line))

describe('a person is walked from the first question to an outcome', () => {
  test('an untroubled jar ends gently, and still says that it is a draft', async () => {
    const { code, output } = await walkTyped(...GENTLE, 'q')

    expect(code).toBe(0)
    expect(output).toContain('Growth looks normal')
    expect(output).toContain('Draft')
    expect(output).toContain('Sources')
  })

  test('progress counts up, and what may follow never grows', async () => {
    const { output } = await walkTyped(...GENTLE, 'q')
    const progress = [...output.matchAll(/Question (\d+) · (?:at most (\d+) more|the last one)/g)]
    const numbers = progress.map(([, number]) => Number(number))
    const totals = progress.map(([, number, more]) => Number(number) + Number(more ?? 0))

    expect(numbers).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9])
    expect(totals).toEqual([...totals].sort((a, b) => b - a))
    // A pH in doubt would still ask whether this is the second look.
    expect(totals.at(-1)).toBe(9)
  })

  test('an emergency shows its numbers at once and nothing of the jar', async () => {
    const { output } = await walkTyped('1', 'q')
    const card = output.slice(output.indexOf('DANGER'))

    expect(card).toContain('911')
    expect(card).toContain('1-800-222-1222')
    expect(card).not.toContain('Sources')
    expect(card).not.toContain('Clean up')
    expect(card).not.toContain('What to change')
  })
})

describe('signs are told one by one', () => {
  test('numbers alone leave the other signs open', async () => {
    const { output } = await walkTyped('0', '0', '2', 'q')
    expect(output.split('Is any of this true of the jar').length).toBe(3)
    expect(lineOf(output.slice(output.indexOf('And the others')), /Flies, eggs/)).toBe(
      '   2  Flies, eggs or wrigglers inside [yes]'
    )
  })

  test('a number means the same sign for as long as the screen is asked', async () => {
    const { output } = await walkTyped('0', '5', '3', 'q')
    const again = output.slice(output.lastIndexOf('And the others'))
    expect(lineOf(again, /cracked/)).toMatch(/^ {3}3 .*\[yes\]$/)
    expect(lineOf(again, /shuts airtight/)).toMatch(/^ {3}5 .*\[yes\]$/)
  })

  test('a number with 0 tells the whole screen', async () => {
    const { output } = await walkTyped('0', '0', '2, 0', 'q')
    expect(output).not.toContain('And the others')
    expect(output).toContain('Question 4')
  })

  test('not being sure of the others keeps the sign that was seen', async () => {
    const { output } = await walkTyped('0', '0', '2 u', '0', '0', '1', 'q')
    expect(output).toContain('Likely mold')
  })
})

describe('every answer can be taken back', () => {
  test('b asks the last question again', async () => {
    const { output } = await walkTyped('0', '0', 'b', 'q')
    expect(output.match(/Question \d+/g)).toEqual([
      'Question 1',
      'Question 2',
      'Question 3',
      'Question 2'
    ])
  })

  test('b on the first question says that there is none before it', async () => {
    expect((await walkTyped('b', 'q')).output).toContain('This is the first question.')
  })

  test('c changes an earlier answer, and the rest alone decides', async () => {
    const { output } = await walkTyped('0', '0', '0', '1', '0', '0', 'c', '4', '10', 'q')
    expect(output).toContain('Likely mold')
    expect(output.slice(output.lastIndexOf('Question'))).toMatch(/^Question 5/)
  })

  test('a mistaken emergency can be taken back', async () => {
    const { output } = await walkTyped('1', 'b', 'q')
    expect(output.slice(output.indexOf('DANGER'))).toContain('Question 1')
  })
})

describe('a line that is not understood is asked for again', () => {
  test.each(['', '99', '-1', '1e0', 'dry', '__proto__'])('"%s" on a choice', async line => {
    const { output } = await walkTyped('0', '0', '0', line, '10', 'q')
    expect(output).toMatch(/Type a number from 1 to 11/)
    expect(output).toContain('Question 5')
  })

  test.each(['', 'sour', '15', '3,9'])('"%s" as a reading', async line => {
    const { output } = await walkTyped(...GENTLE.slice(0, 7), line, ...GENTLE.slice(7), 'q')
    expect(output).toMatch(/Type a number (in digits|from 0 to 14)/)
    expect(output).toContain('Question 8')
  })
})

describe('leaving is always clean', () => {
  test.each([[['q']], [['0', 'q']], [[]], [['0', '0', '0', '10', '7', '0', '9', '3.2']]])(
    'after %j it ends with 0 and keeps nothing',
    async typed => {
      const { code, output, errors } = await runCommand(jar, { typed })
      expect([code, errors]).toEqual([0, ''])
      expect(output).toContain('Nothing is kept')
    }
  )

  test('--strict still tells that the walk was not finished', async () => {
    expect((await runCommand([...jar, '--strict'], { typed: ['q'] })).code).toBe(1)
  })
})

describe('more can be asked, when the person wishes', () => {
  test('w tells why a question is asked, and on whose word', async () => {
    const { output } = await walkTyped('w', 'q')
    expect(output).toContain('A person who needs help comes before the jar')
  })

  test('a asks what to change next time and says it', async () => {
    const { output } = await walkTyped(...GENTLE, 'a', '5', '60', '1', '', '', '', 'q')
    const advice = output.slice(output.lastIndexOf('What to change'))
    expect(advice.split('\n').filter(line => line.startsWith('- '))).toHaveLength(2)
  })
})
