import { describe, expect, test } from 'vitest'
import { type AuthoredFile, load } from '../../src/load/load.ts'
import { textsOf } from '../../src/load/texts-of-tree.ts'
import { createWords } from '../../src/words/words.ts'
import { codesOf, wholeProject } from './project-files.ts'

/** The whole project, in which the jar has these words of its own in every language. */
const saying = (own: string): readonly AuthoredFile[] =>
  wholeProject().map(({ path, text }) =>
    path.endsWith('/jar.json') ? { path, text: text.replace('{', `{ ${own},`) } : { path, text }
  )

const HINT =
  '"observations": { "vessel": { "signs": { "insects": { "label": "Flies", "hint": "In this jar." } } } }'

describe('a tree may say an observation in words of its own', () => {
  test('they win, and what it leaves out is said in the common words', async () => {
    const { trees, words, findings } = await load(saying(HINT))
    expect(findings).toEqual([])
    expect.assert(trees[0] && words.en)
    const texts = textsOf(trees[0], words.en)
    const before = textsOf(trees[0], { ...words.en, jar: {} })
    const now = createWords({ en: texts }, 'en')
    const common = createWords({ en: before }, 'en')
    expect(now.t('observations:vessel.signs.insects.label')).toBe('Flies')
    expect(now.t('observations:vessel.signs.insects.hint')).toBe('In this jar.')
    for (const key of ['vessel.ask', 'vessel.signs.cloudy.label', 'growth.ask'] as const) {
      expect(now.t(`observations:${key}`)).toBe(common.t(`observations:${key}`))
    }
    expect(common.t('observations:vessel.signs.insects.label')).not.toBe('Flies')
  })

  test.each([
    ['of an observation that it does not ask', '"observations": { "lid": { "ask": "Which?" } }'],
    [
      'of a sign that there is not',
      '"observations": { "vessel": { "signs": { "dust": { "label": "Dust" } } } }'
    ],
    [
      'under a name that no text has',
      '"observations": { "vessel": { "none": "No.", "instruments": { "eye": "An eye" } } }'
    ]
  ])('words %s are nobody’s', async (_, own) => {
    expect(new Set(await codesOf(saying(own)))).toEqual(new Set(['orphaned-text']))
  })

  test('they are translated like all words', async () => {
    const files = saying(HINT).map(({ path, text }) =>
      path === 'locales/es/jar.json' ? { path, text: text.replace(`${HINT},`, '') } : { path, text }
    )
    expect(await codesOf(files)).toEqual(['text-not-translated'])
  })
})
