import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { basename } from 'node:path'
import { describe, expect, test } from 'vitest'
import { CATALOGUE } from '../../src/findings/catalogue.ts'

const codes = Object.keys(CATALOGUE)
const [, guide = ''] = readFileSync('trees/README.md', 'utf8').split('\n## Findings\n')

describe('no finding goes untested or unexplained', () => {
  test.each(codes)('%s is explained in the authors’ guide, with a remedy', code => {
    const [, section = ''] = guide.split(`\n### ${code}\n`)
    expect(section.split('\n### ')[0]).toMatch(/^\n_Why:_ .+ _How to fix:_ .+\n*$/)
  })

  test.each(codes)('%s has files that give it, and the exact report', code => {
    expect(existsSync(`tests/bad/${code}.diff`)).toBe(true)
    expect(readFileSync(`tests/bad/${code}.txt`, 'utf8')).toContain(`  ${code}\n`.trimStart())
  })

  test('the guide explains no finding that does not exist', () => {
    const headings = [...guide.matchAll(/^### (.+)$/gm)].map(([, heading]) => heading)
    expect(headings.sort()).toEqual([...codes].sort())
  })

  test('every case in tests/bad is named after a finding', () => {
    const cases = readdirSync('tests/bad').map(file =>
      basename(file).replace(/\.(yaml|diff|txt)$/, '')
    )
    expect([...new Set(cases)].sort()).toEqual([...codes, 'nothing-wrong'].sort())
  })
})
