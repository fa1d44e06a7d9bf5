import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { loadShipped } from '../helpers/shipped.ts'

/** Words that an American reader stumbles over, each with what is said in its place. */
const STUMBLES: Readonly<Record<string, string>> = {
  anew: 'again',
  'told of': 'reported',
  'said of': 'about',
  'hangs on (?:what|the (?:answer|observation|kind))': 'depends on',
  'mend(?:s|ed|ing)?': 'fix',
  'for ever': 'forever, or in circles',
  whilst: 'while',
  amongst: 'among',
  'acid enough': 'acidic enough',
  'go on (?:here|with this)': 'continue',
  'times 100': 'multiply by 100'
}
const stumble = new RegExp(`\\b(?:${Object.keys(STUMBLES).join('|')})\\b`, 'i')

const textsIn = (value: unknown): readonly string[] =>
  typeof value === 'string'
    ? [value]
    : Object.values((value as object | null) ?? {}).flatMap(textsIn)

describe('plain American English', async () => {
  const { words } = await loadShipped()

  test('is what a caller reads', () => {
    const texts = textsIn(words.en)
    expect(texts.length).toBeGreaterThan(2_000)
    expect(texts.filter(text => stumble.test(text))).toEqual([])
  })

  test('is what an author reads of a finding', () => {
    const folder = 'src/findings/catalogue'
    const lines = readdirSync(folder).flatMap(name =>
      readFileSync(join(folder, name), 'utf8')
        .split('\n')
        .filter(line => /['`]/.test(line))
    )
    expect(lines.length).toBeGreaterThan(200)
    expect(lines.filter(line => stumble.test(line))).toEqual([])
  })
})
