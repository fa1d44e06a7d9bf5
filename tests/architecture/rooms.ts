import { readdirSync } from 'node:fs'
import { join, relative, sep } from 'node:path'

/** What a room may import besides itself. */
interface Allowed {
  /** Only rooms listed above it, so never in a circle. */
  readonly rooms: readonly string[]
  readonly packages: readonly string[]
}

/** What every place may import; no place imports another. */
const PLACE: Allowed = {
  rooms: ['tree', 'words', 'style', 'parts', 'opening', 'last-resort'],
  packages: ['preact', 'virtual:jarside']
}

const placeWith = (rooms: readonly string[], packages: readonly string[] = []): Allowed => ({
  rooms: [...PLACE.rooms, ...rooms],
  packages: [...PLACE.packages, ...packages]
})

/** Every room of `src`, in import order. */
export const MAY_IMPORT: Readonly<Record<string, Allowed>> = {
  tree: { rooms: [], packages: [] },
  diagrams: { rooms: ['tree'], packages: [] },
  evaluate: { rooms: ['tree', 'diagrams'], packages: [] },
  findings: { rooms: ['tree'], packages: [] },
  science: { rooms: [], packages: [] },
  office: { rooms: ['science'], packages: [] },
  report: { rooms: ['tree', 'evaluate', 'office'], packages: [] },
  translation: { rooms: [], packages: [] },
  load: { rooms: ['tree', 'findings', 'office', 'translation'], packages: ['yaml', 'zod'] },
  prove: { rooms: ['tree', 'diagrams', 'evaluate', 'findings'], packages: [] },
  compare: { rooms: ['tree', 'diagrams', 'evaluate', 'prove'], packages: [] },
  tables: { rooms: ['tree', 'diagrams', 'evaluate', 'prove'], packages: [] },
  contacts: { rooms: ['tree', 'evaluate', 'science', 'office', 'tables'], packages: ['idb'] },
  practice: { rooms: ['tree', 'evaluate', 'science'], packages: [] },
  key: { rooms: ['tree'], packages: [] },
  figures: { rooms: ['tree', 'diagrams', 'evaluate', 'science', 'prove'], packages: [] },
  machine: { rooms: ['tree', 'evaluate', 'science'], packages: ['xstate'] },
  words: {
    rooms: ['tree', 'evaluate', 'science', 'office', 'report', 'contacts', 'practice'],
    packages: ['i18next']
  },
  plain: { rooms: ['tree', 'diagrams', 'evaluate'], packages: [] },
  readability: { rooms: ['translation'], packages: ['flesch-kincaid', 'smog-formula', 'syllable'] },
  exchange: {
    rooms: ['load', 'tables', 'translation', 'words'],
    packages: ['@rgrove/parse-xml', 'csv-parse']
  },
  reader: { rooms: ['tree', 'evaluate', 'science', 'words'], packages: [] },
  'know-how': { rooms: ['tree'], packages: ['minisearch'] },
  style: { rooms: [], packages: [] },
  addresses: { rooms: ['tree', 'evaluate', 'office', 'report', 'words'], packages: [] },
  parts: {
    rooms: [
      ...['tree', 'evaluate', 'science', 'office', 'report', 'contacts', 'machine', 'words'],
      ...['know-how'],
      'addresses'
    ],
    packages: ['preact', 'uqr']
  },
  opening: { rooms: ['tree', 'office', 'words', 'parts'], packages: ['preact'] },
  'last-resort': { rooms: [], packages: ['preact'] },
  paper: {
    rooms: [
      ...['tree', 'evaluate', 'office', 'report', 'compare', 'tables', 'key', 'words'],
      'plain',
      ...['style', 'addresses', 'parts', 'opening']
    ],
    packages: ['preact', 'preact-render-to-string', '@dagrejs/dagre']
  },
  'places/page': placeWith(['office', 'report', 'addresses', 'paper']),
  'places/desk': placeWith([
    ...['evaluate', 'office', 'contacts', 'practice', 'report', 'machine', 'reader', 'know-how'],
    ...['addresses', 'paper']
  ]),
  'places/kiosk': placeWith(
    ['evaluate', 'science', 'office', 'contacts', 'machine', 'addresses'],
    ['virtual:pwa-register']
  ),
  'places/embed': placeWith(['office']),
  'places/look-alikes': PLACE,
  'places/how-to': placeWith(['know-how', 'office']),
  'places/workbench': placeWith(['science'], ['d3-scale', 'd3-shape']),
  'places/contacts': placeWith(['office', 'contacts']),
  'places/gallery': placeWith(['evaluate', 'office', 'report']),
  cli: {
    rooms: [
      ...[
        'tree',
        'diagrams',
        'evaluate',
        'findings',
        'science',
        'office',
        'report',
        'translation',
        'load'
      ],
      ...[
        'prove',
        'compare',
        'tables',
        'contacts',
        'practice',
        'figures',
        'machine',
        'words',
        'know-how',
        'exchange',
        'plain',
        'readability',
        'addresses'
      ],
      ...['parts', 'paper']
    ],
    packages: [
      'playwright-core',
      ...['node:crypto', 'node:fs', 'node:os', 'node:path', 'node:readline'],
      ...['node:stream', 'node:v8'],
      ...['node:timers', 'node:url', 'node:util']
    ]
  },
  bundle: {
    rooms: ['tree', 'evaluate', 'load', 'prove', 'words', 'opening', 'places/embed', 'cli'],
    packages: ['node:crypto', 'node:fs', 'node:path']
  }
}

/** Every source file, by its path from the project's root. */
export const FILES: readonly string[] = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter(file => /\.tsx?$/.test(file))
  .map(file => join('src', file))

/** `src/prove/open.ts` → `prove`, `src/places/desk/desk.tsx` → `places/desk`; outside of `src` `..`. */
export function roomOf(file: string): string {
  const [first = '', second = ''] = relative('src', file).split(sep)
  return first === 'places' ? `${first}/${second}` : first
}

const foldersIn = (folder: string) =>
  readdirSync(folder, { withFileTypes: true }).flatMap(one => (one.isDirectory() ? [one.name] : []))

/** The rooms that are there. */
export const ROOMS: readonly string[] = foldersIn('src').flatMap(name =>
  name === 'places' ? foldersIn('src/places').map(place => `places/${place}`) : [name]
)
