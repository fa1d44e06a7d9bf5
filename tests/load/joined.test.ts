import { describe, expect, test } from 'vitest'
import { load } from '../../src/load/load.ts'
import { projectWhere, wholeProject } from './project-files.ts'

const own = (stem: string, text: string) => ({ path: `trees/jar/${stem}.yaml`, text })
const codes = async (files: Parameters<typeof load>[0]) =>
  (await load(files)).findings.map(({ code, place }) => `${place?.file}:${place?.line} ${code}`)

describe('what a ferment alone has is in its folder, and adds to what all share', () => {
  const withoutThrowing = projectWhere('shared/steps.yaml', '  throw-out: { batch: discard }\n', '')

  test('a step that is written in one of the two is there', async () => {
    expect(await codes(withoutThrowing)).toEqual([expect.stringContaining('deed-missing')])
    const moved = [...withoutThrowing, own('steps', 'steps:\n  throw-out: { batch: discard }\n')]
    expect(await codes(moved)).toEqual([])
    const [before] = (await load(wholeProject())).trees
    const [after] = (await load(moved)).trees
    expect(after?.fingerprint).toBe(before?.fingerprint)
  })

  test('a name in both is found where it is written the second time', async () => {
    const twice = [...wholeProject(), own('steps', 'steps:\n  throw-out: { batch: hold }\n')]
    expect(await codes(twice)).toEqual(['trees/jar/steps.yaml:2 duplicate-id'])
    const [tree] = (await load(twice)).trees
    expect(tree?.advice.does['throw-out']).toEqual({ batch: 'discard' })
  })

  test('the answers that rule out a presumption add up, each in its place', async () => {
    const dry = projectWhere(
      'shared/steps.yaml',
      /steps:\n([\s\S]*)look-daily: \{ look: near \}/,
      'presumptions:\n  folds: { ruled-out-by: [{ growth: wet }] }\n' +
        'steps:\n$1look-daily: { look: near, presumes: [folds] }'
    )
    const more = (text: string) => [...dry, own('steps', text)]
    const both = more('presumptions:\n  folds: { ruled-out-by: [{ growth: fuzzy }] }\n')
    const [tree] = (await load(both)).trees
    expect(tree?.presumptions.folds).toHaveLength(2)
    const unknown = more('presumptions:\n  folds: { ruled-out-by: [{ grwth: fuzzy }] }\n')
    expect(await codes(unknown)).toEqual(['trees/jar/steps.yaml:2 unknown-observation'])
  })

  test('an observation of its own is asked like any other', async () => {
    const { text } = wholeProject().find(({ path }) => path === 'shared/observations.yaml') ?? {}
    const [, block = ''] = /^(cover:\n(?: .*\n)+)/m.exec(text ?? '') ?? []
    expect(block).toContain('cover:')
    const moved = [
      ...projectWhere('shared/observations.yaml', block, ''),
      own('observations', block)
    ]
    expect(await codes(moved)).toEqual([])
  })
})
