import { existsSync, readFileSync } from 'node:fs'
import type { SpokenTree } from '../compare/wording.ts'
import { formatFinding } from '../findings/format-finding.ts'
import { readEdition } from '../load/edition.ts'
import { load } from '../load/load.ts'
import { textsOf } from '../load/texts-of-tree.ts'
import type { Tree } from '../tree/tree.ts'
import { BadUse } from './bad-use.ts'
import type { Project } from './read-project.ts'

/**
 * Opens what somebody names: `kombucha-jar` as it stands, `kombucha-jar@1` as it was published, or a
 * file, of a tree (read in this project, in place of its own) or of an edition.
 *
 * @throws BadUse when there is no such thing, or it has findings.
 */
export async function openEdition(project: Project, name: string): Promise<SpokenTree> {
  const { loaded } = project
  const now = loaded.trees.find(({ id }) => id === name)
  if (now !== undefined) return spokenNow(now, loaded)
  const published = loaded.editions.find(({ tree }) => `${tree.id}@${tree.edition}` === name)
  if (published !== undefined) return published
  if (existsSync(name)) return name.endsWith('.json') ? fromEdition(name) : fromTree(project, name)
  const names = [
    ...loaded.trees.map(({ id }) => id),
    ...loaded.editions.map(({ tree }) => `${tree.id}@${tree.edition}`)
  ]
  throw new BadUse(`There is no edition or file \`${name}\`. Editions: ${names.join(', ')}.`)
}

const spokenNow = (tree: Tree, { words, sources }: Project['loaded']): SpokenTree => ({
  tree,
  texts: Object.fromEntries(
    Object.entries(words).map(([tag, texts]) => [tag, textsOf(tree, texts)])
  ),
  sources
})

function fromEdition(file: string): SpokenTree {
  const edition = readEdition(readFileSync(file, 'utf8'))
  if (edition === null) throw new BadUse(`\`${file}\` is no published edition.`)
  return edition
}

/** A tree's file read as if it stood in the project in place of the one with its id. */
async function fromTree({ files }: Project, file: string): Promise<SpokenTree> {
  const text = readFileSync(file, 'utf8')
  const id = /^id:\s*([a-z0-9-]+)/m.exec(text)?.[1]
  if (id === undefined) throw new BadUse(`\`${file}\` is no tree: it has no \`id:\`.`)
  const path = `trees/${id}/tree.yaml`
  // What else is published is of no matter to a file that is only looked at.
  const others = files.filter(one => one.path !== path && !one.path.startsWith('trees/editions/'))
  const loaded = await load([...others, { path, text }])
  const [finding] = loaded.findings
  const tree = loaded.trees.find(one => one.id === id)
  if (finding !== undefined || tree === undefined) {
    const message = finding && formatFinding(finding, file => (file === path ? text : undefined))
    throw new BadUse(`\`${file}\` cannot be compared before it is fixed:\n\n${message ?? ''}`)
  }
  return spokenNow(tree, loaded)
}
