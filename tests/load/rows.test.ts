import { describe, expect, test } from 'vitest'
import { load } from '../../src/load/load.ts'
import { wholeProject } from './project-files.ts'

const project = (text: string) => [...wholeProject(), { path: 'trees/jar/rows.yaml', text }]
const found = async (told: string, expected: string) => {
  const text = `rows:\n  - expect: ${expected}\n    source: a guide\n    told:\n      - '1 a row': ${told}\n`
  return (await load(project(text))).findings.map(({ code, place }) => `${place?.line} ${code}`)
}

describe('rows of the guidance are read with their tree', () => {
  test('as answers, whatever the kind of observation', async () => {
    const { rows, findings } = await load(
      project(
        [
          'usual: { acidity: 3.2 }',
          'rows:',
          '  - expect: { batch: discard }',
          '    source: a guide',
          '    told:',
          "      - '1 fuzz and insects': { growth: fuzzy, vessel: insects }",
          "      - '2 not sure of one': { vessel: { cloudy: unsure }, acidity: 4@meter }"
        ].join('\n')
      )
    )
    expect(findings).toEqual([])
    const acid = { low: 3.2, reading: 3.2, high: 3.2 }
    expect(rows.jar?.map(({ told }) => told)).toEqual([
      { acidity: acid, growth: 'fuzzy', vessel: { insects: 'yes' } },
      { acidity: { low: 3.95, reading: 4, high: 4.05 }, vessel: { cloudy: 'unsure' } }
    ])
  })

  test.each([
    ['an observation that is not there', '{ grwth: fuzzy }', '{ batch: normal }'],
    ['an answer that is not there', '{ growth: fuzy }', '{ batch: normal }'],
    ['a sign that is not there', '{ vessel: insect }', '{ batch: normal }'],
    ['an instrument that is not there', '{ acidity: 4@ruler }', '{ batch: normal }'],
    ['a reading of what is not read', '{ growth: 4 }', '{ batch: normal }'],
    ['a reading beyond its span', '{ acidity: -500 }', '{ batch: normal }'],
    ['a verdict that is not there', '{ growth: fuzzy }', '{ batch: discarded }']
  ])('%s is found in its place', async (_, told, expected) => {
    const findings = await found(told, expected)
    expect(findings).toHaveLength(1)
    expect(findings[0]).toMatch(/^[25] (?:unknown-observation|unknown-verdict|wrong-kind)$/)
  })

  test('rows that are not there cannot be shared', async () => {
    const findings = (await load(project('with: [people]\n'))).findings
    expect(findings.map(({ code }) => code)).toEqual(['missing-file'])
  })

  test('rows without a tree, and rows that no tree names, prove nothing and are found', async () => {
    const rows = 'rows: []\n'
    const codes = async (path: string) =>
      (await load([...wholeProject(), { path, text: rows }])).findings.map(({ code }) => code)
    expect(await codes('trees/jug/rows.yaml')).toEqual(['missing-file'])
    expect(await codes('shared/rows/people.yaml')).toEqual(['piece-unused'])
  })
})
