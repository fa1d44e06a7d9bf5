import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join, relative, sep } from 'node:path'
import { describe, expect, test } from 'vitest'

/** What each folder of `src` may import besides itself: only folders listed above it, so never in a circle. */
const MAY_IMPORT: Record<string, { folders: string[]; packages: string[] }> = {
  tree: { folders: [], packages: [] },
  diagrams: { folders: ['tree'], packages: [] },
  evaluate: { folders: ['tree', 'diagrams'], packages: [] },
  findings: { folders: ['tree'], packages: [] },
  science: { folders: [], packages: [] },
  office: { folders: [], packages: [] },
  report: { folders: ['tree', 'evaluate', 'office'], packages: [] },
  load: { folders: ['tree', 'findings', 'office'], packages: ['yaml', 'zod'] },
  prove: { folders: ['tree', 'diagrams', 'evaluate', 'findings'], packages: [] },
  compare: { folders: ['tree', 'diagrams', 'evaluate', 'prove'], packages: [] },
  tables: { folders: ['tree', 'diagrams', 'evaluate', 'prove'], packages: [] },
  figures: { folders: ['tree', 'diagrams', 'evaluate', 'prove'], packages: [] },
  machine: { folders: ['tree', 'evaluate', 'science'], packages: ['xstate'] },
  words: { folders: ['tree', 'evaluate', 'science', 'office', 'report'], packages: ['i18next'] },
  reader: { folders: ['tree', 'evaluate', 'words'], packages: [] },
  ui: {
    folders: ['tree', 'evaluate', 'science', 'office', 'report', 'machine', 'words', 'reader'],
    packages: ['preact', 'd3-scale', 'd3-shape', 'uqr', 'virtual:jarside', 'virtual:pwa-register']
  },
  paper: {
    folders: ['tree', 'office', 'report', 'compare', 'tables', 'words', 'ui'],
    packages: ['preact-render-to-string']
  },
  cli: {
    folders: [
      'tree',
      'evaluate',
      'findings',
      'science',
      'office',
      'report',
      'load',
      'prove',
      'compare',
      'tables',
      'figures',
      'machine',
      'words',
      'reader',
      'ui',
      'paper'
    ],
    packages: [
      'playwright-core',
      'node:crypto',
      'node:fs',
      'node:path',
      'node:process',
      'node:readline',
      'node:stream',
      'node:timers',
      'node:url',
      'node:util'
    ]
  },
  bundle: {
    folders: ['tree', 'evaluate', 'load', 'prove', 'words', 'ui', 'cli'],
    packages: ['node:fs', 'node:path']
  }
}

const IMPORT =
  /^\s*(?:import|export)\b[^'"]*?\bfrom\s*['"]([^'"]+)['"]|^\s*import\s*['"]([^'"]+)['"]|\bimport\s*\(\s*['"]([^'"]+)['"]/gm

const files = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter(file => /\.tsx?$/.test(file))
  .map(file => join('src', file))

/** `src/prove/open.ts` → `prove` */
const folderOf = (file: string) => relative('src', file).split(sep)[0] ?? ''
/** `preact/hooks` → `preact`, `node:fs/promises` → `node:fs` */
const packageOf = (name: string) =>
  name
    .split('/')
    .slice(0, name.startsWith('@') ? 2 : 1)
    .join('/')
const importsOf = (file: string) =>
  [...readFileSync(file, 'utf8').matchAll(IMPORT)].map(
    match => match[1] ?? match[2] ?? match[3] ?? ''
  )

describe('imports point one way', () => {
  test('every folder of src has a rule and every rule a folder', () => {
    expect(Object.keys(MAY_IMPORT).sort()).toEqual([...new Set(files.map(folderOf))].sort())
  })

  test('every rule names only folders listed above it', () => {
    const order = Object.keys(MAY_IMPORT)
    for (const [folder, { folders }] of Object.entries(MAY_IMPORT)) {
      expect(order.slice(0, order.indexOf(folder))).toEqual(expect.arrayContaining(folders))
    }
  })

  test.each(files)('%s imports only what its folder may', file => {
    const own = folderOf(file)
    const rule = MAY_IMPORT[own] ?? { folders: [], packages: [] }
    const broken = importsOf(file).filter(name =>
      // The type of the screens' own texts, so that a misspelled key does not compile.
      file.endsWith('text-key.ts') && name.endsWith('locales/en/ui.json')
        ? false
        : name.startsWith('.')
          ? ![own, ...rule.folders].includes(folderOf(join(dirname(file), name)))
          : !rule.packages.includes(packageOf(name))
    )
    expect(broken, `${own}/ may import only ${JSON.stringify(rule)}`).toEqual([])
  })

  test('no inner barrel hides where a name lives', () => {
    expect(files.filter(file => /[/\\]index\.tsx?$/.test(file))).toEqual([])
  })
})
