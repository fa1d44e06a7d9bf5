import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { numbersIn } from '../../src/translation/amounts.ts'
import { loadShipped } from '../helpers/shipped.ts'

interface Note {
  readonly answer: string
  readonly source: string
  readonly note: string
  readonly numbers?: readonly (number | string)[]
  readonly says?: string
}

const notes: readonly Note[] = parse(
  readFileSync(join(import.meta.dirname, 'source-notes.yaml'), 'utf8')
)
const { knowHow, words, sources } = await loadShipped()
const english = words.en?.['know-how'] as Readonly<Record<string, { readonly answer: string }>>
const answerOf = (id: string) => english[id]?.answer ?? ''
const byId = new Map(knowHow.answers.map(answer => [answer.id, answer]))
/** Poison Help is a constant of the country, tested where it is one. */
const POISON_HELP = '1-800-222-1222'
const told = (id: string) =>
  numbersIn(answerOf(id))
    .filter(number => number !== POISON_HELP)
    .map(worthOf)

/** `2/3`, `4.60` and `4.6` by what they are worth. */
function worthOf(number: string | number): number {
  const [over = '', under = '1'] = String(number).split('/')
  return Number(over) / Number(under)
}

describe('each sourced statement says what its source says', () => {
  test.each(notes)('$answer: $note', ({ answer, source, numbers = [], says }) => {
    expect(numbers.length > 0 || says !== undefined).toBe(true)
    const entry = byId.get(answer)
    expect(entry?.because).toContain(source)
    for (const number of numbers) expect(told(answer)).toContain(worthOf(number))
    if (says !== undefined) expect(answerOf(answer)).toMatch(new RegExp(says))
  })

  test.each(knowHow.answers.map(({ id }) => id))('%s says no number without a note', id => {
    const noted = notes
      .filter(note => note.answer === id)
      .flatMap(({ numbers = [] }) => numbers.map(worthOf))
    const emergency = answerOf(id).includes('911') ? [911] : []
    expect(told(id).filter(number => ![...noted, ...emergency].includes(number))).toEqual([])
  })

  test('every answer that stands on guidance has a note', () => {
    const noted = new Set(notes.map(({ answer }) => answer))
    const published = knowHow.answers.filter(({ basis }) => /published|relayed/.test(basis))
    expect(published.length).toBeGreaterThan(30)
    expect(published.map(({ id }) => id).filter(id => !noted.has(id))).toEqual([])
  })
})

describe('the basis of an answer is no better than its sources', () => {
  const NO_PUBLICATION = new Set(['common-practice', 'own-caution', 'from-memory'])

  test.each(knowHow.answers.filter(({ basis }) => /published|relayed/.test(basis)))(
    '$id has a publication',
    ({ because }) => {
      expect(because.some(id => !NO_PUBLICATION.has(id))).toBe(true)
      expect(because.filter(id => !Object.hasOwn(sources, id))).toEqual([])
    }
  )

  test.each(knowHow.answers)('$id is a draft with a day of review and somebody to ask', answer => {
    expect(answer.review).toMatchObject({ state: 'draft', reviewed: null })
    expect(answer.review.due).toMatch(/^20\d\d-\d\d-\d\d$/)
    expect(answer.beyond.length).toBeGreaterThan(0)
  })
})
