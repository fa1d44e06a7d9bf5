// Cuts the two typefaces down to what the languages here need: node tools/subset-fonts.mjs
// The cut files are committed, so that a build needs no font tools; run it again when a typeface changes.
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import subsetFont from 'subset-font'
import { root } from '../.ci/install.mjs'

const range = (from, to) =>
  Array.from({ length: to - from + 1 }, (_, i) => String.fromCodePoint(from + i))
/** Printable ASCII, the letters of Spanish, and the signs of good printing. */
const USUAL = [
  ...range(0x20, 0x7e),
  ...'\u00a0¡¿ª«»º°·±²³µ×¼½¾§©ÁÉÍÑÓÚÜáéíñóúü',
  ...'’‘“”–—…⅓⅔•→−≤≥'
]
/** The rest of Latin-1, for names and for other languages: fetched only where one of them is shown. */
const MORE = range(0xa0, 0xff).filter(sign => !USUAL.includes(sign))

// Headings have one weight, text has those from plain to bold.
const FACES = [
  { family: 'literata', wght: 600 },
  { family: 'atkinson-hyperlegible-next', wght: { min: 400, max: 700 } }
]

for (const { family, wght } of FACES) {
  const file = `${family}-latin-wght-normal.woff2`
  const whole = readFileSync(join(root, `node_modules/@fontsource-variable/${family}/files`, file))
  for (const [name, signs] of Object.entries({ [family]: USUAL, [`${family}-more`]: MORE })) {
    const cut = await subsetFont(whole, signs.join(''), {
      targetFormat: 'woff2',
      variationAxes: { wght },
      // No small capitals, old figures or other shapes that nothing here asks for.
      noLayoutClosure: true
    })
    writeFileSync(join(root, `src/style/fonts/${name}.woff2`), cut)
    console.log(`${name}: ${whole.length} bytes, cut to ${cut.length}`)
  }
}
