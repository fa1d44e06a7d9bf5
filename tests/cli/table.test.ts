import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { csvOf } from '../../src/tables/csv.ts'
import { runCommand } from './run-command.ts'

const table = (...args: readonly string[]) => runCommand(['table', 'kombucha-jar', ...args])

describe('jarside table writes what was asked for', () => {
  test('one table as CSV is printed, in words, with its sources', async () => {
    const { code, output, errors } = await table('--format', 'csv', '--only', 'container')
    expect({ code, errors }).toEqual({ code: 0, errors: '' })
    const [heads, ...rows] = read(output)
    expect(heads?.slice(-4)).toEqual([
      'Lid and glass: Lid shuts airtight',
      'Then',
      'Rests on',
      'Kombucha in an open jar'
    ])
    expect(rows).toHaveLength(11)
    expect(rows.map(row => row.length)).toEqual(rows.map(() => heads?.length))
    expect(new Set(rows.map(row => row.at(-3)))).toEqual(
      new Set(['May burst', 'Possible pressure', 'nothing'])
    )
    for (const row of rows) expect(row.at(-1)).toContain('For answers without an emergency.')
    for (const row of rows) expect(row.at(-1)).toContain('Draft: not yet reviewed by a specialist')
  })

  test('a byte order mark stands before a CSV only on request', async () => {
    const plain = await table('--format', 'csv', '--only', 'container')
    const marked = await table('--format', 'csv', '--only', 'container', '--bom')
    expect(plain.output.startsWith('\uFEFF')).toBe(false)
    expect(marked.output).toBe(`\uFEFF${plain.output}`)
  })

  test('every cell has words in every language, and no id shows through', async () => {
    for (const lang of ['en', 'es']) {
      const wanted = ['--only', 'film-without-acid', '--only', 'container', '--lang', lang]
      const { code, output } = await table('--format', 'html', ...wanted)
      expect(code).toBe(0)
      expect(output).toContain(`<html lang="${lang}"`)
      const shown = output.replace(/<style>.*?<\/style>/s, '').replace(/<[^>]*>/g, '\n')
      expect(shown).not.toMatch(/surface-texture|pressure-hazard|film-without-acid|ui:|table\./)
    }
    const { output } = await table('--format', 'csv', '--only', 'container', '--lang', 'es')
    expect(output).toContain('Borrador')
    expect(output).toContain('no lo sé')
  })

  test('a page is tables with heads, sources and numbers to call, and no script', async () => {
    const { output } = await table('--format', 'html', '--only', 'person', '--only', 'container')
    expect(output.match(/<h1>/g)).toHaveLength(1)
    // The person's comes in parts: long tables do.
    expect(output.match(/<table /g)?.length).toBeGreaterThan(1)
    expect(output.match(/<th(?![^>]*scope=)[ >]/g)).toBeNull()
    expect(output).toMatch(/<th scope="colgroup" colspan="5">Lid and glass<\/th>/)
    expect(output).toContain('Emergencies are in this table.')
    expect(output).toContain('911')
    expect(output).toContain('1-800-222-1222')
    expect(output).not.toMatch(/<script|<link|src=|https?:\/\/[^<]*\.(?:css|js)/)
    const cited = [...output.matchAll(/<li id="source-(\d+)">/g)].map(match => Number(match[1]))
    const named = [...output.matchAll(/<td>([\d, ]+)<\/td><\/tr>/g)].flatMap(match =>
      (match[1] ?? '').split(', ').map(Number)
    )
    expect(named.length).toBeGreaterThan(100)
    expect([...new Set(named)].every(number => cited.includes(number))).toBe(true)
  })

  test('into a folder goes a file for each table, long ones in parts', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'jarside-table-'))
    try {
      // Of a tree whose tables are made within seconds; one of them is long enough to be split.
      const vinegar = (...args: readonly string[]) =>
        runCommand(['table', 'vinegar-mother', ...args, '--out', folder])
      const only = ['--only', 'use', '--only', 'container']
      const { code, output } = await vinegar('--format', 'csv', ...only)
      expect(code).toBe(0)
      const files = readdirSync(folder).sort()
      expect(files).toContain('vinegar-mother-container-en.csv')
      expect(files).toContain('vinegar-mother-use-1-en.csv')
      expect(output.trim().split('\n')).toHaveLength(files.length)
      const lengths = files.map(file => read(readFileSync(join(folder, file), 'utf8')).length)
      expect(Math.max(...lengths)).toBeLessThanOrEqual(501)
      const dmn = await vinegar('--format', 'dmn', ...only)
      expect(dmn.output).toMatch(/^vinegar-mother-container\.dmn {2}\d+ rows$/m)
      const text = readFileSync(join(folder, 'vinegar-mother-use.dmn'), 'utf8')
      expect(text.match(/<decision /g)).toHaveLength(files.length - 1)
    } finally {
      rmSync(folder, { recursive: true })
    }
  })
})

