import { describe, expect, test } from 'vitest'
import { load } from '../../src/load/load.ts'
import { textsIn } from '../../src/load/texts.ts'
import { gapsIn } from '../../src/translation/gaps.ts'
import { loadShipped } from '../helpers/shipped.ts'
import { wholeProject } from './project-files.ts'

const { words, translatorNotes } = await loadShipped()
const english = Object.entries(words.en ?? {}).flatMap(([stem, group]) =>
  [...textsIn(group)].map(([key, text]) => ({ id: `${stem}:${key}`, text }))
)

describe('a translator is told what the English alone does not say', () => {
  test('of each text of one word', () => {
    const single = english.filter(({ text }) => !/\s/.test(text.trim()))
    expect(single.length).toBeGreaterThan(200)
    expect(single.filter(({ id }) => translatorNotes[id] === undefined)).toEqual([])
  })

  test('of each gap', () => {
    const gaps = english.flatMap(({ id, text }) => gapsIn(text).map(gap => ({ id, gap })))
    expect(gaps.length).toBeGreaterThan(200)
    for (const { id, gap } of gaps) {
      expect(translatorNotes[id]).toMatch(new RegExp(`\\{\\{${gap}\\}\\}: \\S`))
    }
  })

  test('of each signal word, which is no common word', () => {
    for (const id of ['danger', 'warning', 'caution', 'notice']) {
      expect(translatorNotes[`ui:signal.${id}`]).toContain('standard')
    }
  })

  test('of words that mislead, wherever they stand', () => {
    const misleading = english.filter(({ text }) =>
      /\bsound (?:stoneware|glass|crock)\b/i.test(text)
    )
    expect(misleading.length).toBeGreaterThan(2)
    for (const { id } of misleading) expect(translatorNotes[id]).toContain('Without cracks')
  })
})

test('a note of its own comes before a pattern, then phrases, then gaps', async () => {
  const notes = (texts: string) => [
    ...wholeProject().filter(({ path }) => !path.includes('translator-notes')),
    { path: 'shared/translator-notes.yaml', text: texts }
  ]
  const { findings, translatorNotes: made } = await load(
    notes(
      'gaps: {}\nphrases: { throw: Not far. }\ntexts: { "steps:*": Any., "steps:throw-out": Own. }\n'
    )
  )
  expect(findings).toEqual([])
  expect(made['steps:throw-out']).toBe('Own. “throw”: Not far.')
  expect(made['steps:keep-it']).toBe('Any.')
})
