// The contact sheet of all pictures, in color and in gray: node --import tsx tools/picture-sheet.mjs
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { chromium } from 'playwright-core'
import { root } from '../.ci/install.mjs'
import { BROWSER_FLAGS, findBrowser } from './browser.mjs'
import { palettePng } from './palette-png.mjs'
import { PICTURES } from './pictures/pictures.ts'

const LARGEST = 400_000
const folder = join(root, 'docs/pictures')
const all = readdirSync(join(root, 'shared/pictures')).map(file => file.replace(/\.svg$/, ''))
// In the order of their tables, what is compared side by side; then those by hand.
const ids = [...Object.keys(PICTURES), ...all.filter(id => !(id in PICTURES)).sort()]
const figures = ids.map(id => {
  const svg = readFileSync(join(root, `shared/pictures/${id}.svg`), 'utf8')
  return `<figure>${svg.replace('<svg', '<svg width="96" height="96"')}<figcaption>${id.replaceAll('-', '-<wbr>')}</figcaption></figure>`
})
const page = filter => `<!doctype html><meta charset="utf-8"><style>
body{margin:0;padding:14px;background:#FAF6EE;color:#231F1A;font:11px/1.2 sans-serif;filter:${filter}}
main{display:grid;grid-template-columns:repeat(12,1fr);gap:10px 4px}
figure{margin:0;text-align:center}figcaption{padding:3px 2px 0}</style><main>${figures.join('')}</main>`

mkdirSync(folder, { recursive: true })
const browser = await chromium.launch({ executablePath: findBrowser(), args: [...BROWSER_FLAGS] })
try {
  for (const [name, filter] of [
    ['all-pictures', 'none'],
    ['all-pictures-gray', 'grayscale(1)']
  ]) {
    const sheet = await browser.newPage({ viewport: { width: 1360, height: 900 } })
    await sheet.setContent(page(filter))
    const path = join(folder, `${name}.png`)
    const picture = palettePng(await sheet.screenshot({ fullPage: true }))
    if (picture.length > LARGEST) {
      throw new Error(`${path} would have ${picture.length} bytes, more than ${LARGEST}`)
    }
    writeFileSync(path, picture)
    console.log(`${name}.png: ${picture.length} bytes, ${ids.length} pictures`)
  }
} finally {
  await browser.close()
}