describe('jarside table refuses what it cannot write, and says what it can', () => {
  test.each([
    [[], 'Say in which format: `--format dmn|csv|html`.'],
    [['--format', 'xls'], 'There is no format `xls`: `--format dmn|csv|html`.'],
    [
      ['--format', 'csv', '--lang', 'fr'],
      'There are no words in `fr`. Did you mean `ar`? Languages: ar, en, es, vi, zh.'
    ],
    [['--format', 'html', '--bom'], '`--bom` goes with `--format csv`.'],
    [
      ['--format', 'dmn', '--lang', 'es'],
      'A DMN document holds ids, not words: leave `--lang` out.'
    ],
    [
      ['--format', 'dmn', '--only', 'person', '--only', 'container'],
      'That is more than one file: give `--out <folder>`, or `--only <table>` for one of them.'
    ]
  ])('%j', async (args, sentence) => {
    const { code, errors, output } = await table(...args)
    expect({ code, errors, output }).toEqual({ code: 2, errors: `${sentence}\n`, output: '' })
  })

  test('a table that the tree does not have, with the nearest one', async () => {
    const { code, errors } = await table('--format', 'csv', '--only', 'contaner')
    expect(code).toBe(2)
    expect(errors).toMatch(/has no table `contaner`\. Did you mean `container`\? Tables: person, /)
  })
})

describe('a cell of a CSV is text and nothing else', () => {
  test('what a spreadsheet would run is put behind an apostrophe', () => {
    const signs = ['=1+1', '+1', '-1', '@sum', '\tx', '\rx', 'a=1', '1-2', ' =1']
    const [row] = read(csvOf([signs]))
    expect(row).toEqual([...["'=1+1", "'+1", "'-1", "'@sum", "'\tx", "'\rx", 'a=1', '1-2', ' =1']])
  })

  test('commas, quotes and line ends come back as they were', () => {
    const rows = [
      ['a, b', 'say "no"', 'two\nlines'],
      ['', '"', ',\r\n,']
    ]
    expect(read(csvOf(rows))).toEqual(rows)
  })
})

/** A reader of RFC 4180 of its own: it knows nothing of how the rows were written. */
function read(text: string): string[][] {
  const rows: string[][] = []
  let row: string[] = []
  let at = 0
  while (at < text.length) {
    let field = ''
    if (text[at] === '"') {
      at++
      for (;;) {
        if (at >= text.length) throw new Error('a quote is never closed')
        if (text[at] === '"' && text[at + 1] !== '"') break
        if (text[at] === '"') at++
        field += text[at++]
      }
      at++
    } else {
      while (at < text.length && text[at] !== ',' && text[at] !== '\r') field += text[at++]
      if (field.includes('"')) throw new Error('a quote stands in a bare field')
    }
    row.push(field)
    if (text[at] === ',') {
      at++
      // A line that ends with a comma has one more field, and that is empty.
      if (text[at] === '\r') row.push('')
      else continue
    }
    if (text.slice(at, at + 2) !== '\r\n') throw new Error(`no line end at ${at}`)
    rows.push(row)
    row = []
    at += 2
  }
  return rows
}
