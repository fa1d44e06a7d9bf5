import { describe, expect, test } from 'vitest'
import { load } from '../../src/load/load.ts'
import { projectWhere, wholeProject } from './project-files.ts'

const FILE = 'shared/know-how/jar.yaml'
const codesOf = async (passage: string, by: string, path = FILE) =>
  (await load(projectWhere(path, passage, by))).findings.map(({ code }) => code)

describe('answers to how-to questions', () => {
  test('are loaded with their ferment, and with the review of their file', async () => {
    const { knowHow } = await load(wholeProject())
    expect(knowHow.answers.map(({ id, ferment, warns }) => [id, ferment, warns])).toEqual([
      ['how-long', 'jar', false],
      ['how-sour', 'any', true]
    ])
    expect(knowHow.answers[0]?.review).toMatchObject({ state: 'draft', due: '2027-11-01' })
    expect(knowHow.allowed.jar?.map(({ id, restUsual }) => [id, restUsual])).toEqual([
      ['know-how-how-long', true]
    ])
  })

  test.each([
    ['because: guide', 'because: giude', 'unknown-source'],
    ['limits: { jar:', 'limits: { jra:', 'unknown-tree'],
    ['allows: { jar:', 'allows: { jra:', 'unknown-tree'],
    ['acidity: [4.2]', 'acidty: [4.2]', 'unknown-observation'],
    ['acidity: { at-most: 4.2 }', 'acidty: { at-most: 4.2 }', 'unknown-observation'],
    ['beyond: [office]', 'beyond: [nobody]', 'wrong-value'],
    ['basis: published', 'basis: rumor', 'wrong-value'],
    ['    beyond: [office]\n', '', 'missing-key']
  ])('`%s` in place of `%s` is found', async (passage, by, code) => {
    expect(await codesOf(passage, by)).toContain(code)
  })

  test('one name for two answers is found where it comes second', async () => {
    const codes = await codesOf('how-sour:', 'how-long:', 'shared/know-how/any.yaml')
    expect(codes).toContain('duplicate-id')
  })

  test('a file about a ferment that has no tree is found', async () => {
    const files = wholeProject().map(file =>
      file.path === FILE ? { ...file, path: 'shared/know-how/jra.yaml' } : file
    )
    expect((await load(files)).findings.map(({ code }) => code)).toContain('unknown-tree')
  })

  test('weeks say whole weeks of days', async () => {
    const files = projectWhere('locales/en/know-how.json', 'From day 7 on', 'After 1 week').map(
      file =>
        file.path === 'locales/es/know-how.json'
          ? { ...file, text: file.text.replace('Desde el día 7', 'Después de 1 semana') }
          : file
    )
    expect((await load(files)).findings).toEqual([])
  })
})
