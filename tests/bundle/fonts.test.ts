import { readdirSync, readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { expect, test } from 'vitest'

const root = resolve(import.meta.dirname, '../..')
const style = readFileSync(join(root, 'src/style/fonts.css'), 'utf8')

/** Drawn by whatever type the device has: a box to tick and a key, beside their names. */
const SIGNS_OF_THE_DEVICE = '☐⌫'

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

test.each(['literata', 'atkinson-hyperlegible-next'])(
  'every text is set in the first file of %s; the rest of Latin-1 is in the second',
  family => {
    const first = rangeOf(family)
    const second = rangeOf(`${family}-more`)
    const locales = readdirSync(join(root, 'locales'), { recursive: true, encoding: 'utf8' })
    const files = locales.filter(name => name.endsWith('.json'))
    expect(files.length).toBeGreaterThan(10)
    const texts = files.map(name => readFileSync(join(root, 'locales', name), 'utf8')).join('')
    const signs = [...new Set(texts)].filter(
      sign => sign >= ' ' && !SIGNS_OF_THE_DEVICE.includes(sign)
    )
    expect(signs.filter(sign => !first(sign))).toEqual([])
    const latin = Array.from({ length: 0x100 - 0xa0 }, (_, at) => String.fromCodePoint(0xa0 + at))
    expect(latin.filter(sign => first(sign) === second(sign))).toEqual([])
  }
)
