import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { beforeAll, describe, expect, test } from 'vitest'
import { validateXML } from 'xmllint-wasm'
import { type ExchangeText, UnreadableExchange } from '../../src/exchange/exchange-text.ts'
import { textsToGive } from '../../src/exchange/given-texts.ts'
import { partsOf } from '../../src/exchange/inline.ts'
import { readXliff } from '../../src/exchange/read-xliff.ts'
import { readSheet, sheetOf } from '../../src/exchange/sheet.ts'
import { xliffOf } from '../../src/exchange/write-xliff.ts'
import { loadShipped } from '../helpers/shipped.ts'

const IN_SPANISH = { from: 'en', to: 'es', rightToLeft: false }
const there = (texts: readonly ExchangeText[]) => ({
  xliff: readXliff(xliffOf(texts, IN_SPANISH), 'es'),
  csv: readSheet(sheetOf(texts, 'en', 'es'), 'en', 'es')
})
const back = (texts: readonly ExchangeText[]) =>
  texts.map(({ id, english, target, from }) => ({ id, english, target, from }))

const text = (english: string, target: string | null, more: Partial<ExchangeText> = {}) => ({
  id: 'steps:one',
  kind: 'action' as const,
  note: null,
  most: null,
  state: 'draft' as const,
  from: '0123456789abcdef',
  english,
  target,
  ...more
})

/** Whatever the XSD of XLIFF 2.0 (OASIS) has against a document; 2.1 has the same core. */
async function schemaFaults(document: string): Promise<readonly string[]> {
  const file = (fileName: string) => ({
    fileName,
    contents: readFileSync(`tests/exchange/schema/${fileName.split('/').at(-1)}`, 'utf8')
  })
  const { errors } = await validateXML({
    xml: [{ fileName: 'given.xlf', contents: document }],
    schema: [file('xliff-core-2.0.xsd')],
    preload: [file('informativeCopiesOf3rdPartySchemas/w3c/xml.xsd')],
    initialMemoryPages: 512,
    maxMemoryPages: 4096
  })
  return errors.map(({ message }) => message)
}

let given: readonly ExchangeText[] = []
beforeAll(async () => {
  const { words, translations, translatorNotes } = await loadShipped()
  const parts = { english: words.en ?? {}, translated: translations.es ?? [] }
  given = await textsToGive({ ...parts, notes: translatorNotes }, 'es')
})

/** Signs that a format may lose (no half of a pair: no file in UTF-8 can hold one): quotes, ends of lines, formulas, markup, other scripts, what XML has no place for. */
const AWKWARD = [
  ...['"', '""', "'", "'=", "''+", ',', ';', '\t', '\r', '\n', '\r\n', '=', '+', '-', '@', '＝'],
  ...[
    '<',
    '>',
    '&',
    '&amp;',
    ']]>',
    '<!--',
    '<ph/>',
    '{{day}}',
    '{{',
    '}}',
    '{',
    '}',
    '\\',
    '\u0000'
  ],
  ...['\u001b', '\u0085', '\u2028', '\ufeff', '\ufffe', '😀', 'é', 'e\u0301', 'ñ', '¿'],
  ...[
    '\u202e',
    '\u2067',
    'العربية',
    '发酵',
    '555-0110',
    '1-800-222-1222',
    'https://example.org/a?b=1&c=2'
  ],
  ...[' ', '  ', '\u00a0', '\u200b', 'Day', '3.5', '%', '°F']
]
const anyText = fc.oneof(
  fc.array(fc.constantFrom(...AWKWARD), { minLength: 1, maxLength: 12 }).map(all => all.join('')),
  fc.string({ unit: 'binary', minLength: 1, maxLength: 40 })
)

describe('what is given out comes back', () => {
  test('every shipped text, in both formats', () => {
    expect(given.length).toBeGreaterThan(4_000)
    expect(there(given).xliff).toEqual(back(given))
    expect(there(given).csv).toEqual(back(given))
  })

  test('any text, whatever stands in it', () => {
    fc.assert(
      fc.property(anyText, fc.option(anyText), anyText, (english, target, note) => {
        const texts = [text(english, target, { note })]
        expect(there(texts).xliff).toEqual(back(texts))
        expect(there(texts).csv).toEqual(back(texts))
      }),
      { numRuns: 2_000 }
    )
  })

  test('a text is its parts, put together', () => {
    fc.assert(
      fc.property(anyText, whole => {
        const parts = partsOf(whole)
        expect(parts.map(part => (typeof part === 'string' ? part : part.text)).join('')).toBe(
          whole
        )
      })
    )
  })
})

