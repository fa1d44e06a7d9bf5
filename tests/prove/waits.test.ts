import { describe, expect, test } from 'vitest'
import { diagramsOf } from '../../src/diagrams/tree-diagrams.ts'
import { load } from '../../src/load/load.ts'
import { PROPERTIES, proveWith } from '../../src/prove/prove.ts'
import { authoredFiles } from '../helpers/shipped.ts'

const STEP = '  ask-about-the-soda: { call: { state-specialist: soon } }'

const WAITS = PROPERTIES.filter(({ id }) => /wait|check-is-named/.test(id))

/** What the laws of waits find of wild sodas, of which the specialist decides, with this deed of the step. */
async function foundWhere(deed: string): Promise<readonly string[]> {
  const files = authoredFiles().map(file => ({ ...file, text: file.text.replace(STEP, deed) }))
  const { trees, places, sources } = await load(files)
  const tree = trees.find(({ id }) => id === 'wild-sodas')
  expect.assert(tree)
  return proveWith(diagramsOf(tree), places[tree.id], sources, WAITS).flatMap(({ findings }) =>
    findings.map(({ code }) => code)
  )
}

describe('an ordinary batch that a specialist alone frees', () => {
  test('waits for no look of the caller’s own', async () => {
    expect(authoredFiles().some(({ text }) => text.includes(STEP))).toBe(true)
    expect(await foundWhere(STEP)).toEqual([])
  })

  test('waits for ever where no specialist is called', async () => {
    const found = await foundWhere('  ask-about-the-soda: {}')
    expect(found).toContain('wait-without-time')
    expect(found).toContain('wait-without-end')
  })

  test('nor is a call to somebody else enough', async () => {
    expect(await foundWhere('  ask-about-the-soda: { call: { office: soon } }')).toContain(
      'wait-without-end'
    )
  })
})
