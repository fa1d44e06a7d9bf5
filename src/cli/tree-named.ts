import { formatFinding } from '../findings/format-finding.ts'
import { nearestNames } from '../findings/nearest-name.ts'
import { treeAt } from '../load/kinds-of-file.ts'
import type { Tree } from '../tree/tree.ts'
import { BadUse, didYouMean } from './bad-use.ts'
import type { Project } from './read-project.ts'
import { say, type Terminal } from './terminal.ts'

/** The tree that was named; undefined, with its findings on the error stream, where it has some. */
export function treeNamed(
  { loaded, files }: Project,
  positionals: readonly string[],
  terminal: Terminal
): Tree | undefined {
  const authored = authoredTrees(files)
  const [name, ...rest] = positionals
  if (name === undefined || rest.length > 0) {
    throw new BadUse(`Name one tree: ${authored.map(id => `\`${id}\``).join(', ')}.`)
  }
  const tree =
    loaded.trees.find(({ id }) => id === name) ??
    loaded.editions.find(edition => `${edition.tree.id}@${edition.tree.edition}` === name)?.tree
  if (tree && Object.hasOwn(loaded.withdrawn, name)) {
    const { on, because } = loaded.withdrawn[name] ?? { on: '', because: '' }
    say(
      terminal.errors,
      `\`${name}\` was withdrawn on ${on}: ${because}`,
      'Until a new edition: the county office. Emergency 911. Poison Help 1-800-222-1222.'
    )
    return undefined
  }
  if (tree) return tree
  if (!authored.includes(name)) throw noSuchTree(name, authored)
  const textOf = (path: string) => files.find(file => file.path === path)?.text
  say(terminal.errors, ...loaded.findings.map(finding => formatFinding(finding, textOf)))
  say(terminal.errors, `\`${name}\` cannot be used until these are fixed: jarside check.`)
  return undefined
}

/** The ids of every tree that somebody wrote, right or wrong. */
export const authoredTrees = (files: Project['files']): readonly string[] =>
  files.flatMap(({ path }) => treeAt(path) ?? [])

/** What is said of a tree that nobody wrote. */
export function noSuchTree(name: string, authored: readonly string[]): BadUse {
  const near = didYouMean(nearestNames(name, authored))
  return new BadUse(`There is no tree \`${name}\`.${near} Trees: ${authored.join(', ')}.`)
}
