import { readdirSync, readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import fontverter from 'fontverter'
import { Blob, Face } from 'harfbuzzjs'
import { expect, test } from 'vitest'

const root = resolve(import.meta.dirname, '../..')
const style = readFileSync(join(root, 'src/style/fonts.css'), 'utf8')

/** Drawn by whatever type the device has: a box to tick and a key, beside their names, and rare fractions. */
const SIGNS_OF_THE_DEVICE = '☐⌫⅓⅔'

/** The signs that a file of a typeface is fetched for. */
function rangeOf(file: string): (sign: string) => boolean {
  const [, face = ''] = style.split(`./fonts/${file}.woff2`)
  const [, listed = ''] = /unicode-range:([^;]+);/.exec(face) ?? []
  const ranges = [...listed.matchAll(/U\+([0-9A-F]+)(?:-([0-9A-F]+))?/g)].map(
    ([, from = '', to = from]) => [Number.parseInt(from, 16), Number.parseInt(to, 16)] as const
  )
  return sign =>
    ranges.some(
      ([from, to]) => from <= Number(sign.codePointAt(0)) && Number(sign.codePointAt(0)) <= to
    )
}

/** The signs of every text of these languages; what another language writes as its own name is no text of theirs. */
function signsOf(tags: readonly string[]): ReadonlySet<string> {
  const texts = tags.flatMap(tag => {
    const folder = join(root, 'locales', tag)
    return readdirSync(folder).map(name => readFileSync(join(folder, name), 'utf8'))
  })
  expect(texts.length).toBeGreaterThan(10)
  return new Set(texts.join(''))
}

/** The signs that a cut file has a shape for (HarfBuzz reads its character map). */
async function drawnBy(file: string): Promise<ReadonlySet<number>> {
  const font = readFileSync(join(root, `src/style/fonts/${file}.woff2`))
  const face = new Face(new Blob(await fontverter.convert(font, 'sfnt')))
  return new Set(face.collectUnicodes())
}

test.each(['literata', 'atkinson-hyperlegible-next'])(
  'every text is set in the first file of %s; the rest of Latin-1 is in the second',
  family => {
    const first = rangeOf(family)
    const second = rangeOf(`${family}-more`)
    const signs = [...signsOf(['en', 'es'])].filter(
      sign => sign >= ' ' && !SIGNS_OF_THE_DEVICE.includes(sign)
    )
    expect(signs.filter(sign => !first(sign))).toEqual([])
    const latin = Array.from({ length: 0x100 - 0xa0 }, (_, at) => String.fromCodePoint(0xa0 + at))
    expect(latin.filter(sign => first(sign) === second(sign))).toEqual([])
  }
)

/** In other languages than English and Spanish the key's arrow is the device's too. */
const OF_THE_DEVICE = `${SIGNS_OF_THE_DEVICE}←→`
const LATIN = ['atkinson-hyperlegible-next', 'atkinson-hyperlegible-next-more']
test.each([
  ['zh', ['noto-sans-sc-regular', ...LATIN]],
  ['zh', ['noto-sans-sc-bold', ...LATIN]],
  ['ar', ['noto-sans-arabic', ...LATIN]],
  ['vi', ['noto-sans', 'noto-sans-vietnamese']],
  ['vi', ['literata', 'literata-vietnamese', 'literata-more']]
])(
  'no sign of %s is missing in %j: node tools/subset-fonts.mjs cuts them anew',
  async (tag, files) => {
    const drawn: number[] = []
    // One after another: the converter has one memory.
    for (const file of files) drawn.push(...(await drawnBy(file)))
    const has = new Set(drawn)
    const missing = [...signsOf([tag])].filter(
      sign => sign > ' ' && !OF_THE_DEVICE.includes(sign) && !has.has(sign.codePointAt(0) ?? 0)
    )
    expect(missing).toEqual([])
  }
)

test.each(['zh', 'ar'])('the own name of %s is in its small file', async tag => {
  const { language } = JSON.parse(readFileSync(join(root, `locales/${tag}/ui.json`), 'utf8'))
  const drawn = await drawnBy(tag === 'zh' ? 'noto-sans-sc-name' : 'noto-sans-arabic-name')
  expect([...language].filter(sign => !drawn.has(sign.codePointAt(0) ?? 0))).toEqual([])
})
