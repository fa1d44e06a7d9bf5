import { describe, expect, test } from 'vitest'
import { wholeWay } from '../../src/cli/whole-way.ts'
import { authoredFiles, loadShipped } from '../helpers/shipped.ts'
import { usualExcept } from '../helpers/usual.ts'
import { wholeProject } from '../load/project-files.ts'
import { runCommand } from './run-command.ts'

const today = '2026-11-25T12:00:00Z'

describe('the whole way, step by step', async () => {
  const { trees } = await loadShipped()
  const told = usualExcept(trees[0] as never, { 'surface-texture': 'dry-fuzzy' })
  const asked = { tree: 'kombucha-jar', told, language: 'en', today: new Date(today) }

  test('comes to what the command says', async () => {
    const text = await wholeWay(authoredFiles(), asked)
    const signs = Object.entries(told).flatMap(([id, answer]) =>
      typeof answer === 'string'
        ? ['--given', `${id}=${answer}`]
        : 'reading' in answer
          ? ['--given', `${id}=${answer.reading}`]
          : ['--none', id]
    )
    const { output } = await runCommand(['walk', 'kombucha-jar', ...signs], { today })
    const squeezed = (lines: string) => lines.replace(/\s+/g, ' ')
    expect(text).toContain('Likely mold')
    expect(squeezed(output)).toContain(squeezed(text))
  })

  test('ends where a step finds something', async () => {
    const files = wholeProject()
    const none = { ...asked, tree: 'jar', told: {} }
    await expect(wholeWay(files, { ...none, tree: 'jug' })).rejects.toThrow('no tree')
    await expect(wholeWay(files, none)).rejects.toThrow('not finished')
    const without = files.filter(({ path }) => path !== 'shared/verdicts.yaml')
    await expect(wholeWay(without, none)).rejects.toThrow('missing-file')
  })
})
