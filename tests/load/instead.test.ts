import { describe, expect, test } from 'vitest'
import { diagramsOf } from '../../src/diagrams/tree-diagrams.ts'
import { load } from '../../src/load/load.ts'
import { PROPERTIES, proveWith } from '../../src/prove/prove.ts'
import type { Question } from '../../src/tree/tree.ts'
import { projectWhere, reportOn } from './project-files.ts'

const TREE = 'trees/jar/tree.yaml'

/** The questions of the jar whose young batches end as the lines say. */
async function questionsWhere(lines: string): Promise<Readonly<Record<string, Question>>> {
  const { trees, findings } = await load(
    projectWhere(TREE, '      - { under: 7, end: wait }\n', `      - under: 7\n${lines}\n`)
  )
  expect(findings).toEqual([])
  expect.assert(trees[0])
  return trees[0].questions
}

/** What is said of the jar whose young batches end as the lines say. */
async function saidWhere(lines: string): Promise<string> {
  const files = projectWhere(
    TREE,
    '      - { under: 7, end: wait }\n',
    `      - under: 7\n${lines}\n`
  )
  return reportOn(files, await load(files))
}

const wait = { raise: [], use: 'as-directed', notes: [], leads: { end: 'wait' } }
const discard = { raise: ['discard'], use: 'never', notes: [], leads: { end: 'discard' } }
const instead = (when: string) => `        end: wait
        instead:
          - { when: ${when}, raise: discard, use: never, end: discard }`

describe('instead: what was told earlier changes what follows', () => {
  test('a choice: the answers named, unsure only by name', async () => {
    const questions = await questionsWhere(instead('{ growth: [wrinkled, unsure] }'))
    expect(questions.age).toMatchObject({ ranges: [{ leads: { to: 'age_range-1_1' } }, {}] })
    expect(questions['age_range-1_1']).toEqual({
      id: 'age_range-1_1',
      kind: 'choice',
      asks: 'growth',
      because: ['guide'],
      answers: { fuzzy: wait, wrinkled: discard, wet: wait, unsure: discard }
    })
  })

  test('a sign: there, not there or unsure, each with what follows', async () => {
    const questions = await questionsWhere(instead('{ vessel: { cloudy: [no, unsure] } }'))
    expect(questions['age_range-1_1']).toMatchObject({
      kind: 'signs',
      signs: {},
      turns: [
        { signs: ['cloudy'], orUnsure: false, ...wait },
        { signs: ['cloudy'], orUnsure: true, ...discard }
      ],
      otherwise: discard
    })
  })

  test('a measure: only a reading that lies wholly in the part of its line', async () => {
    const questions = await questionsWhere(instead('{ acidity: { at-least: 3.5, at-most: 4 } }'))
    expect(questions['age_range-1_1']).toMatchObject({
      kind: 'measure',
      ranges: [
        { range: { atLeast: 3.5, atMost: 4 }, ...discard },
        { range: { under: 3.5 }, ...wait },
        { range: { over: 4 }, ...wait }
      ],
      borderline: wait,
      unsure: wait
    })
  })

  test('a measure on both sides of a limit, or unknown', async () => {
    const straddling = await questionsWhere(instead('{ acidity: { straddles: 4 } }'))
    expect(straddling['age_range-1_1']).toMatchObject({ borderline: discard, unsure: wait })
    const unknown = await questionsWhere(instead('{ acidity: unsure }'))
    expect(unknown['age_range-1_1']).toMatchObject({
      ranges: [{ range: {}, ...wait }],
      borderline: wait,
      unsure: discard
    })
  })

  test('several parts must all hold; where one fails, the next case is tried', async () => {
    const questions = await questionsWhere(`        end: wait
        instead:
          - { when: { growth: fuzzy, vessel: { insects: yes, cloudy: unsure } }, end: discard }
          - { when: { growth: unsure }, note: look-again }`)
    const answers = (id: string) => Object.values(questions[id] ?? {}).find(value => value?.fuzzy)
    expect(answers('age_range-1_1')).toMatchObject({
      fuzzy: { leads: { to: 'age_range-1_2' } },
      wet: { leads: { to: 'age_range-1_4' } }
    })
    expect(questions['age_range-1_2']).toMatchObject({
      turns: [{ leads: { to: 'age_range-1_3' } }, { leads: { to: 'age_range-1_4' } }],
      otherwise: { leads: { to: 'age_range-1_4' } }
    })
    // A case that leads nowhere leads where the branch does.
    expect(answers('age_range-1_4')).toMatchObject({
      unsure: { notes: ['look-again'], leads: { end: 'wait' } },
      wet: wait
    })
  })

  test('a screen of signs: after its turns', async () => {
    const { trees, findings } = await load(
      projectWhere(
        'shared/pieces/start.yaml',
        '    to: then\n',
        '    to: again\n  again:\n    asks: vessel\n    because: guide\n    to: then\n    instead: [{ when: { vessel: insects }, to: then }]\n'
      )
    )
    expect(findings).toMatchObject([{ code: 'idle-question' }].slice(trees.length))
    expect(trees[0]?.questions['start-again']).toMatchObject({
      otherwise: { leads: { to: 'start-again_otherwise_1' } }
    })
  })
})

describe('what is wrong in a case is shown where it is written', () => {
  test('an observation that nobody describes', async () => {
    expect(await saidWhere(instead('{ grwth: fuzzy }'))).toContain('`growth`?')
  })

  test('an answer that the observation has not', async () => {
    expect(await saidWhere(instead('{ growth: fuzy }'))).toMatch(
      /^trees\/jar\/tree.yaml:34:31 {2}unknown-answer(?![\s\S]*unknown-answer {2})/
    )
  })

  test('a verdict that nobody describes', async () => {
    const said = await saidWhere(`        end: wait
        instead:
          - when: { growth: fuzzy }
            raise: discrd`)
    expect(said).toMatch(/^trees\/jar\/tree.yaml:35:20 {2}unknown-verdict/)
  })

  test('a condition that such an observation cannot meet', async () => {
    expect(await saidWhere(instead('{ acidity: low }'))).toContain(
      '`acidity`, a measure, cannot be answered with what `age` asks of it.'
    )
  })

  test('a case that changes nothing', async () => {
    const files = projectWhere(
      TREE,
      '      - { under: 7, end: wait }\n',
      `      - under: 7\n${instead('{ growth: fuzzy }').replace('raise: discard, use: never, end: discard', 'end: wait')}\n`
    )
    const { trees, places, sources } = await load(files)
    expect.assert(trees[0])
    const proved = proveWith(diagramsOf(trees[0]), places.jar ?? {}, sources, PROPERTIES)
    const findings = proved.flatMap(result => result.findings)
    expect(reportOn(files, { findings })).toMatch(/^trees\/jar\/tree.yaml:34:23 {2}idle-question/)
  })
})
