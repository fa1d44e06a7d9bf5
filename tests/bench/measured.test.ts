import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { measuredPage, recorded } from '../../bench/record.mjs'

test('the page of measured figures is what was recorded, each part with its day', () => {
  const records = recorded()
  expect(readFileSync('docs/measured.md', 'utf8')).toBe(measuredPage(records))
  expect(Object.keys(records).sort()).toEqual(
    ['commands', 'page', 'prove', 'quarter', 'science', 'tally'].sort()
  )
  for (const { on, rows } of Object.values(records)) {
    expect(on).toMatch(/^\d{4}-\d\d-\d\d$/)
    expect(rows.length).toBeGreaterThan(2)
  }
})
