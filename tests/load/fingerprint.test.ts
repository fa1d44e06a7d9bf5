import { createHash } from 'node:crypto'
import { describe, expect, test } from 'vitest'
import { canonicalJson } from '../../src/load/fingerprint.ts'
import { load } from '../../src/load/load.ts'
import { must } from '../../src/tree/must.ts'
import { projectWhere, wholeProject } from './project-files.ts'

const printsOf = async (files = wholeProject()) => {
  const { trees, findings } = await load(files)
  expect(findings).toEqual([])
  return { meaning: trees[0]?.fingerprint, words: trees[0]?.wordsFingerprint, tree: trees[0] }
}

describe('a fingerprint changes with the meaning and with nothing else', () => {
  test('it is the SHA-256 of the meaning, keys and rules in order', async () => {
    const { tree, meaning } = await printsOf()
    const {
      edition,
      review,
      order,
      openCases,
      unfoundFaults,
      spokenRules,
      askedAgain,
      presumptions,
      fingerprint,
      wordsFingerprint,
      ...rest
    } = must(tree, 'tree')
    const inOrder = { ...rest, rules: rest.rules.toSorted((a, b) => a.id.localeCompare(b.id)) }
    expect(meaning).toBe(createHash('sha256').update(canonicalJson(inOrder)).digest('hex'))
  })

  test.each([
    ['a comment', /^id: jar$/m, '# Reviewed.\nid: jar'],
    ['the edition', 'edition: 1', 'edition: 2'],
    ['the review', 'state: draft', 'state: signed']
  ])('%s leaves it', async (_, passage, by) => {
    const before = await printsOf()
    const after = await printsOf(projectWhere('trees/jar/tree.yaml', passage, by))
    expect(after.meaning).toBe(before.meaning)
    expect(after.words).toBe(before.words)
  })

  test('the order of rules leaves it', async () => {
    const rule = (id: string) =>
      `  - id: ${id}\n    when: { growth: fuzzy }\n    then: { use-is: never }\n    basis: memory\n    because: [guide]\n`
    const ordered = (...ids: readonly string[]) => [
      ...wholeProject(),
      { path: 'trees/jar/rules.yaml', text: `rules:\n${ids.map(rule).join('')}` }
    ]
    const one = await printsOf(ordered('first', 'second'))
    const other = await printsOf(ordered('second', 'first'))
    expect(one.tree?.rules.map(({ id }) => id)).not.toEqual(other.tree?.rules.map(({ id }) => id))
    expect(one.meaning).toBe(other.meaning)
    expect(one.meaning).not.toBe((await printsOf()).meaning)
  })

  test.each([
    ['trees/jar/tree.yaml', 'under: 7, end: wait', 'under: 7, end: discard'],
    ['trees/jar/tree.yaml', 'basis: published', 'basis: relayed'],
    ['trees/jar/tree.yaml', 'do-now: [look-daily]', 'do-now: [look-daily, keep-it]'],
    ['shared/observations.yaml', 'wet: { usual: true }', 'wet: {}'],
    ['shared/verdicts.yaml', 'ceiling: not-yet, signal: notice', 'ceiling: never, signal: notice'],
    ['shared/pieces/start.yaml', 'unsure: { raise: wait }', 'unsure: { raise: discard }']
  ])('%s: a change of meaning changes it', async (path, passage, by) => {
    const before = await printsOf()
    const after = await printsOf(projectWhere(path, passage, by))
    expect(after.meaning).not.toBe(before.meaning)
    expect(after.words).toBe(before.words)
  })

  test.each([
    ['locales/en/observations.json', 'They stand up.', 'They stand.'],
    ['locales/en/steps.json', 'Look daily.', 'Look every day.'],
    ['locales/en/jar.json', 'Looks prove nothing.', 'Looks do not prove it.'],
    ['shared/observations.yaml', 'fuzzy: { danger', 'fuzzy: { picture: fuzzy-from-above, danger']
  ])('%s: a change of words or pictures changes only theirs', async (path, passage, by) => {
    const before = await printsOf()
    const after = await printsOf(projectWhere(path, passage, by))
    expect(after.meaning).toBe(before.meaning)
    expect(after.words).not.toBe(before.words)
  })

  test('the order in which keys were written does not count', () => {
    expect(canonicalJson({ b: [{ d: 1, c: 2 }], a: 'x' })).toBe('{"a":"x","b":[{"c":2,"d":1}]}')
  })
})
