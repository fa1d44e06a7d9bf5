import { describe, expect, test } from 'vitest'
import { load } from '../../src/load/load.ts'
import { authoredFiles } from '../helpers/shipped.ts'

/** The limit by which each shipped tree lets a batch pass, and one that no tree draws. */
const PASSES: readonly (readonly [tree: string, from: string, to: string])[] = [
  ['kombucha-jar', '4.2', '4.37'],
  ['kombucha-bottle', '4.2', '4.37'],
  ['kombucha-culture', '3.5', '3.63'],
  ['brined-vegetables', '4.6', '4.73'],
  ['milk-and-water-kefir', '4.6', '4.73'],
  ['vinegar-mother', '3.5', '3.63'],
  ['wild-sodas', '4.6', '4.73']
]

/** The files with every such limit moved in its tree, and in the pieces that the trees share. */
const moved = authoredFiles().map(file => ({
  ...file,
  text: PASSES.filter(
    ([tree]) => file.path === `trees/${tree}/tree.yaml` || file.path.startsWith('shared/pieces/')
  ).reduce((text, [, from, to]) => {
    const limit = new RegExp(`(at-most|over|under|at-least): ${from.replace('.', '\\.')}\\b`, 'g')
    return text.replace(limit, `$1: ${to}`)
  }, file.text)
}))

describe('a limit that is moved in a tree and not in the words is reported', async () => {
  const { findings } = await load(moved)
  const said = findings.filter(({ code }) => code === 'number-not-decided')

  test.each(PASSES)('%s from %s', tree => {
    expect(said.some(({ facts }) => facts.tree === tree)).toBe(true)
  })

  test('so is a number that is changed in the words and not in a tree', async () => {
    const files = authoredFiles().map(file =>
      /en\/(?:steps|kombucha-jar)\.json$/.test(file.path)
        ? { ...file, text: file.text.replace('4.15', '4.16') }
        : file
    )
    expect((await load(files)).findings.map(({ code }) => code)).toContain('number-not-decided')
  })
})
