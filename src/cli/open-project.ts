import { existsSync, readFileSync } from 'node:fs'
import { cacheFolder } from './cache-folder.ts'
import { loadThrough } from './loaded-cache.ts'
import { loadAnew, loadProject, type OpenProject, PROJECT } from './read-project.ts'

/** The build writes it beside the command; a command run from its source has none, and no cache. */
const IDENTITY = new URL('code-identity.txt', import.meta.url)

/** Opens a project, and loads it only when it has changed since it was last opened. */
export const openProject: OpenProject = folder =>
  loadProject(folder, files => {
    const code = existsSync(IDENTITY) ? readFileSync(IDENTITY, 'utf8') : null
    const folder = code === null ? null : cacheFolder(PROJECT, 'loaded')
    if (code === null || folder === null) return loadAnew(files)
    const diagrams = cacheFolder(PROJECT, 'diagrams')
    return loadThrough({ folder, diagrams, code }, files, loadAnew)
  })
