import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { loadShipped } from '../helpers/shipped.ts'
import { shippedReader, sureOf, TREES } from '../reader/shipped-reader.ts'

const { words } = await loadShipped()
interface Asked {
  readonly asks: string
  readonly tells?: true
}

const asked: Readonly<Record<'en' | 'es', readonly Asked[]>> = parse(
  readFileSync(join(import.meta.dirname, 'questions.yaml'), 'utf8')
)
const own = ['en', 'es'].flatMap(tag => {
  const texts = words[tag]?.['know-how'] as Readonly<Record<string, { readonly ask: string }>>
  // "The yogurt maker lost power: what now?" tells something first.
  return Object.values(texts).flatMap(({ ask = '' }) => (ask.includes(':') ? [] : [ask]))
})
const lines: readonly string[] = [
  ...[...asked.en, ...asked.es].flatMap(({ asks, tells }) => (tells ? [] : [asks])),
  ...own
]

describe('a how-to question is never read as a fact', () => {
  test('they are many', () => {
    expect(lines.length).toBeGreaterThan(300)
  })

  test.each(TREES)('by the reader of %s', id => {
    const { reader } = shippedReader(id)
    const read = lines.flatMap(line => sureOf(reader, line).map(fact => [line, fact]))
    expect(read).toEqual([])
  })
})
