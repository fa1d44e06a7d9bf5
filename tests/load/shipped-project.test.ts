import { describe, expect, test } from 'vitest'
import { treeAt } from '../../src/load/kinds-of-file.ts'
import { load } from '../../src/load/load.ts'
import { authoredFiles } from '../helpers/shipped.ts'
import { reportOn } from './project-files.ts'

describe('the shipped project loads with nothing to report', async () => {
  const files = authoredFiles()
  const loaded = await load(files)

  test('no finding', () => {
    expect(reportOn(files, loaded)).toBe('')
  })

  test('every tree file gives a tree', () => {
    const stems = files.flatMap(({ path }) => treeAt(path) ?? [])
    expect(loaded.trees.map(({ id }) => id).sort()).toEqual(stems.sort())
  })

  test('every question, range and rule of a tree has its place in a file', () => {
    for (const { id, questions, rules } of loaded.trees) {
      const places = loaded.places[id] ?? {}
      for (const question of Object.values(questions)) {
        expect(places).toHaveProperty([`questions/${question.id}`, 'line'])
        if (question.kind !== 'measure') continue
        for (const index of question.ranges.keys()) {
          expect(places).toHaveProperty([`questions/${question.id}/${index}`, 'line'])
        }
      }
      for (const rule of rules) expect(places).toHaveProperty([`rules/${rule.id}`, 'line'])
    }
  })

  test('callers’ own words lead to answers that exist', () => {
    expect(loaded.said.phrases.en?.length).toBeGreaterThan(100)
    for (const { observation, answer } of loaded.said.phrases.en ?? []) {
      const known = loaded.observations[observation]
      const answers =
        known?.kind === 'choice' ? known.answers : known?.kind === 'signs' ? known.signs : []
      if (answer !== null && answer !== 'none')
        expect(answers.map(({ id }) => id)).toContain(answer)
    }
  })

  test('what a ferment alone observes is in its folder, what several observe in shared', () => {
    const asking = (observation: string) =>
      loaded.trees.filter(tree => Object.hasOwn(tree.observations, observation)).map(({ id }) => id)
    const misplaced = files.flatMap(({ path, text }) => {
      const [, owner] = /^(?:trees\/([^/]+)|shared)\/observations\.yaml$/.exec(path) ?? []
      if (!path.endsWith('observations.yaml')) return []
      const ids = [...text.matchAll(/^([a-z][a-z0-9-]*):/gm)].map(([, id = '']) => id)
      return ids.filter(id => {
        const trees = asking(id)
        return owner === undefined ? trees.length < 2 : trees.some(tree => tree !== owner)
      })
    })
    expect(misplaced).toEqual([])
  })
})
