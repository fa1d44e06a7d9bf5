import { expect, test } from 'vitest'
import { plainFiles } from '../../src/cli/plain.ts'
import { openShipped } from '../helpers/shipped.ts'

const TODAY = new Date('2026-11-30')

test('every link of every page leads to a place that is there, and every page has the numbers', async () => {
  const project = await openShipped()
  const trees = project.loaded.trees.filter(({ id }) =>
    ['outside-this-tool', 'kombucha-jar'].includes(id)
  )
  const files = new Map(
    [...plainFiles(project, trees, ['en', 'es'], TODAY)].map(({ name, text }) => [name, text])
  )
  expect(files.size).toBeGreaterThan(400)
  const ids = new Map(
    [...files].map(([name, text]) => [
      name,
      new Set([...text.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id))
    ])
  )
  const wrong: string[] = []
  for (const [name, text] of files) {
    if (!name.endsWith('.html')) continue
    if (/<script| style=| on[a-z]+="|ui:|undefined|\{\{/.test(text))
      wrong.push(`${name}: not plain`)
    for (const number of ['911', '1-800-222-1222', '555-0110']) {
      if (!text.includes(`>${number}</a>`)) wrong.push(`${name}: no ${number}`)
    }
    for (const [, href = ''] of text.matchAll(/href="([^"]+)"/g)) {
      if (href.startsWith('tel:')) continue
      const { pathname, hash } = new URL(href, `file:///${name}`)
      const target = pathname.slice(1)
      if (!files.has(target)) wrong.push(`${name}: ${href} leads nowhere`)
      else if (hash && !ids.get(target)?.has(hash.slice(1))) wrong.push(`${name}: no ${href}`)
    }
  }
  expect(wrong.slice(0, 5)).toEqual([])
})
