import { describe, expect, test } from 'vitest'
import { load } from '../../src/load/load.ts'
import { codesOf, projectWhere, projectWith, wholeProject } from './project-files.ts'

const treeWith = (...exchanges: readonly (readonly [string, string])[]) =>
  exchanges.reduce(
    (files, [passage, by]) =>
      files.map(file =>
        file.path === 'trees/jar/tree.yaml'
          ? { ...file, text: file.text.replace(passage, by) }
          : file
      ),
    wholeProject()
  )

describe('an author sees all findings of a stage at once', () => {
  test('every wrong name in a tree is told in one run', async () => {
    const files = treeWith(
      ['raise: wait, to: side', 'raise: wiat, to: syde'],
      ['note: look-again', 'note: look'],
      ['at-least: discard', 'at-least: discrad'],
      ['basis: published\n    because: guide', 'basis: published\n    because: gide']
    )
    expect(await codesOf(files)).toEqual([
      'unknown-verdict',
      'unknown-question',
      'unknown-note',
      'unknown-verdict',
      'unknown-source'
    ])
  })

  test('a wrong name does not make its question seem unreachable', async () => {
    expect(await codesOf(treeWith(['at-most: 4.2, to: age', 'at-most: 4.2, to: agee']))).toEqual([
      'unknown-question'
    ])
  })

  test('two wrong keys in one group are both told', async () => {
    expect(await codesOf(treeWith(['borderline: {', 'border: {'], ['ranges:', 'range:']))).toEqual([
      'unknown-key',
      'unknown-key'
    ])
  })

  test('a tree with a finding is not among the trees', async () => {
    const { trees } = await load(treeWith(['to: side', 'to: syde']))
    expect(trees).toEqual([])
  })

  test('a piece out of shape is told of once, and not called unknown', async () => {
    const files = projectWhere('shared/pieces/start.yaml', 'exits:', 'exit:')
    expect(await codesOf(files)).toEqual(['missing-key', 'unknown-key'])
  })

  test('a faulty tree leaves the other trees in', async () => {
    const second = `# file: trees/two/tree.yaml
id: two
edition: 1
review: { state: draft, by: [], reviewed: null, due: 2027-11-01 }
start: nowhere
questions: {}
`
    const { trees, findings } = await load(projectWith(second))
    expect(trees.map(({ id }) => id)).toEqual(['jar'])
    expect(findings.map(({ code }) => code)).toEqual(['unknown-question'])
  })
})

describe('the shortest circle is named', () => {
  test('of two circles, by all its questions', async () => {
    const files = treeWith(
      ['at-least: 7, end: normal', 'at-least: 7, to: growth'],
      ['borderline: { end: wait }', 'borderline: { to: acidity }']
    )
    const { findings } = await load(files)
    expect(findings.map(({ facts }) => facts.questions)).toEqual([['acidity', 'acidity']])
  })
})

describe('a text that is missing is told of once', () => {
  test('a missing group of texts is told as one', async () => {
    const files = projectWhere('locales/en/observations.json', /"fuzzy": \{.*\},/, '')
    const { findings } = await load(files)
    expect(findings.map(({ code, facts }) => [code, facts.text])).toEqual([
      ['missing-text', 'growth.answers.fuzzy']
    ])
  })
})
