import { describe, expect, test } from 'vitest'
import { textsIn } from '../../src/load/texts.ts'
import { loadShipped } from '../helpers/shipped.ts'

const { trees, words } = await loadShipped()

/** Words that a text of an outcome may have, in English. */
const LIMITS = { step: 30, message: 12, why: 22, use: 12, 'who-must-not': 22 }
type Part = keyof typeof LIMITS
/** Other languages need a third more. */
const limitIn = (tag: string, part: Part) =>
  tag === 'en' ? LIMITS[part] : Math.round((LIMITS[part] * 4) / 3)

/** Texts that are long, each with the reason: no part of them may stand without the others. */
const LONGER: Readonly<Record<string, string>> = {
  'steps:bleach-caution': 'which bleach, what never goes with it, and who has to be kept away',
  'steps:bottles-from-this-jar': 'what to do depends on what is seen first, and both ways end here',
  'steps:add-starter-or-vinegar-today': 'two amounts, a limit, and what to do without starter',
  'steps:spill-of-possible-toxin': 'a recipe with its amounts, its minutes and what never to mix',
  'steps:clean-a-toxin-spill': 'the same recipe for a spill',
  'steps:test-when-cold': 'nobody may test a warm bottle, and the test has a last day',
  'steps:test-again-with-a-meter': 'nobody may test a warm bottle',
  'steps:mix-then-test': 'a limit for each instrument, and two ways on from it',
  'steps:starter-today-by-meter': 'two limits, and what each reading leads to',
  'steps:test-kraut-acid': 'six limits: by instrument and by salt',
  'steps:test-pickle-acid': 'six limits: by instrument and by recipe',
  'steps:chill-and-test-a-bottle': 'nobody may test a warm bottle, and the test has a last day',
  'steps:cold-bottle-with-a-meter': 'nobody may test a warm bottle',
  'kombucha-bottle:verdicts.normal-growth.use-never': 'the amount a day stands beside who has none',
  'kombucha-bottle:verdicts.yeast-strands.use-never': 'the amount a day stands beside who has none'
}

/** A number and its unit are one word. */
const count = (text: string): number =>
  text
    .replace(/(\d)\s+(?=(?:°F|°C|%|mL|L|g)(?!\p{L}))/gu, '$1')
    .split(/\s+/)
    .filter(word => /[\p{L}\d]/u.test(word)).length

/** The line that can stand alone. */
const firstSentence = (text: string): string => text.split(/(?<=[.!?])\s+/)[0] ?? ''

/** What a text of a tree's own words is, if an outcome says it in short. */
function partOf(key: string): Part | null {
  if (key.startsWith('steps.')) return 'step'
  if (key === 'cautions.who-must-not') return 'who-must-not'
  const [, part = null] = /^verdicts\..*\.(message|why|use)(?:-[a-z-]+)?$/.exec(key) ?? []
  return part as Part | null
}

interface Said {
  readonly at: string
  readonly part: Part
  readonly text: string
}

const saidIn = (tag: string): readonly Said[] =>
  ['steps', 'verdicts', ...trees.map(({ id }) => id)].flatMap(stem => {
    const shared = stem === 'steps' || stem === 'verdicts'
    return [...textsIn(words[tag]?.[stem])].flatMap(([key, text]) => {
      const part = partOf(shared ? `${stem}.${key}` : key)
      if (part === null) return []
      return [
        { at: `${stem}:${key}`, part, text: part === 'who-must-not' ? firstSentence(text) : text }
      ]
    })
  })

const isLong = (tag: string, { part, text }: Said) => count(text) > limitIn(tag, part)

describe.each(['en', 'es'])('what an outcome says is read in one look in %s', tag => {
  const said = saidIn(tag)

  test('every tree is among them, with each kind of text', () => {
    expect(said.length).toBeGreaterThan(500)
    expect(new Set(said.map(({ part }) => part))).toEqual(new Set(Object.keys(LIMITS)))
    const lines = said.filter(({ part }) => part === 'who-must-not')
    expect(lines.map(({ at }) => at)).toEqual(trees.map(({ id }) => `${id}:cautions.who-must-not`))
  })

  test.each(Object.keys(LIMITS) as Part[])('%s', part => {
    const long = said
      .filter(each => each.part === part && isLong(tag, each))
      .filter(({ at }) => !Object.hasOwn(LONGER, at))
    expect(long.map(({ at, text }) => `${at} (${count(text)}): ${text}`)).toEqual([])
  })
})

test('a long text that became short is no longer excused', () => {
  const long = saidIn('en').filter(each => isLong('en', each))
  expect(new Set(long.map(({ at }) => at))).toEqual(new Set(Object.keys(LONGER)))
})

/** Whoever must not have any is named in the line that stands alone. */
test.each([
  [
    'en',
    ['65 or older', 'pregnant', 'breastfeeding', 'weak immunity', 'diabetes', 'liver', 'kidney']
  ],
  ['es', ['65 o más', 'embarazo', 'lactancia', 'defensas bajas', 'diabetes', 'hígado', 'riñones']]
] as const)('in %s one line names everybody who must not have any', (tag, groups) => {
  const lines = saidIn(tag).filter(({ part }) => part === 'who-must-not')
  for (const { at, text } of lines) {
    expect([at, ...groups.filter(group => !text.includes(group))]).toEqual([at])
    expect(text).toMatch(/\b(?:under (?:18|5)|menores de (?:18|5))\b/)
  }
})