describe('the XLIFF', () => {
  test('is valid, every shipped text of it', async () => {
    const document = xliffOf(given, IN_SPANISH)
    expect(document).toContain('version="2.1"')
    expect(await schemaFaults(document)).toEqual([])
    // The schema does find something.
    expect(await schemaFaults(document.replace('state="translated"', 'state="done"'))).not.toEqual(
      []
    )
  })

  test('is valid with what XML has no place for, and from right to left', async () => {
    const texts = [
      text('a\u0000{{day}}<&>', 'b\u001b{{day}} {{day}}', { note: 'n\u0001', most: 5 })
    ]
    const document = xliffOf(texts, { from: 'en', to: 'ar', rightToLeft: true })
    expect(document).toContain('trgDir="rtl"')
    expect(await schemaFaults(document)).toEqual([])
  })

  test('lets nobody edit gaps, links and phone numbers', () => {
    const parts = partsOf(
      'Call 1-800-222-1222 or {{name}} (555-0110), https://example.org/x. Day 3.'
    )
    expect(parts).toEqual([
      'Call ',
      { is: 'phone', text: '1-800-222-1222' },
      ' or ',
      { is: 'gap', text: '{{name}}' },
      ' (',
      { is: 'phone', text: '555-0110' },
      '), ',
      { is: 'link', text: 'https://example.org/x' },
      '. Day 3.'
    ])
    const document = xliffOf([text('Call {{name}} now.', null)], IN_SPANISH)
    expect(document).toContain('Call <ph id="d1.1" canDelete="no" canCopy="no" dataRef="d1"')
    expect(document).toContain('<data id="d1">{{name}}</data>')
  })

  test('carries kind, note, limit and state, which are hints', () => {
    const document = xliffOf(
      [text('Day', 'Día', { note: 'A day of a ferment.', most: 4, state: 'stale' })],
      IN_SPANISH
    )
    for (const part of ['>action<', '>A day of a ferment.<', '>At most 4 words.<', '>stale<']) {
      expect(document).toContain(part)
    }
    expect(document).toContain('<segment state="initial">')
  })

  test('is read when a program split its segments, marked words, and dropped the data', () => {
    const document = `<?xml version="1.0"?><xliff xmlns="urn:oasis:names:tc:xliff:document:2.0"
      version="2.0" srcLang="en" trgLang="es"><file id="steps"><group id="g"><unit id="one">
      <segment state="final"><source>Keep <mrk id="m" type="term">it</mrk>.</source>
        <target order="3">Guárdela el día <ph id="1" equiv="{{day}}"/>.</target></segment>
      <ignorable><source> </source></ignorable>
      <segment><source>Day <ph id="1" equiv="{{day}}"/>.</source>
        <target order="1"><pc id="p">Sí</pc>.</target></segment></unit></group></file></xliff>`
    expect(readXliff(document, 'es')).toEqual([
      {
        id: 'steps:one',
        english: 'Keep it. Day {{day}}.',
        target: 'Sí. Guárdela el día {{day}}.',
        from: null
      }
    ])
  })

  test.each([
    ['<xliff', 'Line 1, column '],
    ['<html/>', 'This is no XLIFF 2 file.'],
    ['', 'Line 1, column 1'],
    [xliffOf([text('a', 'b')], { ...IN_SPANISH, to: 'fr' }), 'This file is in `fr`.'],
    [
      xliffOf([text('a {{b}}', 'c {{b}}')], IN_SPANISH).replace(/ (?:dataRef|equiv)="[^"]*"/g, ''),
      '`steps:one` holds a `<ph>` that stands for nothing here.'
    ]
  ])('%.20s is refused with the place', (document, why) => {
    expect(() => readXliff(document, 'es')).toThrow(UnreadableExchange)
    expect(() => readXliff(document, 'es')).toThrow(why)
  })
})

describe('the spreadsheet', () => {
  test('holds no cell that a spreadsheet would reckon', () => {
    fc.assert(
      fc.property(anyText, anyText, (english, target) => {
        const sheet = sheetOf([text(english, target, { note: '=1+1' })], 'en', 'es')
        const cells = sheet.slice(1).match(/(?<=^|,|\r\n)(?:"(?:[^"]|"")*"|[^,"\r\n]*)/g) ?? []
        for (const cell of cells) expect(cell.replace(/^"/, '')).not.toMatch(/^[=+\-@\t\r＝]/)
      })
    )
  })

  test('is read with its columns moved, others beside them, and semicolons', () => {
    const sheet = 'es;mine;id;en\nDía;x;steps:one;Day\n'
    expect(readSheet(sheet, 'en', 'es')).toEqual([
      { id: 'steps:one', english: 'Day', target: 'Día', from: null }
    ])
  })

  test.each([
    ['id,en\nsteps:one,Day\n', 'the column `es` is missing'],
    ['id,en,es\nsteps:one,"Day,Día\n', 'Line ']
  ])('%j is refused with the place', (sheet, why) => {
    expect(() => readSheet(sheet, 'en', 'es')).toThrow(UnreadableExchange)
    expect(() => readSheet(sheet, 'en', 'es')).toThrow(why)
  })
})
