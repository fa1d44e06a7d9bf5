import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { AuthoredFile, Loaded } from '../load/load.ts'
import type { OfficePack } from '../office/office-pack.ts'
import { readOfficePack } from '../office/read-office.ts'
import { BadUse } from './bad-use.ts'

/** Set where a checkout builds its own command, which stands far from its project. */
declare const PROJECT_OF_BUILD: string | undefined

/** The folder of this project, where authored files are looked for unless `--in` says otherwise. */
export const PROJECT =
  typeof PROJECT_OF_BUILD === 'string'
    ? PROJECT_OF_BUILD
    : fileURLToPath(new URL('../../', import.meta.url))

/** Where authored files stand in a project, and how their names end. */
const AUTHORED: readonly { readonly folder: string; readonly ending: string }[] = [
  { folder: 'shared', ending: '.yaml' },
  { folder: 'shared/pieces', ending: '.yaml' },
  { folder: 'shared/rules', ending: '.yaml' },
  { folder: 'shared/rows', ending: '.yaml' },
  { folder: 'shared/glossary', ending: '.yaml' },
  { folder: 'shared/reviews', ending: '.json' },
  { folder: 'shared/know-how', ending: '.yaml' },
  { folder: 'shared/practice', ending: '.yaml' },
  { folder: 'trees', ending: '.yaml' },
  { folder: 'trees/editions', ending: '.json' }
]

/** Where the scores of seeded faults are recorded. */
export const SCORES_FILE = 'trees/fault-scores.json'

/** A project's authored files, with paths as findings show them. */
export function readAuthored(project: string): AuthoredFile[] {
  if (!existsSync(project) || !statSync(project).isDirectory()) {
    throw new BadUse(`There is no folder \`${project}\`. Name the folder that holds \`trees\`.`)
  }
  const paths = AUTHORED.flatMap(({ folder, ending }) => filesIn(project, folder, ending))
  const ofTrees = foldersIn(project, 'trees')
    .filter(name => name !== 'editions')
    .flatMap(name => filesIn(project, `trees/${name}`, '.yaml'))
  const locales = foldersIn(project, 'locales').flatMap(tag =>
    filesIn(project, `locales/${tag}`, '.json')
  )
  const single = ['public/office.json', 'trees/withdrawn.json', SCORES_FILE].filter(path =>
    existsSync(join(project, path))
  )
  return [...paths, ...ofTrees, ...locales, ...single].map(path => ({
    path,
    text: textOf(project, path)
  }))
}

/** @throws BadUse where something else stands under the file's name. */
function textOf(project: string, path: string): string {
  const file = join(project, path)
  if (!statSync(file).isFile()) throw new BadUse(`\`${file}\` is no file, and one is wanted there.`)
  return readFileSync(file, 'utf8')
}

/** How a command comes by its project: from the folder named, or from this project's own. */
export type OpenProject = (folder?: string) => Promise<Project>

/** Reads and loads a project. @throws BadUse when there is no such folder, or no tree in it. */
export async function loadProject(
  project: string = PROJECT,
  loadFiles: LoadFiles = loadAnew
): Promise<Project> {
  const files = readAuthored(project)
  if (!files.some(({ path }) => path.startsWith('trees/'))) {
    throw new BadUse(
      `No tree stands in \`${join(project, 'trees')}\`. A tree is a folder with a \`tree.yaml\`.`
    )
  }
  const loaded = await loadFiles(files)
  let office: OfficePack | null | undefined
  return {
    files,
    loaded,
    get office() {
      // Looking up its time zone takes as long as listing every tree.
      if (office === undefined) office = readOfficePack(loaded.office)
      return office
    }
  }
}

/** How authored files are loaded. */
export type LoadFiles = (files: readonly AuthoredFile[]) => Promise<Loaded>

/** Loads authored files. What reads YAML is imported only here: it takes longer than a whole walk. */
export const loadAnew: LoadFiles = async files => (await import('../load/load.ts')).load(files)

/** What was read, and what loading made of it. */
export interface Project {
  readonly files: readonly AuthoredFile[]
  readonly loaded: Loaded
  readonly office: OfficePack | null
}

function filesIn(project: string, folder: string, ending: string): string[] {
  const path = join(project, folder)
  if (!existsSync(path)) return []
  return readdirSync(path, { withFileTypes: true })
    .filter(entry => entry.isFile() && entry.name.endsWith(ending))
    .map(entry => `${folder}/${entry.name}`)
    .sort()
}

function foldersIn(project: string, folder: string): string[] {
  const path = join(project, folder)
  if (!existsSync(path)) return []
  return readdirSync(path, { withFileTypes: true })
    .filter(entry => entry.isDirectory())
    .map(entry => entry.name)
    .sort()
}
