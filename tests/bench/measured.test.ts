import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { proofRows } from '../../bench/proof-rows.mjs'
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

test('what stopped a proof is said in place of its time', () => {
  const rows = proofRows({
    shipped: { coldMs: 460, ms: 240, cases: 1450, vertices: 25039 },
    beside: [
      {
        ...{ tree: 'three', questions: 12, prover: { rules: 24, coldMs: 4, ms: 0.9 } },
        force: { stopped: 'seconds', sets: 531441, ms: 20_000, wouldTakeMs: 21_000 },
        ...{ generation: { ms: 1600 }, withAnswers: { stopped: '60 s' } }
      }
    ],
    growth: [
      {
        ...{ observations: 20, exponent: 0.66 },
        cases: [{ questions: 10_000, ms: 1750, peakMB: 278 }]
      }
    ],
    stops: [
      {
        ...{ tree: 'hostile', questions: 100, observations: 20 },
        diagrams: { stopped: 'vertices', vertices: 2_000_000 },
        search: { stopped: 'seconds' }
      }
    ]
  })
  expect(rows).toContainEqual(['growth with the questions, 20 observations', '0.66', '1.2'])
  expect(rows).toContainEqual([
    '10,000 questions, 20 observations',
    '1,750 ms, 278 MB',
    '5,000 ms, 512 MB'
  ])
  expect(rows.map(([, measured]) => measured)).toEqual(
    expect.arrayContaining([
      'stopped; 5.3e+5 sets, at this rate 21,000 ms',
      'stopped by 60 s',
      '400',
      'stopped by vertices, 2,000,000 vertices; by searching stopped by seconds'
    ])
  )
})
