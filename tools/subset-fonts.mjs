// Cuts the two typefaces down to what the Latin-script languages here need: node tools/subset-fonts.mjs
// The cut files are committed, so that a build needs no font tools; run it again when a typeface changes.
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import subsetFont from 'subset-font'
import { root } from '../.ci/install.mjs'

const range = (from, to) =>
  Array.from({ length: to - from + 1 }, (_, i) => String.fromCodePoint(from + i))
// Printable ASCII and Latin-1, and the signs of good printing.
const TEXT = [...range(0x20, 0x7e), ...range(0xa0, 0xff), ...'’‘“”–—…⅓⅔•·→−≤≥'].join('')

const FACES = [
  { family: 'literata', wght: { min: 500, max: 700 } },
  { family: 'atkinson-hyperlegible-next', wght: { min: 400, max: 800 } }
]

for (const { family, wght } of FACES) {
  const whole = readFileSync(
    join(
      root,
      `node_modules/@fontsource-variable/${family}/files/${family}-latin-wght-normal.woff2`
    )
  )
  const cut = await subsetFont(whole, TEXT, { targetFormat: 'woff2', variationAxes: { wght } })
  writeFileSync(join(root, `src/style/fonts/${family}.woff2`), cut)
  console.log(`${family}: ${whole.length} bytes, cut to ${cut.length}`)
}
