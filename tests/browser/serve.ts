import { execFileSync } from 'node:child_process'
import { existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { preview } from 'vite'
import type { TestProject } from 'vitest/node'
import { findBrowser } from '../../tools/browser.mjs'
import { LAST_WRITTEN } from '../../tools/build.mjs'

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the built page is served. */
    address: string
    /** The folder that it was built into, the embed too. */
    built: string
    /** Where the gallery of parts is served. */
    gallery: string
    /** The browser's program, or why there is none. */
    browser: { readonly program: string } | { readonly missing: string }
  }
}

const root = join(import.meta.dirname, '../..')

/** Builds the page once and serves it, as it would be served anywhere, until the tests are done. */
export default async function serve(project: TestProject) {
  const browser = browserOrWhyNot()
  project.provide('browser', browser)
  project.provide('address', '')
  project.provide('built', '')
  project.provide('gallery', '')
  if ('missing' in browser) return undefined

  // The whole check has built both already: it names their folders and takes them away itself.
  const { JARSIDE_BUILT, JARSIDE_GALLERY } = process.env
  const own = mkdtempSync(join(tmpdir(), 'jarside-browser-'))
  const outDir = JARSIDE_BUILT ?? join(own, 'pages')
  const gallery = JARSIDE_GALLERY ?? join(own, 'gallery')
  if (!existsSync(join(outDir, LAST_WRITTEN))) buildInto(outDir, gallery)
  const pages = await served(outDir)
  const parts = await served(gallery, 'gallery')
  project.provide('built', outDir)
  project.provide('address', pages.address)
  project.provide('gallery', parts.address)
  return async () => {
    await Promise.all([pages.server.close(), parts.server.close()])
    rmSync(own, { recursive: true, force: true })
  }
}

async function served(outDir: string, mode = 'production') {
  const server = await preview({
    root,
    mode,
    logLevel: 'error',
    preview: { port: 0 },
    build: { outDir }
  })
  const at = server.httpServer.address()
  if (at === null || typeof at === 'string') throw new Error('the page is served nowhere')
  return { server, address: `http://127.0.0.1:${at.port}/` }
}

function browserOrWhyNot() {
  try {
    return { program: findBrowser() }
  } catch (error) {
    return { missing: error instanceof Error ? error.message : String(error) }
  }
}

// A process of its own: the test runner's NODE_ENV would build a page that nobody is given.
function buildInto(outDir: string, gallery: string) {
  const args = ['--outDir', outDir, '--gallery', gallery]
  execFileSync(process.execPath, [join(root, 'tools/build.mjs'), ...args], {
    cwd: root,
    stdio: ['ignore', 'ignore', 'inherit'],
    env: { ...process.env, NODE_ENV: 'production' }
  })
}
