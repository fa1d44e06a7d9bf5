import { readFileSync } from 'node:fs'
import { builtinModules } from 'node:module'
import { dirname, join } from 'node:path'
import { expect, test } from 'vitest'

/** What is imported when the code runs: an import of types alone is gone by then. */
const IMPORT =
  /^(?:import|export)\s+(?!type\b)(?:([^'"]*?)\sfrom\s*)?['"]([^'"]+)['"]|\bimport\(\s*['"]([^'"]+)['"]/gm
const TYPES_ALONE = /^\{\s*(?:type [^,}]+,?\s*)+\}$/

/** Each package that a file brings in, itself or by what it imports, with one way there. */
function packagesOf(entry: string): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, readonly string[]>()
  const seen = new Set<string>()
  const waiting: (readonly string[])[] = [[entry]]
  for (let way = waiting.pop(); way !== undefined; way = waiting.pop()) {
    const file = way.at(-1) ?? entry
    if (seen.has(file)) continue
    seen.add(file)
    for (const [, names = '', named, opened] of readFileSync(file, 'utf8').matchAll(IMPORT)) {
      const target = named ?? opened ?? ''
      if (TYPES_ALONE.test(names)) continue
      if (target.startsWith('.')) waiting.push([...way, join(dirname(file), target)])
      else
        found.set(
          target
            .split('/')
            .slice(0, target.startsWith('@') ? 2 : 1)
            .join('/'),
          way
        )
    }
  }
  return found
}

test('the command depends on what it can come to import, and on nothing that pages alone need', () => {
  const { dependencies, peerDependencies, devDependencies } = JSON.parse(
    readFileSync('package.json', 'utf8')
  )
  const reached = [...packagesOf('src/cli/main.ts').keys()].filter(
    name => !name.startsWith('node:') && !builtinModules.includes(name)
  )
  expect(reached.sort()).toEqual(
    [...Object.keys(dependencies), ...Object.keys(peerDependencies)].sort()
  )
  // What the pages bundle beside it is installed with the checkout alone.
  const paged = [...packagesOf('src/places/page/main.tsx').keys()].filter(
    name => !name.startsWith('virtual:')
  )
  expect(paged).toContain('xstate')
  for (const name of paged) expect({ ...dependencies, ...devDependencies }).toHaveProperty([name])
})
