import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { MODEL_INPUTS } from '../../src/tree/derived.ts'
import { loadShipped } from '../helpers/shipped.ts'

const root = join(import.meta.dirname, '../../src')

/** The gallery plays jars for development. */
const APART = /^places\/gallery\//

/** Words that are no ferment's: units, and the inputs that the calculators of every ferment share. */
const SHARED = new Set([
  'day',
  ...Object.keys(MODEL_INPUTS),
  ...Object.values(MODEL_INPUTS).flat(),
  'starter-kind',
  'first-day'
])

describe('the core knows no ferment', async () => {
  const { trees, observations } = await loadShipped()
  const named = new Set([...trees.map(({ id }) => id), ...Object.keys(observations)])
  const files = readdirSync(root, { recursive: true, encoding: 'utf8' })
    .filter(file => /\.tsx?$/.test(file) && !APART.test(file))
    .map(file => ({ file, text: readFileSync(join(root, file), 'utf8') }))

  test('no tree and no observation is named in the source', () => {
    const found = files.flatMap(({ file, text }) =>
      [...text.matchAll(/['"`]([a-z]+(?:-[a-z]+)*)['"`]/g)]
        .map(([, word = '']) => word)
        .filter(word => named.has(word) && !SHARED.has(word))
        .map(word => `${file}: ${word}`)
    )
    // A comment may give an example of a name.
    expect(found.filter(one => one !== 'cli/open-edition.ts: kombucha-jar')).toEqual([])
  })

  test('the names are there to be found', () => {
    expect(named.size).toBeGreaterThan(80)
    expect(files.length).toBeGreaterThan(300)
  })
})
