import { describe, expect, test } from 'vitest'
import { type AuthoredFile, load } from '../../src/load/load.ts'
import { projectWhere, wholeProject } from './project-files.ts'

const withUi = (english: string, spanish: string, tag = 'es'): readonly AuthoredFile[] => [
  ...wholeProject().map(({ path, text }) => ({
    path: path.replace('locales/es/', `locales/${tag}/`),
    text
  })),
  { path: 'locales/en/ui.json', text: english },
  { path: `locales/${tag}/ui.json`, text: spanish }
]
const found = async (files: readonly AuthoredFile[]) =>
  (await load(files)).findings.map(({ code, facts }) => [code, facts.text ?? facts.file])
const told = async (english: string, spanish: string) => {
  const { findings } = await load(
    withUi(JSON.stringify({ back: english }), JSON.stringify({ back: spanish }))
  )
  return findings.map(({ code, facts: { lacks, adds } }) => [code, lacks, adds])
}

describe('a language has the texts that English has', () => {
  test('a whole file that is missing is told of as one', async () => {
    const files = wholeProject().filter(({ path }) => path !== 'locales/es/notes.json')
    expect(await found(files)).toEqual([['missing-file', 'locales/es/notes.json']])
  })

  test('a file that English has not translates nothing', async () => {
    const files = [...wholeProject(), { path: 'locales/es/ui.json', text: '{ "back": "Atrás" }' }]
    expect(await found(files)).toEqual([['text-without-english', 'back']])
  })

  test('a missing group of texts is told of as one', async () => {
    const files = projectWhere('locales/es/observations.json', /"wrinkled": \{.*\},/, '')
    expect(await found(files)).toEqual([['text-not-translated', 'growth.answers.wrinkled']])
  })

  test('a hint that English has not is one too many', async () => {
    const files = projectWhere('locales/es/observations.json', '"Pliegues"', '"P", "hint": "Q"')
    expect(await found(files)).toEqual([['text-without-english', 'growth.answers.wrinkled.hint']])
  })

  test('one text does not stand for a group of texts', async () => {
    const files = projectWhere(
      'locales/es/observations.json',
      /"unsure": "No lo sé"/,
      '"unsure": { "label": "No lo sé" }'
    )
    expect((await found(files)).sort()).toEqual([
      ['text-not-translated', 'vessel.unsure'],
      ['text-without-english', 'vessel.unsure']
    ])
  })

  test('a fault of the English words is told of before all translations', async () => {
    const files = projectWhere('locales/en/notes.json', '"cloudy"', '"clowdy"')
    expect(await found(files)).toEqual([
      ['orphaned-text', 'clowdy'],
      ['missing-text', 'cloudy']
    ])
  })
})

describe('a count has the plural forms that the language has', () => {
  const english = '{ "day_one": "{{count}} day", "day_other": "{{count}} days" }'
  const spanish = (many: string) =>
    `{ "day_one": "{{count}} día", ${many} "day_other": "{{count}} días" }`

  test('Spanish has three, and all of them are held against the English', async () => {
    expect(await found(withUi(english, spanish('"day_many": "{{count}} de días",')))).toEqual([])
    expect(await found(withUi(english, spanish('"day_many": "de días",')))).toEqual([
      ['placeholder-differs', 'day_many']
    ])
  })

  test('a form that is missing, and one that Spanish has not, are told of', async () => {
    expect(await found(withUi(english, spanish('')))).toEqual([['text-not-translated', 'day_many']])
    const few = '"day_many": "{{count}} de días", "day_few": "{{count}} días",'
    expect(await found(withUi(english, spanish(few)))).toEqual([
      ['text-without-english', 'day_few']
    ])
  })

  test.each([
    ['ja', '{ "day_other": "{{count}}日" }'],
    ['xx', '{ "day_one": "{{count}}", "day_other": "{{count}}" }'],
    ['es-12', '{ "day_one": "{{count}}", "day_other": "{{count}}" }']
  ])('%s goes by its own forms, by those of English when unknown', async (tag, words) => {
    expect(await found(withUi(english, words, tag))).toEqual([])
  })
})

describe('a translation says the numbers that English says', () => {
  test.each([
    ['a comma for a point', 'over 4.2 or 8.25%', 'más de 4,2 u 8,25%'],
    ['a fraction in either form', '1½ spoons, 1/10 inch', '1 1/2 cucharadas, 1/10 de pulgada'],
    ['numbers in words', 'two jars on day 7', 'dos frascos el día 7'],
    ['a full stop after a number', 'Wait 24 hours. Or 48.', 'Espere 24 horas. O 48.']
  ])('%s is no difference', async (_, english, spanish) => {
    expect(await told(english, spanish)).toEqual([])
  })

  test.each([
    ['a limit', 'at most 4.2', 'como máximo 4.6', ['4.2'], ['4.6']],
    ['a fraction', '1½ teaspoons', '1 cucharadita', ['1/2'], []],
    ['the second of two equal numbers', '7.5 mL at 7.5%', '5 mL con 7.5%', ['7.5'], ['5']],
    ['one end of a range', '24–48 hours', '24–72 horas', ['48'], ['72']],
    [
      'a phone number',
      'Call 1-800-222-1222.',
      'Llame al 1-800-222-1221.',
      ['1-800-222-1222'],
      ['1-800-222-1221']
    ],
    ['a number that is left out', 'Call 911 now.', 'Llame ahora.', ['911'], []],
    ['the order', '2 cups in 16 cups', '16 tazas con 2 tazas', ['2, 16'], ['16, 2']],
    ['a unit', '2 teaspoons', '2 cucharadas', ['2 teaspoon'], ['2 tablespoon']],
    ['a number in words', 'two jars', 'tres frascos', ['2'], ['3']],
    ['a side of a limit', '4.6 or less', '4.6 o más', ['at most'], ['at least']]
  ])('%s may not change', async (_, english, spanish, lacks, adds) => {
    expect(await told(english, spanish)).toEqual([['number-differs', lacks, adds]])
  })

  test('a gap that is filled in is neither renamed nor left out', async () => {
    expect(await told('{{from}} to {{to}}', '{{to}} desde {{from}}')).toEqual([
      ['placeholder-differs', ['from, to'], ['to, from']]
    ])
    expect(await told('{{from}} to {{to}}', '{{from}}')).toEqual([
      ['placeholder-differs', ['to'], []]
    ])
  })
})
