import { describe, expect, test } from 'vitest'
import { walk } from '../../src/evaluate/walk.ts'
import type { AuthoredFile } from '../../src/load/load.ts'
import { load } from '../../src/load/load.ts'
import { projectWhere, reportOn } from './project-files.ts'

const TREE = 'trees/jar/tree.yaml'
const exact = (n: number) => ({ low: n, reading: n, high: n })

/** The jar, in which the cover is asked last and keeps everybody from having any. */
const withLast = (last: string): readonly AuthoredFile[] =>
  projectWhere(
    TREE,
    'after:\n  cover:\n    asks: cover\n    because: guide\n    answers:\n      lid: { note: cloth-not-lid }\n      cloth: {}\n      unsure: { note: cloth-not-lid }\n',
    `  cover:
    asks: cover
    because: guide
    answers:
      lid: { use: never, note: cloth-not-lid, end: normal }
      cloth: { end: normal }
      unsure: { use: not-yet, note: cloth-not-lid, end: normal }
`
  ).map(file =>
    file.path === TREE
      ? { ...file, text: file.text.replace('start: start\n', `start: start\nlast: ${last}\n`) }
      : file
  )

describe('last: every end leads through the questions that come last', () => {
  const told = {
    vessel: { insects: 'no', cloudy: 'no' },
    growth: 'wet',
    acidity: exact(3.2),
    age: exact(9)
  } as const

  test('they are asked before the outcome, whatever the walk came to', async () => {
    const { trees, findings } = await load(withLast('cover'))
    expect(findings).toEqual([])
    expect.assert(trees[0])
    expect(walk(trees[0], told).asks).toEqual({ question: 'cover', observation: 'cover' })
    expect(walk(trees[0], { ...told, age: exact(2) }).asks?.question).toBe('cover')
  })

  test('the verdict stays the one that the walk came to, and what they lower is lowered', async () => {
    const { trees } = await load(withLast('cover'))
    expect.assert(trees[0])
    const { outcome, finished } = walk(trees[0], { ...told, age: exact(2), cover: 'lid' })
    expect(finished).toBe(true)
    expect(outcome).toMatchObject({ batch: 'wait', use: 'never', notes: ['cloth-not-lid'] })
    expect(walk(trees[0], { ...told, cover: 'cloth' }).outcome.batch).toBe('normal')
  })

  test('a name that no question has is found', async () => {
    const files = withLast('covr')
    expect(reportOn(files, await load(files))).toMatch(
      /^trees\/jar\/tree.yaml:\d+:7 {2}unknown-question[\s\S]*`cover`/
    )
  })
})
