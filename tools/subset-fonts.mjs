// Cuts the typefaces down to what the languages here need: node tools/subset-fonts.mjs [file ...]
// The cut files are committed, so that a build needs no font tools; run it again when a typeface or the signs
// of a language change. The whole Chinese typeface is too large to install for everybody. Before cutting it:
//   npm install --no-save @expo-google-fonts/noto-sans-sc@0.4.3
import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
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
/** What the texts of a language are written with. */
const signsOf = tag => {
  const folder = join(root, 'locales', tag)
  const texts = readdirSync(folder).map(name => readFileSync(join(folder, name), 'utf8'))
  return [...new Set(texts.join(''))].filter(sign => sign > ' ')
}
/** The letters of Vietnamese (Unicode blocks Latin Extended-A, -B and Latin Extended Additional), and đồng. */
const VIETNAMESE = [...range(0xc0, 0x1b0), ...range(0x300, 0x323), ...range(0x1ea0, 0x1ef9), '₫']
/** Arabic, with its punctuation. */
const ARABIC = [...range(0x600, 0x6ff)]
/** A language's own name is shown where no text of it is: by it its readers find the rest. */
const nameOf = tag =>
  JSON.parse(readFileSync(join(root, `locales/${tag}/ui.json`), 'utf8')).language

const variable = (family, subset) =>
  `node_modules/@fontsource-variable/${family}/files/${family}-${subset}-wght-normal.woff2`
const chinese = weight =>
  `node_modules/@expo-google-fonts/noto-sans-sc/${weight}/NotoSansSC_${weight}.ttf`

// Headings have one weight, text has those from plain to bold.
const HEADING = { wght: 600 }
const TEXT = { wght: { min: 400, max: 700 } }
const CUTS = {
  literata: [variable('literata', 'latin'), HEADING, USUAL],
  'literata-more': [variable('literata', 'latin'), HEADING, MORE],
  'literata-vietnamese': [variable('literata', 'vietnamese'), HEADING, VIETNAMESE],
  'atkinson-hyperlegible-next': [variable('atkinson-hyperlegible-next', 'latin'), TEXT, USUAL],
  'atkinson-hyperlegible-next-more': [variable('atkinson-hyperlegible-next', 'latin'), TEXT, MORE],
  'noto-sans': [variable('noto-sans', 'latin'), TEXT, [...USUAL, ...MORE]],
  'noto-sans-vietnamese': [variable('noto-sans', 'vietnamese'), TEXT, VIETNAMESE],
  'noto-sans-arabic': [variable('noto-sans-arabic', 'arabic'), TEXT, ARABIC],
  'noto-sans-arabic-name': [variable('noto-sans-arabic', 'arabic'), HEADING, () => nameOf('ar')],
  'noto-sans-vietnamese-name': [variable('noto-sans', 'vietnamese'), HEADING, () => nameOf('vi')],
  'noto-sans-sc-regular': [chinese('400Regular'), {}, () => signsOf('zh')],
  'noto-sans-sc-bold': [chinese('700Bold'), {}, () => signsOf('zh')],
  'noto-sans-sc-name': [chinese('700Bold'), {}, () => nameOf('zh')]
}

const named = process.argv.slice(2)
for (const [name, [file, variationAxes, signs]] of Object.entries(CUTS)) {
  if (named.length > 0 && !named.includes(name)) continue
  const whole = readFileSync(join(root, file))
  const kept = typeof signs === 'function' ? [...signs()] : signs
  const cut = await subsetFont(whole, kept.join(''), {
    targetFormat: 'woff2',
    variationAxes,
    // No small capitals, old figures or other shapes that nothing here asks for. Arabic letters have
    // four shapes each, by the letters beside them.
    noLayoutClosure: !name.includes('arabic')
  })
  writeFileSync(join(root, `src/style/fonts/${name}.woff2`), cut)
  console.log(`${name}: ${whole.length} bytes, cut to ${cut.length}`)
}
