import { describe, expect, test } from 'vitest'
import { runCommand } from './run-command.ts'

const refused = async (...args: readonly string[]) => {
  const { code, errors, output } = await runCommand(['handout', ...args])
  return { code, output, errors: errors.trim() }
}

describe('jarside handout refuses what it cannot print, and says what it can', () => {
  test('without a folder', async () => {
    expect(await refused('kombucha-jar', '--verdict', 'likely-mold')).toEqual({
      code: 2,
      output: '',
      errors: 'Say where to: `--out <folder>`.'
    })
  })

  test('a verdict that the tree does not have', async () => {
    const { code, errors } = await refused('kombucha-jar', '--verdict', 'likly-mold', '--out', 'x')
    expect(code).toBe(2)
    expect(errors).toMatch(
      /^`kombucha-jar` never gives `likly-mold`\. Did you mean `likely-mold`\?/
    )
  })

  test('no verdict at all', async () => {
    const { code, errors } = await refused('kombucha-jar', '--out', 'x')
    expect(code).toBe(2)
    expect(errors).toMatch(/^Name a verdict, or give `--all`\. Verdicts: ask-doctor, /)
  })

  test('one verdict and all of them', async () => {
    const { errors } = await refused(
      'kombucha-jar',
      '--all',
      '--verdict',
      'likely-mold',
      '--out',
      'x'
    )
    expect(errors).toBe('Give `--all` or `--verdict`, not both.')
  })

  test('a chart in large print, and names what says the same', async () => {
    const { code, errors } = await refused(
      ...['kombucha-jar', '--sheet', 'chart', '--large', '--out', 'x']
    )
    expect(code).toBe(2)
    expect(errors).toBe('A `chart` sheet is not made in large print. `key` says the same.')
  })

  test.each([
    [
      '--lang',
      'fr',
      'There are no words in `fr`. Did you mean `ar`? Languages: ar, en, es, vi, zh.'
    ],
    ['--paper', 'legal', 'There is no paper `legal`. Papers: letter, a4, tabloid, a3.'],
    [
      '--address',
      'larkspur',
      '`larkspur` is no web address, like `https://jarside.larkspur.example/`.'
    ]
  ])('%s %s', async (option, value, sentence) => {
    const { code, errors } = await refused(
      ...['kombucha-jar', '--verdict', 'likely-mold', '--out', 'x', option, value]
    )
    expect({ code, errors }).toEqual({ code: 2, errors: sentence })
  })
})
