import { prove } from '../prove/prove.ts'
import type { Tree } from '../tree/tree.ts'
import { loadProject } from './read-project.ts'

/** What a browser needs of one tree: its meaning without the rules, its words, its sources. */
export interface TreeBundle {
  readonly tree: Tree
  readonly sources: Readonly<Record<string, unknown>>
  /** By namespace, of one language. */
  readonly words: Readonly<Record<string, unknown>>
}

/** The choice of trees, without their questions. */
export interface CatalogueEntry {
  readonly id: string
  readonly edition: number
  readonly fingerprint: string
}

export interface BrowserBundle {
  readonly catalogue: readonly CatalogueEntry[]
  readonly trees: Readonly<Record<string, TreeBundle>>
  /** Words of the screens themselves, of one language. */
  readonly ui: unknown
}

/**
 * Loads, proves and packs every tree for the browser.
 *
 * @throws Error when anything is found or not proved: no form may show a tree that is not.
 */
export async function browserBundle(folder: string, tag: string): Promise<BrowserBundle> {
  const { loaded } = await loadProject(folder)
  const open = loaded.trees.flatMap(tree =>
    prove(tree, loaded.places[tree.id]).filter(({ standing }) => standing !== 'proved')
  )
  if (loaded.findings.length > 0 || open.length > 0 || loaded.trees.length === 0) {
    const count = loaded.findings.length + open.length
    throw new Error(`${count} findings: run \`npm run -s jarside -- check\` to read them.`)
  }
  const words = loaded.words[tag] ?? {}
  return {
    catalogue: loaded.trees.map(({ id, edition, fingerprint }) => ({ id, edition, fingerprint })),
    trees: Object.fromEntries(
      loaded.trees.map(tree => [tree.id, bundleOf(tree, words, loaded.sources)])
    ),
    ui: words.ui
  }
}

function bundleOf(
  tree: Tree,
  words: Readonly<Record<string, unknown>>,
  sources: Readonly<Record<string, unknown>>
): TreeBundle {
  // The rules are proved here, once; the browser has no use for them.
  const shown = { ...tree, rules: [] }
  const cited = new Set(
    JSON.stringify(shown)
      .match(/"[a-z0-9-]+"/g)
      ?.map(id => id.slice(1, -1))
  )
  return {
    tree: shown,
    sources: pick(sources, cited),
    words: {
      observations: pick(words.observations, new Set(Object.keys(tree.observations))),
      verdicts: pick(words.verdicts, new Set(tree.verdicts.map(({ id }) => id))),
      steps: pick(words.steps, cited),
      notes: pick(words.notes, cited),
      [tree.id]: words[tree.id]
    }
  }
}

function pick(all: unknown, wanted: ReadonlySet<string>): Readonly<Record<string, unknown>> {
  const entries = Object.entries((all ?? {}) as Record<string, unknown>)
  return Object.fromEntries(entries.filter(([id]) => wanted.has(id)))
}
