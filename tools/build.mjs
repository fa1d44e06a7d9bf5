// Builds the pages, the embed, then the parts of the kiosk as one file, into one folder: npm run build, or node tools/build.mjs --outDir <folder>
// With --gallery <folder> the gallery of parts too, beside those.

import { spawnSync } from 'node:child_process'
import { writeFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { parseArgs } from 'node:util'
import { install, root } from '../.ci/install.mjs'

/** The file that a build writes last: where it stands the build is whole. */
export const LAST_WRITTEN = 'licenses/sbom.cdx.json'

/** Builds everything that is served; `outDir` in place of `dist`, and the gallery into a folder of its own. */
export async function buildAll({
  outDir = resolve(root, 'dist'),
  gallery,
  logLevel = 'warn'
} = {}) {
  // Not before: it may only just have been installed.
  const { build } = await import('vite')
  await build({ root, logLevel, build: { outDir, emptyOutDir: true } })
  await buildEmbed({ outDir, logLevel })
  const configFile = resolve(root, 'vite.single-file.config.ts')
  await build({ root, configFile, logLevel, build: { outDir, emptyOutDir: false } })
  if (gallery !== undefined) {
    await build({
      root,
      mode: 'gallery',
      logLevel,
      build: { outDir: gallery, emptyOutDir: true }
    })
  }
  writeFileSync(resolve(outDir, LAST_WRITTEN), billOfMaterials())
}

/** Every package of the lock file, in CycloneDX, as npm lists them. */
function billOfMaterials() {
  const args = ['sbom', '--sbom-format', 'cyclonedx', '--package-lock-only']
  const { status, stdout, stderr } = spawnSync('npm', args, {
    cwd: root,
    encoding: 'utf8',
    // A build for production would leave out what it bundles.
    env: { ...process.env, NODE_ENV: '' },
    shell: process.platform === 'win32'
  })
  if (status !== 0) throw new Error(`npm could not list the packages: ${stderr}`)
  return stdout
}

/** Builds the embed alone, beside whatever the folder holds. */
export async function buildEmbed({ outDir, logLevel = 'warn' }) {
  const { build } = await import('vite')
  const configFile = resolve(root, 'vite.embed.config.ts')
  await build({ root, configFile, logLevel, build: { outDir, emptyOutDir: false } })
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const { values } = parseArgs({
    options: { outDir: { type: 'string' }, gallery: { type: 'string' } }
  })
  const folders = Object.entries(values).map(([name, folder]) => [name, resolve(folder)])
  process.exitCode = install()
  if (process.exitCode === 0) {
    await buildAll(Object.fromEntries(folders))
  }
}
