// Pictures of the running app: node --import tsx tools/look.mjs <folder> [width] [light|dark] — for eyes, and for README.
import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { chromium } from 'playwright-core'
import { build, preview } from 'vite'
import { JARS, playJar } from '../tests/helpers/jars.mjs'
import { BROWSER_FLAGS, findBrowser } from './browser.mjs'

const [folder = '.ci/out/look', width = '1280', scheme = 'light', only] = process.argv.slice(2)
mkdirSync(folder, { recursive: true })
if (!process.env.JARSIDE_BUILT) await build({ logLevel: 'error' })
const server = await preview({ preview: { port: 0 }, logLevel: 'error' })
const address = `http://127.0.0.1:${server.httpServer.address().port}/`
const browser = await chromium.launch({ executablePath: findBrowser(), args: BROWSER_FLAGS })
try {
  const height = Number(width) < 500 ? 780 : Number(width) < 1000 ? 1000 : 800
  const page = await browser.newPage({
    viewport: { width: Number(width), height },
    colorScheme: scheme
  })
  page.on('console', message => message.type() === 'error' && console.error(message.text()))
  page.on('pageerror', error => console.error(error))
  const shoot = name =>
    page.screenshot({ path: join(folder, `${name}-${width}-${scheme}.png`), fullPage: true })
  for (const [name, jar] of Object.entries(JARS)) {
    if (only !== undefined && !only.split(',').includes(name)) continue
    await page.goto(address)
    await page.reload()
    await playJar(page, jar, step =>
      jar.look?.includes(step) ? shoot(`${name}-${step}`) : undefined
    )
    await shoot(name)
  }
} finally {
  await browser.close()
  await server.close()
}
