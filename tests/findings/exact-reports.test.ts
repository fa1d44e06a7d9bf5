import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { load } from '../../src/load/load.ts'
import { projectWith, reportOn, wholeProject } from '../load/project-files.ts'

const cases = readdirSync('tests/bad')
  .filter(file => file.endsWith('.yaml') && file !== 'nothing-wrong.yaml')
  .map(file => file.replace('.yaml', ''))

describe('a faulty project is reported word for word', () => {
  test('nothing is reported of a project in which nothing is wrong', async () => {
    const { findings, trees } = await load(wholeProject())
    expect(findings).toEqual([])
    expect(trees.map(({ id }) => id)).toEqual(['jar'])
  })

  // Reports are changed one by one, and read like prose when they are: nothing here rewrites them.
  test.each(cases)('%s', async code => {
    const files = projectWith(readFileSync(`tests/bad/${code}.yaml`, 'utf8'))
    const loaded = await load(files)
    expect(loaded.findings.map(finding => finding.code)).toContain(code)
    expect(reportOn(files, loaded)).toBe(readFileSync(`tests/bad/${code}.txt`, 'utf8'))
  })

  test.each(cases)('%s names no library and no word for machines', code => {
    const report = readFileSync(`tests/bad/${code}.txt`, 'utf8')
    expect(report).not.toMatch(
      /\b(zod|TypeScript|undefined|NaN|invalid|object|array|null pointer)\b/i
    )
  })
})
