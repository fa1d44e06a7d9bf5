import { beforeAll, describe, expect, test } from 'vitest'
import { answerOf, type Caller, callers } from '../../bench/reading/callers.ts'
import { breachesOf, MOST_NEEDLESS, needlessShare } from '../../bench/reading/limits.ts'
import {
  type Reading,
  readingOf,
  type SeenScreen,
  type SeenText
} from '../../bench/reading/measure.ts'
import { needlessIn } from '../../bench/reading/needless.ts'
import { breachLine, document, tableOf } from '../../bench/reading/table.ts'
import { minutes, SILENTLY, wordsIn } from '../../bench/reading/words.ts'
import { walk } from '../../src/evaluate/walk.ts'
import type { Answers } from '../../src/tree/answers.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { shippedTrees } from '../helpers/shipped.ts'
import { sketch } from '../helpers/sketch.ts'

describe('words are counted as readers count them', () => {
  test.each([
    ['en', 'Throw it all out: the liquid and the culture.', 9],
    ['en', "Don't stir it (yet).", 4],
    ['en', 'pH 4.2 or lower, 1-800-222-1222', 5 + 3],
    ['en', ' · — … ', 0],
    ['es', '¿Está bien? ¡No lo bebas todavía!', 6],
    ['es', 'Más de 38 °C, ½ cucharadita', 6],
    ['es', 'El niño de 3 años', 5]
  ])('%s: %s', (language, text, count) => {
    expect(wordsIn(text, language)).toBe(count)
  })

  test('and read at a pace', () => {
    expect(minutes(SILENTLY * 3, SILENTLY)).toBe(3)
    expect(minutes(119, SILENTLY)).toBe(0.5)
  })
})

const text = (words: string, more: Partial<SeenText> = {}): SeenText => ({
  text: words,
  inSight: words,
  part: 'rest',
  doubled: false,
  ...more
})
const screen = (
  observation: string | null,
  texts: readonly SeenText[],
  screens = 1
): SeenScreen => ({ observation, presses: 1, texts, screens })
const WALK = { caller: 'fuzz', place: 'desk', language: 'en' }

describe('a walk adds up', () => {
  const head = text('Jarside Back', { part: 'frame' })
  const danger = text('Leave it alone', { part: 'card' })
  const asked = text('What is on top?', { part: 'asked', inSight: 'What is' })

  test('head and foot once, the outcome apart, a danger read out once', () => {
    const reading = readingOf(
      WALK,
      [
        screen('choose', [head, text('one')], 2.5),
        screen('top', [head, asked, danger], 1.25),
        screen(null, [head, danger, text('folded no more', { inSight: '' })], 7)
      ],
      ['top']
    )
    expect(reading.asked).toEqual(['top'])
    expect(reading.before).toEqual({ whole: 2 + 1 + 4 + 3, inSight: 2 + 1 + 2 + 3 })
    expect(reading.outcome).toEqual({ whole: 6, inSight: 3 })
    expect(reading.toVerdict).toBe(13)
    // The outcome counts as the one window in which it stands.
    expect(reading.screens).toBe(4.8)
    expect(reading.presses).toBe(3)
    expect(reading.aloud).toEqual({ asked: 4, card: 3, smallPrint: 0 })
  })

  test('a caller who speaks Spanish is read the Spanish alone', () => {
    const both = [
      text('What is on top?', { part: 'asked', doubled: true }),
      text('¿Qué hay encima?', { part: 'asked' })
    ]
    const screens = [screen('top', both), screen(null, [])]
    expect(readingOf({ ...WALK, language: 'es' }, screens, []).aloud.asked).toBe(3)
  })
})

const reading = (more: Partial<Reading>): Reading => ({
  caller: 'strands',
  place: 'page',
  language: 'en',
  asked: ['a', 'b'],
  needless: [],
  before: { inSight: 0, whole: 0 },
  outcome: { inSight: 130, whole: 900 },
  toVerdict: 9999,
  screens: 99,
  presses: 99,
  aloud: { asked: 9999, card: 0, smallPrint: 0 },
  ...more
})

