// Writes the pictures of README.md, of the running app: node .ci/readme-pictures.mjs
import { mkdirSync, mkdtempSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium } from 'playwright-core'
import { build, preview } from 'vite'
import { BROWSER_FLAGS, findBrowser } from './browser.mjs'
import { root } from './install.mjs'
import { JARS, playJar } from './jars.mjs'

const LARGEST = 250_000
/** An hour at which the made-up office is open and its notice stands. */
const NOW = new Date('2026-11-24T16:00:00Z')
const folder = join(root, 'docs/pictures')

const built = mkdtempSync(join(tmpdir(), 'jarside-pictures-'))
await build({ root, logLevel: 'error', build: { outDir: built, emptyOutDir: true } })
const server = await preview({
  root,
  logLevel: 'error',
  build: { outDir: built },
  preview: { port: 0 }
})
const browser = await chromium.launch({ executablePath: findBrowser(), args: BROWSER_FLAGS })
try {
  mkdirSync(folder, { recursive: true })
  const page = await browser.newPage({
    viewport: { width: 1280, height: 800 },
    colorScheme: 'light'
  })
  await page.clock.setFixedTime(NOW)
  await page.goto(`http://127.0.0.1:${server.httpServer.address().port}/`)
  await playJar(page, JARS['white-fuzz'], screen =>
    screen === 'surface-texture' ? shoot(page, 'question') : undefined
  )
  await shoot(page, 'outcome')
} finally {
  await browser.close()
  await server.close()
  rmSync(built, { recursive: true, force: true })
}

async function shoot(page, name) {
  const path = join(folder, `${name}.png`)
  await page.waitForLoadState('networkidle')
  await page.evaluate(() => document.fonts.ready)
  await page.evaluate(() => scrollTo(0, 0))
  await page.mouse.move(0, 0)
  // A bead that is still coming in is shown in its place.
  await page.screenshot({ path, animations: 'disabled' })
  const { size } = statSync(path)
  if (size > LARGEST) throw new Error(`${path} has ${size} bytes, more than ${LARGEST}`)
}
