import { join } from 'node:path'
import { loadProject, type Project, readAuthored } from '../../src/cli/read-project.ts'
import type { AuthoredFile, Loaded } from '../../src/load/load.ts'
import type { Tree } from '../../src/tree/tree.ts'

const root = join(import.meta.dirname, '../..')

/** Every authored file of the project, as the command line reads it. */
export const authoredFiles = (): readonly AuthoredFile[] => readAuthored(root)

/** The tree that most tests are about, first in every list. */
const FIRST = 'kombucha-jar'

// It does not change while tests run: each worker reads it once for all its files.
let project: Promise<Project> | undefined

/** The shipped project as the command line opens it. */
export function openShipped(): Promise<Project> {
  project ??= loadProject()
  return project
}

/** The shipped project, the jar's tree first. */
export async function loadShipped(): Promise<Loaded> {
  const { loaded } = await openShipped()
  const trees = [...loaded.trees].sort((a, b) => Number(b.id === FIRST) - Number(a.id === FIRST))
  return { ...loaded, trees }
}

/** The shipped trees; a test that needs them fails loudly when they do not load. */
export async function shippedTrees(): Promise<readonly Tree[]> {
  const { trees, findings } = await loadShipped()
  if (trees.length === 0) throw new Error(`no tree loads: ${JSON.stringify(findings[0])}`)
  return trees
}