describe('a number above its goal', () => {
  test('counts for those that the goal is about, and at the goal for nobody', () => {
    expect(breachesOf([reading({})])).toEqual([])
    const over = breachesOf([
      reading({ caller: 'fuzz', toVerdict: 351, screens: 5 }),
      reading({ place: 'desk', presses: 9, aloud: { asked: 200, card: 151, smallPrint: 9 } }),
      reading({ outcome: { inSight: 131, whole: 131 } })
    ])
    expect(over.map(breachLine)).toEqual([
      'fuzz, page, en: 351 words to the verdict, goal 350',
      'strands, desk, en: 351 words read aloud, goal 350',
      'strands, page, en: 131 words of the outcome in sight, goal 130'
    ])
  })

  test('needless questions count over the callers of a place', () => {
    const nine = Array.from({ length: 9 }, () => reading({ asked: ['a'] }))
    const needless = reading({ asked: ['a'], needless: ['a'] })
    expect(needlessShare([...nine, needless])).toBe(MOST_NEEDLESS)
    expect(breachesOf([...nine, needless])).toEqual([])
    expect(breachesOf([...nine.slice(1), needless]).map(breachLine)).toEqual([
      'all callers, page, en: 11.1 % needless questions, goal 10'
    ])
  })
})

test('the document has a table for each place and language, of whole lines', () => {
  const made = document([reading({}), reading({ place: 'desk', language: 'es' })], '2026-11-29')
  expect(made.match(/^## .*$/gm)).toEqual([
    '## Against the goals',
    '## Page, English',
    '## Desk, Spanish'
  ])
  expect(tableOf(['a'], [['wide']])).toBe('| a    |\n| ---- |\n| wide |')
})

describe('the callers', () => {
  let trees: readonly Tree[]
  beforeAll(async () => {
    trees = await shippedTrees()
  })
  const treeOf = ({ tree: id }: Caller) => {
    const tree = trees.find(each => each.id === id)
    if (tree === undefined) throw new Error(`there is no tree ${id}`)
    return tree
  }

  /** Everything that a caller is asked, with the answers given. */
  const played = (caller: Caller): Answers => {
    const tree = treeOf(caller)
    for (let told: Answers = {}; ; ) {
      const { asks } = walk(tree, told)
      const observation = tree.observations[asks?.observation ?? '']
      if (observation === undefined) return told
      told = { ...told, [observation.id]: answerOf(caller, tree, observation) }
    }
  }

  test('are twelve, each different', () => {
    expect(new Set(callers().map(({ id }) => id)).size).toBe(12)
  })

  test.each(callers())('$id tells only what the tree asks, as it can be answered', caller => {
    const tree = treeOf(caller)
    for (const id of Object.keys(caller.tells ?? {})) {
      const observation = tree.observations[id]
      expect(observation?.id).toBe(id)
      if (observation) expect(answerOf(caller, tree, observation)).toBeDefined()
    }
  })

  test('what is no answer is refused', () => {
    const [caller] = callers() as [Caller]
    const tree = treeOf(caller)
    const top = tree.observations['surface-texture'] as Tree['observations'][string]
    const wrong = { ...caller, tells: { 'surface-texture': 'purple' } }
    expect(() => answerOf(wrong, tree, top)).toThrow('is no answer to surface-texture')
  })

  test('come to an end, and nobody asks needlessly who is ill, or about the fur that was found', () => {
    for (const caller of callers()) {
      const told = played(caller)
      const needless = needlessIn(treeOf(caller), told)
      expect(Object.keys(told)).toEqual(expect.arrayContaining([...needless]))
      expect(needless).not.toContain('people-signs')
      if (caller.id === 'fuzz') expect(needless).not.toContain('surface-texture')
    }
  })
})

describe('a question is needless', () => {
  const tree = sketch({
    tint: { red: '→ top', clear: '→ top', unsure: '→ top' },
    top: { '!fuzzy': '+likely-mold → lid', wet: '→ lid', unsure: '~not-yet → lid' },
    lid: { '?tight': '~not-yet', '?tight unsure': '', else: '= normal-growth' }
  })
  const lid = { tight: 'no' } as const

  test('where every answer to it comes to the same', () => {
    expect(needlessIn(tree, { tint: 'red', top: 'wet', lid })).toEqual(['tint'])
  })

  test('where what else was told leaves it nothing to change', () => {
    expect(needlessIn(tree, { tint: 'red', top: 'fuzzy', lid })).toEqual(['tint', 'lid'])
  })

  test('and is not looked for before the end', () => {
    expect(() => needlessIn(tree, { tint: 'red' })).toThrow('not at its end')
  })
})
