import { expect, test } from 'vitest'
import { evaluate } from '../../src/evaluate/evaluate.ts'
import { reportOn } from '../../src/report/report.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { groundOf, knownLines } from '../../src/words/known.ts'
import { createWords } from '../../src/words/words.ts'
import { loadShipped } from '../helpers/shipped.ts'
import { usualExcept } from '../helpers/usual.ts'

const { trees, sources, words } = await loadShipped()
const english = createWords(words, 'en')
const spanish = createWords(words, 'es')
const jar = trees[0] as Tree
const moldy = reportOn(
  evaluate(jar, usualExcept(jar, { 'surface-texture': 'dry-fuzzy' })),
  null,
  new Date('2027-01-10T12:00:00Z')
)

test('a source is as firm as how it came to be known', () => {
  const source = (id: string) => sources[id] as (typeof sources)[string]
  expect(groundOf(source('niagara-kombucha'))).toBe('published')
  expect(groundOf(source('nummer-2013'))).toBe('relayed')
  expect(groundOf(source('common-practice'))).toBe('common-practice')
  expect(groundOf(source('own-caution'))).toBe('own-caution')
  expect(groundOf(source('from-memory'))).toBe('memory')
  expect(groundOf({})).toBe('memory')
})

test('the verdict and the steps say what they rest on, and each weak ground what is not known', () => {
  const raising = moldy.trail.flatMap(({ because, raised }) => (raised.length > 0 ? because : []))
  expect(raising).toContain('common-practice')
  const lines = knownLines(moldy, sources, english)
  expect(lines[0]).toMatch(/^This verdict rests on: published guidance.*common practice/)
  expect(lines[1]).toMatch(/^The steps rest on: /)
  expect(lines).toContain('Common practice: no published source was found.')
  // From memory is said of nothing that does not rest on it.
  expect(lines.join(' ')).not.toContain('memory')
  expect(knownLines(moldy, sources, spanish).length).toBe(lines.length)
})

test('only what is cited counts: with published sources alone nothing is doubted', () => {
  const read = Object.fromEntries(
    Object.entries(sources).filter(([, source]) => groundOf(source) === 'published')
  )
  const lines = knownLines(moldy, read, english)
  expect(lines).toEqual([
    'This verdict rests on: published guidance.',
    'The steps rest on: published guidance.'
  ])
  expect(knownLines(moldy, {}, english)).toEqual([])
})
