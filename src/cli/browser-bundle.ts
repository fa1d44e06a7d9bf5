import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Loaded } from '../load/load.ts'
import { prove } from '../prove/prove.ts'
import type { Tree } from '../tree/tree.ts'
import type { Catalogue, Texts, TreeBundle } from '../ui/opening/bundle.ts'
import { languagesOf } from '../words/languages.ts'
import { SOURCE_TAG } from '../words/words.ts'
import { loadProject } from './read-project.ts'

export interface BrowserBundle {
  readonly catalogue: Catalogue
  readonly trees: Readonly<Record<string, TreeBundle>>
  /** By language tag: the screens' own words and the trees' titles. */
  readonly screens: Readonly<Record<string, Texts>>
  /** By tree, then by language tag: the words of that tree. */
  readonly words: Readonly<Record<string, Readonly<Record<string, Texts>>>>
  /** By tree, then by language tag: callers' own words for what the tree asks. */
  readonly said: Readonly<Record<string, Loaded['said']>>
  /** The drawings of each tree, by picture id. */
  readonly drawings: Readonly<Record<string, Readonly<Record<string, string>>>>
}

/**
 * Loads, proves and packs every tree for the browser.
 *
 * @throws Error when anything is found or not proved: no form may show a tree that is not.
 */
export async function browserBundle(folder: string): Promise<BrowserBundle> {
  const { loaded } = await loadProject(folder)
  const open = loaded.trees.flatMap(tree =>
    prove(tree, loaded.places[tree.id]).filter(({ standing }) => standing !== 'proved')
  )
  if (loaded.findings.length > 0 || open.length > 0 || loaded.trees.length === 0) {
    const count = loaded.findings.length + open.length
    throw new Error(`${count} findings: run \`npm run -s jarside -- check\` to read them.`)
  }
  const bundles = loaded.trees.map(tree => [tree.id, bundleOf(tree, loaded)] as const)
  const screens = eachLanguage(loaded, words => screenWords(loaded.trees, words))
  return {
    catalogue: {
      trees: loaded.trees.map(({ id, edition, fingerprint }) => ({ id, edition, fingerprint })),
      languages: languagesOf(loaded.words),
      texts: screens[SOURCE_TAG] ?? {}
    },
    trees: Object.fromEntries(bundles),
    screens,
    words: Object.fromEntries(
      loaded.trees.map(tree => [tree.id, eachLanguage(loaded, words => treeWords(tree, words))])
    ),
    said: Object.fromEntries(loaded.trees.map(tree => [tree.id, saidOf(tree, loaded)])),
    drawings: Object.fromEntries(bundles.map(([id, { pictures }]) => [id, drawn(folder, pictures)]))
  }
}

const eachLanguage = ({ words }: Loaded, of: (texts: Texts) => Texts) =>
  Object.fromEntries(Object.entries(words).map(([tag, texts]) => [tag, of(texts)]))

/** What the screens before a tree say. */
function screenWords(trees: readonly Tree[], words: Texts): Texts {
  const titles = trees.map(({ id }) => {
    const { title, about } = words[id] as { title: string; about: string }
    return [id, { title, about }] as const
  })
  return { ui: words.ui, ...Object.fromEntries(titles) }
}

const saidOf = ({ observations }: Tree, { said }: Loaded): Loaded['said'] =>
  Object.fromEntries(
    Object.entries(said).map(([tag, phrases]) => [
      tag,
      phrases.filter(({ observation }) => Object.hasOwn(observations, observation))
    ])
  )

function treeWords(tree: Tree, words: Texts): Texts {
  const named = namedIn(tree)
  return {
    observations: pick(words.observations, new Set(Object.keys(tree.observations))),
    verdicts: pick(words.verdicts, new Set(tree.verdicts.map(({ id }) => id))),
    steps: pick(words.steps, named),
    notes: pick(words.notes, named),
    [tree.id]: words[tree.id]
  }
}

function bundleOf(tree: Tree, { sources, pictures, words }: Loaded): TreeBundle {
  return {
    tree: withoutRules(tree),
    sources: pick(sources, namedIn(tree)),
    texts: treeWords(tree, words[SOURCE_TAG] ?? {}),
    pictures: pick(pictures, new Set(Object.keys(tree.observations)))
  }
}

/** The rules are proved here, once; the browser has no use for them. */
const withoutRules = (tree: Tree): Tree => ({ ...tree, rules: [] })

/** Every name that a tree uses: its observations, notes, steps, sources. */
function namedIn(tree: Tree): ReadonlySet<string> {
  const names = JSON.stringify(withoutRules(tree)).match(/"[a-z0-9-]+"/g) ?? []
  return new Set(names.map(name => name.slice(1, -1)))
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
