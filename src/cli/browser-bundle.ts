import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Loaded } from '../load/load.ts'
import { prove } from '../prove/prove.ts'
import type { Tree } from '../tree/tree.ts'
import type { Catalogue, TreeBundle } from '../ui/page/bundle.ts'
import { loadProject } from './read-project.ts'

export interface BrowserBundle {
  readonly catalogue: Catalogue
  readonly trees: Readonly<Record<string, TreeBundle>>
  /** The drawings of each tree, by picture id. */
  readonly drawings: Readonly<Record<string, Readonly<Record<string, string>>>>
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
  const bundles = loaded.trees.map(tree => [tree.id, bundleOf(tree, words, loaded)] as const)
  return {
    catalogue: {
      trees: loaded.trees.map(tree => entryOf(tree, words)),
      ui: words.ui
    },
    trees: Object.fromEntries(bundles),
    drawings: Object.fromEntries(bundles.map(([id, { pictures }]) => [id, drawn(folder, pictures)]))
  }
}

function entryOf({ id, edition, fingerprint }: Tree, words: Readonly<Record<string, unknown>>) {
  const { title, about } = words[id] as { title: string; about: string }
  return { id, edition, fingerprint, title, about }
}

function bundleOf(
  tree: Tree,
  words: Readonly<Record<string, unknown>>,
  { sources, pictures }: Loaded
): TreeBundle {
  // The rules are proved here, once; the browser has no use for them.
  const shown = { ...tree, rules: [] }
  const named = new Set(
    JSON.stringify(shown)
      .match(/"[a-z0-9-]+"/g)
      ?.map(id => id.slice(1, -1))
  )
  const asked = new Set(Object.keys(tree.observations))
  return {
    tree: shown,
    sources: pick(sources, named),
    words: {
      observations: pick(words.observations, asked),
      verdicts: pick(words.verdicts, new Set(tree.verdicts.map(({ id }) => id))),
      steps: pick(words.steps, named),
      notes: pick(words.notes, named),
      [tree.id]: words[tree.id]
    },
    pictures: pick(pictures, asked)
  }
}

/** The drawings that stand ready; one that is missing leaves its answer with words alone. */
function drawn(folder: string, pictures: Loaded['pictures']): Readonly<Record<string, string>> {
  const ids = Object.values(pictures).flatMap(({ own, answers }) => [
    ...(own === null ? [] : [own]),
    ...Object.values(answers)
  ])
  const files = [...ids, 'mark-none', 'mark-unsure'].map(
    id => [id, join(folder, `shared/pictures/${id}.svg`)] as const
  )
  return Object.fromEntries(
    files
      .filter(([, file]) => existsSync(file))
      .map(([id, file]) => [id, readFileSync(file, 'utf8').trim()])
  )
}

function pick<T>(all: unknown, wanted: ReadonlySet<string>): Readonly<Record<string, T>> {
  const entries = Object.entries((all ?? {}) as Record<string, T>)
  return Object.fromEntries(entries.filter(([id]) => wanted.has(id)))
}
