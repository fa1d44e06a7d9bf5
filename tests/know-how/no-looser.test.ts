import { describe, expect, test } from 'vitest'
import { load } from '../../src/load/load.ts'
import { proveKnowHow } from '../../src/prove/prove-know-how.ts'
import { authoredFiles, loadShipped } from '../helpers/shipped.ts'
import { projectWhere } from '../load/project-files.ts'

const { trees, knowHow, words } = await loadShipped()
const english = words.en?.['know-how'] as Readonly<Record<string, { readonly answer: string }>>

describe('no answer is looser than the tree', () => {
  test.each(trees.filter(({ id }) => knowHow.allowed[id]))('$id allows what they allow', tree => {
    const proved = proveKnowHow(tree, knowHow.allowed[tree.id], knowHow.places)
    expect(proved).toMatchObject({ standing: 'proved', findings: [] })
    expect(proved?.counts.proved).toBe(knowHow.allowed[tree.id]?.length)
  })

  // Where an answer says that food may be had, it names under `allows:` when.
  const ALLOWING =
    /\b(?:may (?:be )?(?:eat|drink|eaten)|from day \d+ on, and only|only if (?:a test|it surely)|or more, and pH|and it surely reads)/i

  test('every answer that says when food may be had is bound to a tree', () => {
    const bound = new Set(
      Object.values(knowHow.allowed).flatMap(rules =>
        rules.map(({ id }) => id.replace('know-how-', ''))
      )
    )
    const allowing = knowHow.answers
      .map(({ id }) => id)
      .filter(id => ALLOWING.test(english[id]?.answer ?? ''))
    expect(allowing).toContain('how-long-kombucha')
    expect(allowing.length).toBeGreaterThanOrEqual(3)
    expect(allowing.filter(id => !bound.has(id))).toEqual([])
  })

  test('what only warns allows nothing', () => {
    const warning = knowHow.answers.filter(({ warns }) => warns)
    expect(warning.length).toBeGreaterThan(20)
    for (const { id } of warning) {
      expect(english[id]?.answer).not.toMatch(ALLOWING)
      expect(english[id]?.answer).not.toMatch(/^Yes\b|\bis fine\b|\bnormal\b/)
    }
  })

  test('one that allows it a day too early is refuted, with the walk that shows it', async () => {
    const early = projectWhere('shared/know-how/jar.yaml', 'at-least: 7', 'at-least: 6')
    const { trees: small, knowHow: answers, findings } = await load(early)
    expect(findings).toEqual([])
    const [tree] = small
    if (!tree) throw new Error('the small tree does not load')
    const proved = proveKnowHow(tree, answers.allowed[tree.id], answers.places)
    expect(proved?.standing).toBe('refuted')
    expect(proved?.findings[0]).toMatchObject({
      code: 'rule-refuted',
      place: { file: 'shared/know-how/jar.yaml' }
    })
    expect(proved?.findings[0]?.answers).toMatchObject({ age: { reading: 6 } })
  })

  test('a limit moved in a tree alone is found at the answer that says it', async () => {
    const files = authoredFiles().map(file =>
      file.path === 'trees/vinegar-mother/tree.yaml'
        ? { ...file, text: file.text.replaceAll('3.5', '3.4') }
        : file
    )
    const { findings } = await load(files)
    expect(findings.map(({ code, place }) => [code, place?.file])).toContainEqual([
      'limit-not-decided',
      'shared/know-how/vinegar-mother.yaml'
    ])
  })
})

describe('an answer never says that a jar is all right', () => {
  test.each(['en', 'es'])('in %s', tag => {
    const texts = Object.values(
      words[tag]?.['know-how'] as Record<string, { ask: string; answer: string }>
    )
    const saying = texts.filter(({ ask = '', answer = '' }) =>
      /\bsafe|\bharmless|(?<!\p{L})segur|inofensiv|\bis (?:your|this) jar\b|\byour (?:jar|batch) is (?:fine|ok|all right)/iu.test(
        `${ask} ${answer}`
      )
    )
    expect(saying).toEqual([])
  })
})
