// The command of this checkout as plain JavaScript: built once for each state of its source.
import { createHash, randomUUID } from 'node:crypto'
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync
} from 'node:fs'
import module from 'node:module'
import { join } from 'node:path'
import { root } from '../.ci/install.mjs'

const builds = join(root, 'node_modules/.cache/jarside/command')
/** Each is about a megabyte. */
const KEPT = 5
/** A command imports its parts while it runs: what was used of late is left to it. */
const LEFT_ALONE = 24 * 60 * 60 * 1000
/** What the command is built of, beside all of `src`. */
const BESIDE = ['package.json', 'package-lock.json', 'tsconfig.json', 'vite.command.config.ts']

/** The file to run; `null` where it cannot be built, or kept: then the source has to be run itself. */
export async function builtCommand() {
  const hash = sourceHash()
  const build = join(builds, hash)
  const file = join(build, 'cli/jarside.js')
  if (!existsSync(file)) await buildOnce(build, hash)
  if (!existsSync(file)) return null
  takeUp(build)
  return file
}

async function buildOnce(build, hash) {
  const part = `${build}.${randomUUID()}.part`
  try {
    mkdirSync(part, { recursive: true })
  } catch {
    return
  }
  try {
    await buildInto(part)
    // What was changed meanwhile may be in it, or may not.
    if (sourceHash() !== hash) throw new Error('The source was changed while it was built.')
    renameSync(part, build)
    dropOldest()
  } catch {
    // Another process was sooner, or the source has a mistake: then running it says which.
    rmSync(part, { recursive: true, force: true })
  }
}

/** Marks the build as used. From Node.js 22 on, what it makes of the code is kept, and goes, with it. */
function takeUp(build) {
  try {
    const now = new Date()
    utimesSync(build, now, now)
    module.enableCompileCache?.(join(build, 'compiled'))
  } catch {
    // Somebody else's folder: it is run as it is.
  }
}

/** Changes with every file of the source, and with where it stands: that is built in as well. */
function sourceHash() {
  const source = readdirSync(join(root, 'src'), { recursive: true, withFileTypes: true })
    .filter(entry => entry.isFile())
    .map(({ parentPath, name }) => `${parentPath}/${name}`)
    .sort()
  const hash = createHash('sha256').update(root)
  for (const file of [...source, ...BESIDE.map(name => join(root, name))]) {
    const content = readFileSync(file)
    hash.update(`\n${file} ${content.length}\n`).update(content)
  }
  return hash.digest('hex')
}

async function buildInto(outDir) {
  const { build } = await import('vite')
  await build({
    root,
    configFile: join(root, 'vite.command.config.ts'),
    logLevel: 'silent',
    define: { PROJECT_OF_BUILD: JSON.stringify(root) },
    build: { outDir }
  })
}

function dropOldest() {
  const old = Date.now() - LEFT_ALONE
  const all = readdirSync(builds)
    .map(name => join(builds, name))
    .map(path => ({ path, at: statSync(path).mtimeMs }))
    .sort((a, b) => b.at - a.at)
  for (const { path, at } of all.slice(KEPT)) {
    if (at < old) rmSync(path, { recursive: true, force: true })
  }
}
