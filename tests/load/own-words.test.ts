import { describe, expect, test } from 'vitest'
import { load } from '../../src/load/load.ts'
import { wholeProject } from './project-files.ts'

const english = (stem: string) => `locales/en/${stem}.json`
/** The small project with some sections added to the tree's own file of words, and some taken from the common ones. */
function withOwn(sections: Readonly<Record<string, object>>, without: readonly string[] = []) {
  return wholeProject().map(({ path, text }) => {
    if (path === english('jar')) {
      return { path, text: JSON.stringify({ ...JSON.parse(text), ...sections }, null, 2) }
    }
    const common = path.startsWith('locales/en/') ? JSON.parse(text) : null
    if (common === null || !without.some(id => Object.hasOwn(common, id))) return { path, text }
    const rest = Object.entries(common).filter(([id]) => !without.includes(id))
    return { path, text: JSON.stringify(Object.fromEntries(rest), null, 2) }
  })
}
const found = async (files: Parameters<typeof load>[0]) =>
  (await load(files)).findings.map(({ code, place }) => `${place?.file} ${code}`)

describe('a ferment has the words of what it alone says in its own file', () => {
  const words = (stem: string) =>
    JSON.parse(wholeProject().find(({ path }) => path === english(stem))?.text ?? '{}')

  test('a note, a step and an observation are read from there', async () => {
    const sections = {
      notes: { cloudy: words('notes').cloudy },
      steps: { 'throw-out': words('steps')['throw-out'] },
      observations: { growth: words('observations').growth }
    }
    const moved = withOwn(sections, ['cloudy', 'throw-out', 'growth'])
    expect(await found(moved)).toEqual([])
    const { words: read, trees } = await load(moved)
    expect(read.en).toEqual((await load(wholeProject())).words.en)
    const [before] = (await load(wholeProject())).trees
    expect(trees[0]?.wordsFingerprint).toBe(before?.wordsFingerprint)
  })

  test('a note that is in both is found, and so is one that nothing says', async () => {
    expect(await found(withOwn({ notes: { cloudy: 'It is cloudy.' } }))).toEqual([
      `${english('jar')} duplicate-id`
    ])
    expect(await found(withOwn({ notes: { muddy: 'It is muddy.' } }))).toEqual([
      `${english('jar')} orphaned-text`
    ])
  })
})
