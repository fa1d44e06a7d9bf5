import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'

const FOLDER = 'shared/pictures'
const LONGEST_SHORT = 90
/** In the order of their files. */
const ids = readdirSync(FOLDER)
  .sort()
  .map(file => file.replace(/\.svg$/, ''))
const drawn = (id: string) => readFileSync(`${FOLDER}/${id}.svg`, 'utf8')

interface Told {
  readonly short: string
  readonly long: string
}

/** What is said of every picture in one language. */
function tellings(tag: string): ReadonlyMap<string, Told> {
  const text = readFileSync(`locales/${tag}/pictures.json`, 'utf8')
  return new Map(Object.entries<Told>(JSON.parse(text)).filter(([key]) => key !== '$schema'))
}

const sentences = (text: string) => text.split(/(?<=[.!?])\s+/)

/** The light on wet things, and hair: one line of many short thin strokes. */
const LIGHT = /fill="#FFFDF7"/
const HAIR = /stroke-width="0\.9" d="M[^"]{300,}"/

/** By language: what a picture is never said to be, orders, and the words for what is drawn. */
const LANGUAGES = {
  en: {
    never:
      /\b(?:safe\w*|sure|normal\w*|tast\w+|mold\w*|yeast\w*|spoil\w*|rott\w+|healthy|harmless|poison\w*|danger\w*|infect\w*|pictures? of|drawing of)\b/i,
    orders:
      /^(?:look|see|hold|compare|check|keep|throw|use|do|touch|open (?:it|the)|smell|note)\b/i,
    seen: /\bseen from\b/i,
    hair: /\bhairs?\b/i,
    shine: /\bwhite shines?\b/i,
    wet: /\b(?:it is|is|are|so they are) wet\b/i
  },
  es: {
    never:
      /(?<!\p{L})(?:segur\p{L}*|normal\p{L}*|prob(?:ar|e)\p{L}*|prueb\p{L}*|sabo\p{L}*|moho\p{L}*|hongos|levadura\p{L}*|podrid\p{L}*|san[oa]s?|inofensiv\p{L}*|venen\p{L}*|pelig\p{L}*|infec\p{L}*|(?:imagen|dibujo|foto) de)(?!\p{L})/iu,
    orders: /^(?:mire|vea|compare|f[ií]jese|busque|tire|ponga|revise|use|toque|abra|huela|note)\b/i,
    seen: /(?:^|\s)(?:desde arriba|de lado|de frente|por el lado)(?!\p{L})/iu,
    hair: /(?<!\p{L})pelitos?(?!\p{L})/iu,
    shine: /(?<!\p{L})brillos? blancos?(?!\p{L})/iu,
    wet: /(?<!\p{L})están? mojad[oa]s?(?!\p{L})/iu
  }
} as const

/** Signs, which show nothing that is looked at from somewhere. */
const SIGNS = new Set(['mark-day', 'mark-none', 'mark-people', 'mark-ph', 'mark-unsure'])
const FLAT = /^(?:ingredient|look)-/

describe.each(Object.entries(LANGUAGES))('what is said of the pictures in %s', (tag, words) => {
  const told = tellings(tag)
  const all = [...told]
  const where = (wrong: (telling: Told, id: string) => boolean) =>
    all.filter(([id, telling]) => wrong(telling, id))

  test('every picture has both texts, in the order of the files', () => {
    expect(ids.length).toBeGreaterThan(140)
    expect([...told.keys()]).toEqual(ids)
    expect(where(telling => !telling.short || !telling.long)).toEqual([])
    for (const [, telling] of all) expect(Object.keys(telling)).toEqual(['short', 'long'])
  })

  test('no two pictures are said to be the same', () => {
    for (const part of ['short', 'long'] as const) {
      expect(new Set(all.map(([, telling]) => telling[part].toLowerCase())).size).toBe(told.size)
    }
  })

  test('the short text is a few words without a full stop', () => {
    const wordsIn = (text: string) => text.split(/\s+/).length
    expect(where(({ short }) => wordsIn(short) < 3 || wordsIn(short) > 12)).toEqual([])
    expect(where(({ short }) => short.length > LONGEST_SHORT)).toEqual([])
    expect(where(({ short }) => /[.!?]$/.test(short))).toEqual([])
  })

  test('the long text says more, in one to three sentences', () => {
    expect(where(({ short, long }) => long.length <= short.length)).toEqual([])
    expect(where(({ long }) => sentences(long).length > 3 || !long.endsWith('.'))).toEqual([])
  })

  test('a text tells what is seen, and neither what it is nor what to do', () => {
    expect(where(({ short, long }) => words.never.test(`${short}\n${long}`))).toEqual([])
    const orders = ({ short, long }: Told) =>
      [short, ...sentences(long)].some(sentence => words.orders.test(sentence))
    expect(where(orders)).toEqual([])
  })

  test('the long text tells from where a thing is seen', () => {
    const seen = where((_, id) => !SIGNS.has(id) && !FLAT.test(id))
    expect(seen.length).toBeGreaterThan(130)
    expect(seen.filter(([, { long }]) => !words.seen.test(long))).toEqual([])
  })

  test('hair that is drawn is told, and no light is told that is not drawn', () => {
    const hairy = where((_, id) => HAIR.test(drawn(id)))
    expect(hairy.length).toBeGreaterThan(10)
    expect(hairy.filter(([, { long }]) => !words.hair.test(long))).toEqual([])
    const shining = where(({ long }) => words.shine.test(long))
    expect(shining.length).toBeGreaterThan(40)
    expect(shining.filter(([id]) => !LIGHT.test(drawn(id)))).toEqual([])
  })

  test('what is told to be wet carries a light, and is not hair', () => {
    const wet = where(({ long }) => words.wet.test(long))
    expect(wet.length).toBeGreaterThan(30)
    expect(wet.filter(([id]) => !LIGHT.test(drawn(id)) || HAIR.test(drawn(id)))).toEqual([])
  })
})

describe('a text that says too much is seen', () => {
  test.each([
    ['en', 'never', 'This one is safe.'],
    ['en', 'never', 'Normal growth on tea'],
    ['en', 'never', 'White mold on tea'],
    ['en', 'orders', 'Compare it with a film.'],
    ['es', 'never', 'Así es seguro.'],
    ['es', 'never', 'Moho blanco sobre té'],
    ['es', 'orders', 'Mire de lado.']
  ] as const)('%s, %s: %s', (tag, rule, text) => {
    expect(LANGUAGES[tag][rule].test(text)).toBe(true)
  })
})
