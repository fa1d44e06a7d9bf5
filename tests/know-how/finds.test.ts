import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { loadShipped } from '../helpers/shipped.ts'
import { answers, ask } from './shipped-search.ts'

interface Question {
  readonly asks: string
  readonly finds: string
  readonly slip?: true
}

interface Questions {
  readonly en: readonly Question[]
  readonly es: readonly Question[]
  readonly looks: readonly string[]
  readonly emergencies: readonly string[]
  readonly elsewhere: readonly string[]
}

const { en, es, looks, emergencies, elsewhere }: Questions = parse(
  readFileSync(join(import.meta.dirname, 'questions.yaml'), 'utf8')
)
const all = [...en, ...es]
const missed = (questions: readonly Question[]) =>
  questions.flatMap(({ asks, finds }) => {
    const [first] = ask(asks).answers
    return first === finds ? [] : [`${asks} → ${first}, not ${finds}`]
  })

describe('questions find their answers', () => {
  test('there are 100 and more, half of them Spanish, a third misspelled, of many answers', () => {
    expect(all.length).toBeGreaterThanOrEqual(100)
    expect(es.length * 2).toBeGreaterThanOrEqual(all.length)
    expect(all.filter(({ slip }) => slip).length * 3).toBeGreaterThanOrEqual(all.length)
    const known = new Set(answers.map(({ id }) => id))
    expect(all.filter(({ finds }) => !known.has(finds))).toEqual([])
    expect(new Set(all.map(({ finds }) => finds)).size).toBeGreaterThan(45)
  })

  test('nine of ten find the right one first', () => {
    expect(missed(all).length, missed(all).join('\n')).toBeLessThanOrEqual(all.length / 10)
  })

  test.each(['en', 'es'] as const)('in each language: %s', tag => {
    const questions = tag === 'en' ? en : es
    expect(missed(questions).length).toBeLessThanOrEqual(Math.ceil(questions.length / 10))
  })

  test('of the misspelled four of five', () => {
    const slips = all.filter(({ slip }) => slip)
    expect(missed(slips).length, missed(slips).join('\n')).toBeLessThanOrEqual(slips.length / 5)
  })

  test('none of them is sent to a jar or to the emergency line', () => {
    expect(all.filter(({ asks }) => ask(asks).lead !== null)).toEqual([])
  })
})

describe('an answer’s own words find it', async () => {
  const { words } = await loadShipped()
  const rows = ['en', 'es'].flatMap(tag =>
    answers.map(({ id }) => {
      const group = words[tag]?.['know-how'] as Record<string, { ask: string; said: string }>
      return { tag, id, own: group[id] ?? { ask: '', said: '' } }
    })
  )

  test.each(rows)('$tag $id first by its question', ({ id, own }) => {
    expect(ask(own.ask)).toMatchObject({ lead: null })
    expect(ask(own.ask).answers[0]).toBe(id)
  })

  test('none of a caller’s other words is taken for a question about one jar', () => {
    const lines = rows.flatMap(({ own }) => own.said.split('; '))
    expect(lines.length).toBeGreaterThan(1_000)
    expect(lines.filter(line => ask(line).lead !== null)).toEqual([])
  })
})

describe('a question about one jar is never answered', () => {
  test.each(looks)('%s', line => {
    const { lead, ferment, answers: beside } = ask(line)
    expect(lead).toBe('look')
    for (const id of beside) {
      const answer = answers.find(each => each.id === id)
      expect(answer?.warns).toBe(true)
      expect(['any', ferment]).toContain(answer?.ferment)
    }
  })

  test('the tree of the food that is named is the one to look with', () => {
    expect(ask('is my kombucha ok').ferment).toBe('kombucha-jar')
    expect(ask('¿mi chucrut está echado a perder?').ferment).toBe('brined-vegetables')
    expect(ask('is it safe to drink').ferment).toBe(null)
  })
})

describe('words of an emergency lead to its number alone', () => {
  test.each(emergencies)('%s', line => {
    expect(ask(line)).toEqual({ lead: 'emergency', ferment: null, answers: [] })
  })
})

describe('what is not answered here is said to be so', () => {
  test.each(elsewhere)('%s', line => {
    expect(ask(line)).toMatchObject({ lead: null, answers: [] })
  })

  test.each(['', '   ', '?!', 'a', 'the of to', 'x'.repeat(5_000), '🫙'])('%j', line => {
    expect(ask(line).answers).toEqual([])
  })
})
