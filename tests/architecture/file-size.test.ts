import { readdirSync, readFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { describe, expect, test } from 'vitest'

const files = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter(file => /\.tsx?$/.test(file))
  .map(file => join('src', file))
const linesOf = (file: string) => readFileSync(file, 'utf8').split('\n').length - 1

describe('source files stay small enough to read', () => {
  test.each(files)('%s has at most 300 lines', file => {
    expect(linesOf(file)).toBeLessThanOrEqual(300)
  })

  test('half of them have at most 80 lines', () => {
    const sorted = files.map(linesOf).sort((a, b) => a - b)
    expect(sorted[Math.floor((sorted.length - 1) / 2)]).toBeLessThanOrEqual(80)
  })

  test.each(files)('%s is named in kebab-case', file => {
    expect(basename(file)).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*(\.d)?\.tsx?$/)
  })
})
