import { describe, expect, test } from 'vitest'
import { load } from '../../src/load/load.ts'
import { authoredFiles } from '../helpers/shipped.ts'
import { projectWhere, wholeProject } from './project-files.ts'

/** What becomes of the whole project's one rule when these lines stand in place of its condition. */
const ruleWith = async (lines: string) => {
  const files = projectWhere('trees/jar/tree.yaml', 'when: { growth: fuzzy }', lines)
  const { trees, findings } = await load(files)
  return { rule: trees[0]?.rules[0], codes: findings.map(({ code }) => code) }
}

describe('the condition of a rule is read as it is written', () => {
  test.each([
    ['one answer', 'growth: wet', { kind: 'choice', observation: 'growth', among: ['wet'] }],
    ['unsure', 'growth: unsure', { kind: 'choice', observation: 'growth', among: ['unsure'] }],
    ['any of several', 'growth: [fuzzy, wet]', { kind: 'choice', among: ['fuzzy', 'wet'] }],
    ['a sign', 'vessel: insects', { kind: 'sign', sign: 'insects', among: ['yes'] }],
    ['a sign not there', 'vessel: { insects: no }', { sign: 'insects', among: ['no'] }],
    ['a sign in doubt', 'vessel: { insects: [yes, unsure] }', { among: ['yes', 'unsure'] }],
    ['a range', 'acidity: { over: 4.2, at-most: 5 }', { is: { within: { over: 4.2, atMost: 5 } } }],
    ['a limit straddled', 'acidity: { straddles: 4.2 }', { is: { straddles: 4.2 } }],
    ['no reading', 'acidity: unsure', { kind: 'measure', is: 'unsure' }]
  ])('%s', async (_, condition, literal) => {
    const { rule, codes } = await ruleWith(`when: { ${condition} }`)
    expect(codes).toEqual([])
    expect(rule?.when).toMatchObject([literal])
  })

  test('signs together are a conjunction', async () => {
    const { rule } = await ruleWith('when: { vessel: { insects: no, cloudy: yes } }')
    expect(rule?.when).toHaveLength(2)
  })
})

describe('a rule that can never apply is found by its words', () => {
  test.each([
    ['its limits are crossed', 'when: { acidity: { over: 5, under: 4 } }'],
    ['its limit lies beyond the span', 'when: { acidity: { over: 14 } }'],
    ['a count straddles nothing', 'when: { age: { straddles: 7 } }'],
    ['nothing reaches to both sides', 'when: { acidity: { straddles: 15 } }'],
    ['its exception is as wide', 'when: { growth: fuzzy }\n    unless: [{ growth: [fuzzy, wet] }]']
  ])('%s', async (_, lines) => {
    expect((await ruleWith(lines)).codes).toEqual(['rule-never-applies'])
  })

  test('an exception that is narrower leaves it', async () => {
    const { codes } = await ruleWith(
      'when: { growth: fuzzy }\n    unless: [{ growth: fuzzy, vessel: insects }]'
    )
    expect(codes).toEqual([])
  })

  test.each([
    ['a range of a choice', 'when: { growth: { over: 4 } }'],
    ['a list of signs', 'when: { vessel: [insects, cloudy] }'],
    ['a name of a measure', 'when: { acidity: sour }'],
    ['a limit beside a straddled one', 'when: { acidity: { straddles: 4, under: 5 } }']
  ])('%s is no condition', async (_, lines) => {
    expect((await ruleWith(lines)).codes).toEqual(['condition-not-for-kind'])
  })
})

describe('what a piece forbids to say', () => {
  const forbidding = async (step: string) => {
    const files = authoredFiles().map(file =>
      file.path === 'shared/pieces/vessel-story.yaml'
        ? { ...file, text: file.text.replace('never-says: [bag-it]', `never-says: [${step}]`) }
        : file
    )
    const { trees, findings } = await load(files)
    const held = trees
      .filter(({ spokenRules }) =>
        spokenRules.some(({ id }) => id === 'vessel-story-a-cleaner-in-it-is-not-moved')
      )
      .map(({ id }) => id)
    return { held, codes: [...new Set(findings.map(({ code }) => code))] }
  }

  test('holds of the trees that can say it, and needs no word in the others', async () => {
    const { held, codes } = await forbidding('bag-it')
    expect(codes).toEqual([])
    expect(held).toContain('milk-and-water-kefir')
    expect(held).not.toContain('wild-sodas')
  })

  test('is a step that some tree says', async () => {
    expect((await forbidding('bag-itt')).codes).toEqual(['unknown-step'])
  })
})

describe('rules that several trees share', () => {
  const SHARED = [
    'rules:',
    '  - id: fuzz-is-not-drunk',
    '    when: { growth: fuzzy }',
    '    then: { use-is: never }',
    '    basis: memory',
    '    because: [guide]',
    ''
  ].join('\n')
  const own = (text: string) => ({ path: 'trees/jar/rules.yaml', text })
  const shared = (text = SHARED) => ({ path: 'shared/rules/fur.yaml', text })
  const loaded = (...files: readonly { path: string; text: string }[]) =>
    load([...wholeProject(), ...files])

  test('are taken in under their own names, beside those of the tree', async () => {
    const { trees, findings } = await loaded(own('with: [fur]\nrules: []\n'), shared())
    expect(findings).toEqual([])
    expect(trees[0]?.rules.map(({ id }) => id)).toContain('fuzz-is-not-drunk')
  })

  test('and are about what the tree does not ask are found where they stand', async () => {
    const text = SHARED.replace('growth:', 'foam:')
    const { findings } = await loaded(own('with: [fur]\nrules: []\n'), shared(text))
    expect(findings.map(({ code, place }) => [code, place?.file])).toEqual([
      ['unknown-observation', 'shared/rules/fur.yaml']
    ])
  })

  test('are found where they are not there, are named by nobody, or bear a name twice', async () => {
    const codes = async (...files: readonly { path: string; text: string }[]) =>
      (await loaded(...files)).findings.map(({ code }) => code)
    expect(await codes(own('with: [fur]\nrules: []\n'))).toEqual(['missing-file'])
    expect(await codes(shared())).toEqual(['piece-unused'])
    expect(await codes(own(`with: [fur]\n${SHARED}`), shared())).toEqual(['duplicate-id'])
  })
})
