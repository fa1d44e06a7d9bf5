import { describe, expect, test } from 'vitest'
import { readingLines, readingOf, wordingLines } from '../../src/cli/reading-lines.ts'
import { loadShipped } from '../helpers/shipped.ts'

const loaded = await loadShipped()
const today = new Date('2026-11-25T12:00:00Z')
const read = loaded.trees.map(tree => readingOf(tree, loaded, today))

describe('what authors are told of their English', () => {
  test('the steps of every sheet ask for grade 6 at most', () => {
    expect(read.length).toBeGreaterThan(5)
    for (const { above } of read) expect(above.filter(({ part }) => part === 'actions')).toEqual([])
  })

  test('each sheet that asks for more than grade 8 is named', () => {
    const [first] = read
    if (first === undefined) throw new Error('no tree')
    const above = [{ verdict: 'emergency', part: 'sheet', grade: 10.46 }]
    expect(readingLines({ ...first, above }).slice(1)).toEqual([
      `${first.tree}: reading: the sheet of emergency: grade 10.5, and at most 8 is wanted`
    ])
  })

  test('harder words are seen', () => {
    const [tree] = loaded.trees
    if (tree === undefined) throw new Error('no tree')
    const steps = loaded.words.en?.steps as Record<string, string>
    const harder = Object.fromEntries(
      Object.entries(steps).map(([id]) => [
        id,
        'Subsequently decontaminate incontrovertibly deteriorated receptacles.'
      ])
    )
    const changed = {
      ...loaded,
      words: { ...loaded.words, en: { ...loaded.words.en, steps: harder } }
    }
    expect(readingOf(tree, changed, today).actions).toBeGreaterThan(20)
  })

  test('no listed long word is unused', () => {
    expect(wordingLines(loaded, read, today).at(-1)).toBe('long words: 0 listed and not used')
  })
})
