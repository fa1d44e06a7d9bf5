import { readFileSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import { expect, test } from 'vitest'
import { pack } from '../../src/bundle/browser-bundle.ts'
import { embedTrees } from '../../src/bundle/embed-bundle.ts'
import { loadShipped } from '../helpers/shipped.ts'

const root = resolve(import.meta.dirname, '../..')

/** A module and everything of ours that it imports for more than a type. */
function modulesFrom(file: string, seen = new Set<string>()): ReadonlySet<string> {
  if (seen.has(file)) return seen
  seen.add(file)
  const imports = readFileSync(file, 'utf8').matchAll(/^import (?!type )[^']*from '(\.[^']+)'/gm)
  for (const [, path = ''] of imports) modulesFrom(join(dirname(file), path), seen)
  return seen
}

/** What only a question for a number says, and only one that is asked from memory. */
const ELSEWHERE = new Set([
  'prompts',
  'errors',
  'unit-names',
  'go-on',
  'recall',
  'recall-how',
  'hands-off'
])

test('the first question has every text that its screen can show, and no outcome’s', async () => {
  const modules = modulesFrom(join(root, 'src/opening/first-screen.tsx'))
  const named = [...modules].flatMap(file =>
    [...readFileSync(file, 'utf8').matchAll(/['`"]ui:([a-z-]+)/g)].map(([, key = '']) => key)
  )
  const shown = [...new Set(named)].filter(key => !ELSEWHERE.has(key))
  expect(shown).toEqual(expect.arrayContaining(['question', 'not-sure', 'who-to-call', 'opening']))
  const trees = embedTrees(pack(await loadShipped(), root))
  for (const [id, { first }] of Object.entries(trees)) {
    for (const [tag, { tree, texts, cautions }] of Object.entries(first)) {
      const [observation] = Object.values(tree.observations)
      expect(observation?.kind, id).not.toBe('measure')
      const { ui } = texts as { ui: Record<string, unknown> }
      expect(
        shown.filter(key => !(key in ui)),
        `${id} ${tag}`
      ).toEqual([])
      for (const later of ['do-now', 'outcome', 'later-steps_one'])
        expect(ui).not.toHaveProperty(later)
      if (cautions) expect(Object.keys(cautions.ui as object)).toContain('education')
    }
  }
})
