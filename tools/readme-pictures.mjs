// Writes the pictures of README.md, of the running app: node --import tsx tools/readme-pictures.mjs
import { mkdirSync, mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs'
import { createServer } from 'node:http'
import { tmpdir } from 'node:os'
import { extname, join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { chromium } from 'playwright-core'
import { preview } from 'vite'
import { root } from '../.ci/install.mjs'
import { JARS, playJar } from '../tests/helpers/jars.mjs'
import { BROWSER_FLAGS, findBrowser } from './browser.mjs'
import { buildAll } from './build.mjs'
import { jarside } from './jarside.mjs'

const LARGEST = 300_000
/** An hour at which the made-up office is open and its notice stands. */
const NOW = new Date('2026-11-24T16:00:00Z')
const folder = join(root, 'docs/pictures')
const TYPES = { '.js': 'text/javascript', '.json': 'application/json' }

const built = mkdtempSync(join(tmpdir(), 'jarside-pictures-'))
await buildAll({ outDir: built, logLevel: 'error' })
const server = await preview({
  root,
  logLevel: 'error',
  build: { outDir: built },
  preview: { port: 0 }
})
const home = `http://127.0.0.1:${server.httpServer.address().port}/`
const host = createServer(answerAsHost).listen(0, '127.0.0.1')
const browser = await chromium.launch({ executablePath: findBrowser(), args: [...BROWSER_FLAGS] })
try {
  mkdirSync(folder, { recursive: true })
  await desk()
  await kiosk()
  await embed()
  await sheet()
} finally {
  await browser.close()
  host.close()
  await server.close()
  rmSync(built, { recursive: true, force: true })
}

async function desk() {
  const page = await opened(`${home}desk`, 1280, 800)
  await page.click('[data-language="es"]')
  await page.waitForSelector('.step-heading .second')
  await page.fill('.fact-input', 'day 9, ph 4.1 strip, 75 F')
  await page.keyboard.press('Enter')
  for (const screen of ['people', 'container', 'jar']) {
    await page.locator('.step-heading').focus()
    await page.keyboard.press('0')
    await page.waitForSelector(`.question:not([data-observation="${screen}-signs"])`)
  }
  await shoot(page, 'desk')
}

async function kiosk() {
  const page = await opened(`${home}kiosk`, 1080, 1350)
  await page.click('[data-language="en"]')
  await playJar(page, JARS['white-fuzz'], screen =>
    screen === 'surface-texture' ? shoot(page, 'kiosk') : undefined
  )
}

async function embed() {
  const { port } = host.address()
  const page = await opened(`http://127.0.0.1:${port}/`, 1000, 760)
  await page.waitForSelector('jarside-walk .question')
  await shoot(page, 'embed')
}

async function sheet() {
  const verdict = ['--verdict', 'likely-mold', '--lang', 'es']
  await jarside(['handout', 'kombucha-jar', ...verdict, '--out', built])
  const page = await browser.newPage({ viewport: { width: 850, height: 1100 } })
  await page.goto(pathToFileURL(join(built, 'kombucha-jar-likely-mold-es-letter.html')).href)
  await shoot(page, 'sheet')
}

async function opened(address, width, height) {
  const page = await browser.newPage({ viewport: { width, height }, colorScheme: 'light' })
  await page.clock.setFixedTime(NOW)
  await page.goto(address)
  return page
}

/** A page of the made-up county's own, with the embed in it. */
function answerAsHost(request, response) {
  const name = new URL(request.url, 'http://host').pathname
  if (name === '/') {
    response.setHeader('Content-Type', 'text/html')
    response.end(`<!doctype html><html lang="en"><meta charset="utf-8"><title>Larkspur County</title>
<style>body{margin:0;font:17px/1.5 Georgia,serif;color:#222;background:#fff}
header{padding:18px 40px;color:#fff;background:#3b3560;font-size:22px}
main{max-width:760px;margin:auto;padding:22px 20px}h1{font-size:30px;margin:0 0 8px}</style>
<header>Larkspur County · Home and Garden</header>
<main><h1>Is something wrong with my kombucha?</h1>
<p>Answer a few questions about your jar. The food preservation desk answers at 555-0110.</p>
<script type="module" src="/jarside-walk.js"></script>
<jarside-walk tree="kombucha-jar"></jarside-walk></main></html>`)
    return
  }
  try {
    const body = readFileSync(join(built, name))
    response.setHeader('Content-Type', TYPES[extname(name)] ?? 'application/octet-stream')
    response.end(body)
  } catch {
    response.writeHead(404).end()
  }
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
