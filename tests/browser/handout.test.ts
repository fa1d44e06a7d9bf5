import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import jsqr from 'jsqr'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { PNG } from 'pngjs'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import steps from '../../locales/en/steps.json' with { type: 'json' }
import pasos from '../../locales/es/steps.json' with { type: 'json' }
import { couldBeTogether } from '../../src/evaluate/could-be.ts'
import { runCommand } from '../cli/run-command.ts'
import { shippedTrees } from '../helpers/shipped.ts'
import { useVisits } from './visit.ts'

const [jar] = await shippedTrees()
if (jar === undefined) throw new Error('no tree is shipped')

const visit = useVisits()
const folder = mkdtempSync(join(tmpdir(), 'jarside-handouts-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** ISO 216 and ANSI/ASME Y14.1, in points of 1/72 inch. */
const SIZES = { letter: [612, 792], a4: [595.28, 841.89] } as const

const handout = (...args: readonly string[]) =>
  runCommand(['handout', 'kombucha-jar', '--out', folder, ...args])

/** A written PDF as another program reads it (pdfjs-dist). */
async function readPdf(name: string) {
  const bytes = new Uint8Array(readFileSync(join(folder, `${name}.pdf`)))
  const pdf = await getDocument({ data: bytes, verbosity: 0 }).promise
  const page = await pdf.getPage(1)
  const { items } = await page.getTextContent()
  const text = items.map(item => ('str' in item ? item.str : '')).join(' ')
  return {
    pages: pdf.numPages,
    marked: (await pdf.getMarkInfo())?.Marked,
    structure: JSON.stringify(await page.getStructTree()),
    size: page.view.slice(2),
    text: text.replace(/\s+/g, ' ')
  }
}

describe('the sheet for mold in Spanish', () => {
  const name = 'kombucha-jar-likely-mold-es-letter'
  let pdf: Awaited<ReturnType<typeof readPdf>>
  let ran: Awaited<ReturnType<typeof handout>>
  beforeAll(async () => {
    ran = await handout('--verdict', 'likely-mold', '--lang', 'es', '--paper', 'letter')
    pdf = await readPdf(name)
  })

  test('is written as PDF and HTML under a name that says what it is', () => {
    expect(ran).toEqual({ code: 0, errors: '', output: `${name}.pdf  ${name}.html\n` })
  })

  test('is one page of letter paper, tagged with headings and lists', () => {
    expect(pdf.pages).toBe(1)
    expect(pdf.size.map(Math.round)).toEqual(SIZES.letter)
    expect(pdf.marked).toBe(true)
    for (const role of ['H1', 'H2', 'L', 'LI', 'Figure']) {
      expect(pdf.structure).toContain(`"role":"${role}"`)
    }
  })

  test('says what to do in Spanish, with the English beside it', () => {
    for (const step of ['solids-bagged-twice', 'do-not-sniff'] as const) {
      expect([step, pdf.text.includes(pasos[step])]).toEqual([step, true])
      expect([step, pdf.text.includes(steps[step])]).toEqual([step, true])
    }
    expect(pdf.text).toContain('Traducción en borrador, no revisada')
  })

  test('carries the numbers that nothing replaces, and an address that the code repeats', async () => {
    const address = 'jarside.larkspur.example/#/es/kombucha-jar/likely-mold'
    expect(pdf.text).toContain('911')
    expect(pdf.text).toContain('1-800-222-1222')
    expect(pdf.text).toContain(address)
    const { page } = await visit()
    await page.goto(pathToFileURL(join(folder, `${name}.html`)).href)
    expect(readCode(await page.locator('.qr').screenshot())).toBe(`https://${address}`)
  })

  test('leads back to the same verdict in the same language', async () => {
    const { page } = await visit({}, { hash: '#/es/kombucha-jar/likely-mold' })
    await page.locator('.outcome').waitFor()
    expect(await page.locator('.outcome [data-verdict]').getAttribute('data-verdict')).toBe(
      'likely-mold'
    )
    // The page names its language once the outcome is drawn.
    await page.locator('html[lang="es"]').waitFor()
  })
})

/** A QR code as another program reads it (jsqr). */
function readCode(screenshot: Buffer): string | undefined {
  const { data, width, height } = PNG.sync.read(screenshot)
  return jsqr(new Uint8ClampedArray(data), width, height)?.data
}

describe('a sheet is one tagged page', () => {
  const given = jar.verdicts.filter(({ id }) => couldBeTogether(jar, [id]))
  /** The fullest sheets, which leave the least room. */
  const fullest = [
    '--verdict',
    'likely-mold',
    '--verdict',
    'poison-help',
    '--lang',
    'en',
    '--lang',
    'es'
  ]

  test.each([
    ['letter', 'of every verdict that it gives, in every language', ['--all'], given.length * 2],
    ['a4', 'where it is fullest', fullest, 2 * 2]
  ] as const)('on %s %s', async (paper, _, named, count) => {
    const { code, output } = await handout(...named, '--paper', paper)
    expect(code).toBe(0)
    const names = output
      .trim()
      .split('\n')
      .map(line => line.split('.')[0] ?? '')
    expect(names.length).toBe(count)
    for (const name of names) {
      const { pages, marked, size } = await readPdf(name)
      expect({ name, pages, marked }).toEqual({ name, pages: 1, marked: true })
      // Chromium rounds A4 to whole pixels of 1/96 inch.
      for (const side of [0, 1] as const) {
        expect(Math.abs((size[side] ?? 0) - SIZES[paper][side])).toBeLessThan(1.5)
      }
    }
  })
})
