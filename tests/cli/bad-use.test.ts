import { describe, expect, test } from 'vitest'
import { runCommand, UNTROUBLED } from './run-command.ts'

const given = (fact: string) => ['walk', 'kombucha-jar', '--given', fact]

describe('a fact that cannot be meant is refused, with what is meant instead', () => {
  test.each([
    ['an unknown tree', ['walk', 'kombucha-jra'], '`kombucha-jar`'],
    ['no tree', ['walk'], '`kombucha-jar`'],
    ['an unknown observation', given('surface-textur=dry-fuzzy'), '`surface-texture`'],
    ['an unknown answer', given('surface-texture=dry-fuzy'), '`dry-fuzzy`'],
    ['an unknown sign', given('jar-signs=insect-inside'), '`insects-inside`'],
    ['an unknown value of a sign', given('jar-signs=tiny-eels:maybe'), 'yes, no or unsure'],
    ['an unknown instrument', given('jar-ph=3.9@narow-strip'), '`narrow-strip`'],
    ['an instrument for a count', given('day=9@meter'), '`day=9`'],
    ['a reading that is no number', given('jar-ph=3,9'), '3.9'],
    ['a reading written as code', given('jar-ph=0x3'), '3.9'],
    ['a reading outside the span', given('jar-ph=15'), 'between 0 and 14'],
    ['a negative count', given('day=-1'), 'between 0 and'],
    ['half a day', given('day=9.5'), 'give 9'],
    ['a fact without an answer', given('day'), '`=`'],
    ['none of a choice', ['walk', 'kombucha-jar', '--none', 'surface-texture'], '--given'],
    ['an unknown option', ['walk', 'kombucha-jar', '--gven', 'day=9'], '`--given`'],
    ['an option without its value', ['walk', 'kombucha-jar', '--given'], '`--given`'],
    ['an unknown command', ['wlak'], '`walk`'],
    ['a folder that is not there', ['check', '--in', 'no-such-folder'], '`no-such-folder`']
  ])('%s', async (_, args, remedy) => {
    const { code, output, errors } = await runCommand(args)

    expect(code).toBe(2)
    expect(output).toBe('')
    expect(errors).toContain(remedy)
    expect(errors.trim().split('\n')).toHaveLength(1)
  })

  test('the same reading told twice is one reading', async () => {
    const { code } = await runCommand([...given('day=9'), '--given', 'day=9.0'])
    expect(code).toBe(0)
  })

  test('one screen cannot be both ruled out and unsure', async () => {
    const both = ['--none', 'jar-signs', '--unsure', 'jar-signs']
    expect((await runCommand(['walk', 'kombucha-jar', ...both])).code).toBe(2)
  })

  test('a name that every object has is no observation', async () => {
    expect((await runCommand(given('constructor=yes'))).code).toBe(2)
  })

  test('what was typed cannot steer the terminal', async () => {
    const { errors } = await runCommand(given('\u001b[2Jday=9'))
    expect(errors).not.toContain('\u001b')
  })
})

describe('help is a manual page', () => {
  test.each([[['--help']], [['walk', '--help']], [['list', '--help']], [['check', '--help']]])(
    '%j prints it and succeeds',
    async args => {
      const { code, output } = await runCommand(args)
      expect(code).toBe(0)
      expect(output).toMatch(/^NAME\n {2}jarside/)
      expect(output).toContain('EXIT CODES')
    }
  )

  test('no command at all prints it as an error', async () => {
    const { code, output, errors } = await runCommand([])
    expect([code, output]).toEqual([2, ''])
    expect(errors).toMatch(/^NAME/)
  })

  test('the version is the one of the package', async () => {
    expect((await runCommand(['--version'])).output).toMatch(/^\d+\.\d+\.\d+\n$/)
  })
})

describe('without a terminal nothing is asked', () => {
  // The input of these runs never ends: a prompt would wait until the test is given up.
  test('an unfinished walk says what is asked next, and ends', async () => {
    const { code, output } = await runCommand(['walk', 'kombucha-jar'])
    expect(code).toBe(0)
    expect(output).toContain('people-signs')
    expect(output).toContain('Draft')
    expect(output).not.toMatch(/^> /m)
  })

  test('a finished walk is told as plain text without color', async () => {
    const { code, output } = await runCommand(['walk', 'kombucha-jar', ...UNTROUBLED])
    expect(code).toBe(0)
    expect(output).toContain('Draft')
    expect(output).not.toContain('\u001b')
  })
})
