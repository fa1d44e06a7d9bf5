import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import starter from '../../locales/en/sourdough-starter.json' with { type: 'json' }
import steps from '../../locales/en/steps.json' with { type: 'json' }
import pasos from '../../locales/es/steps.json' with { type: 'json' }
import pack from '../../public/office.json' with { type: 'json' }
import { couldBeTogether } from '../../src/evaluate/could-be.ts'
import { runCommand } from '../cli/run-command.ts'
import { shippedTrees } from '../helpers/shipped.ts'
import { faintOn } from './faint.ts'
import { AS_SCANNED, photocopied, readCode } from './photocopy.ts'
import { useVisits } from './visit.ts'

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
  const sides = []
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const page = await pdf.getPage(number)
    const { items } = await page.getTextContent()
    const set = items.flatMap(item => ('str' in item && item.str.trim() !== '' ? [item] : []))
    const text = set.map(({ str }) => str).join(' ')
    sides.push({
      text: text.replace(/\s+/g, ' '),
      // In points: the text matrix scales the unit square of the type (ISO 32000-1, 9.4.4).
      smallest: Math.min(...set.map(({ transform }) => Math.hypot(transform[2], transform[3]))),
      structure: JSON.stringify(await page.getStructTree()),
      size: page.view.slice(2)
    })
  }
  return { sides, marked: (await pdf.getMarkInfo())?.Marked, title: await titleOf(pdf) }
}

async function titleOf(pdf: Awaited<ReturnType<typeof getDocument>['promise']>) {
  const { info } = await pdf.getMetadata()
  return 'Title' in info ? info.Title : undefined
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

  test('is a side of letter paper for each language, tagged with headings and lists', () => {
    expect(pdf.sides.length).toBe(2)
    expect(pdf.marked).toBe(true)
    expect(pdf.title).toContain('Probable moho')
    for (const { size, structure } of pdf.sides) {
      expect(size.map(Math.round)).toEqual(SIZES.letter)
      for (const role of ['H1', 'H2', 'L', 'LI', 'Figure']) {
        expect(structure).toContain(`"role":"${role}"`)
      }
    }
  })

  test('says what to do in Spanish in front, and the same in English overleaf', () => {
    const [front, back] = pdf.sides
    for (const step of ['solids-bagged-twice', 'do-not-sniff'] as const) {
      expect([step, front?.text.includes(pasos[step])]).toEqual([step, true])
      expect([step, front?.text.includes(steps[step])]).toEqual([step, false])
      expect([step, back?.text.includes(steps[step])]).toEqual([step, true])
    }
    expect(front?.text).toContain(pack['non-discrimination'].es)
    expect(back?.text).toContain(pack['non-discrimination'].en)
    expect(front?.text).toContain('Traducción no revisada: vale el otro lado, en inglés.')
  })

  test('written again is the same file, byte by byte', async () => {
    const first = readFileSync(join(folder, `${name}.pdf`))
    rmSync(join(folder, `${name}.pdf`))
    await handout('--verdict', 'likely-mold', '--lang', 'es', '--paper', 'letter')
    expect(readFileSync(join(folder, `${name}.pdf`)).equals(first)).toBe(true)
  })

  test('carries the numbers that nothing replaces, and an address that the code repeats', async () => {
    const address = 'jarside.larkspur.example/#/es/kombucha-jar/likely-mold'
    for (const { text } of pdf.sides) {
      expect(text).toContain('911')
      expect(text).toContain('1-800-222-1222')
    }
    expect(pdf.sides[0]?.text).toContain(address)
    const { page } = await visit(AS_SCANNED)
    await page.goto(pathToFileURL(join(folder, `${name}.html`)).href)
    const code = page.locator('.qr').first()
    // Millimeters, of 96 CSS pixels to the inch: common practice prints a code in 25 or more.
    expect(((await code.boundingBox())?.width ?? 0) * (25.4 / 96)).toBeGreaterThanOrEqual(25)
    const scanned = await code.screenshot()
    expect(readCode(scanned)).toBe(`https://${address}`)
    expect(readCode(photocopied(photocopied(scanned)))).toBe(`https://${address}`)
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

describe('every side is one page, in 12 points or more', () => {
  /** The verdicts with the most to say, which leave the least room. */
  const FULLEST = ['likely-mold', 'discard-and-sanitize', 'doctor-today', 'poison-help']

  /**
   * Sheets that take a second page, and why. Nobody looked at a jar: what is done with a jar and with
   * closed bottles both stand on them.
   */
  const LONGER = [
    'milk-and-water-kefir-discard-and-sanitize-es',
    'milk-and-water-kefir-likely-mold-es',
    'wild-sodas-discard-and-sanitize-es',
    'wild-sodas-likely-mold-es'
  ]

  // Of a translation the English is on the other side: each file holds both. A4 has less width and more
  // height, which two trees are enough to show.
  test.each([
    ['letter', () => true],
    ['a4', (id: string) => id === 'kombucha-jar' || id === 'brined-vegetables']
  ] as const)('on %s, of every tree, where it is fullest', async (paper, isLookedAt) => {
    for (const tree of (await shippedTrees()).filter(({ id }) => isLookedAt(id))) {
      const verdicts = FULLEST.filter(id => couldBeTogether(tree, [id]))
      const languages = ['es']
      await runCommand([
        ...['handout', tree.id, '--out', folder, '--paper', paper],
        ...verdicts.flatMap(id => ['--verdict', id]),
        ...languages.flatMap(tag => ['--lang', tag])
      ])
      for (const verdict of verdicts) {
        for (const language of languages) {
          const name = `${tree.id}-${verdict}-${language}`
          const { sides, marked } = await readPdf(`${name}-${paper}`)
          const is = { name, onePage: sides.length === 2, marked }
          expect(is).toEqual({ name, onePage: !LONGER.includes(name), marked: true })
          for (const { size, smallest } of sides) {
            expect([name, Math.min(smallest, 11.99)]).toEqual([name, 11.99])
            // Chromium rounds A4 to whole pixels of 1/96 inch.
            for (const side of [0, 1] as const) {
              expect(Math.abs((size[side] ?? 0) - SIZES[paper][side])).toBeLessThan(1.5)
            }
          }
        }
      }
    }
  })
})

describe('the other sheets', () => {
  test('of every tree are one page for each language, and the key says where every lead comes from', async () => {
    const { code, output } = await runCommand([
      ...['handout', '--all', '--out', folder],
      ...['--sheet', 'look-alikes', '--sheet', 'batch', '--sheet', 'class']
    ])
    expect(code).toBe(0)
    const names = output
      .trim()
      .split('\n')
      .map(line => line.split('.')[0] ?? '')
    for (const kind of ['-look-alikes-', '-batch-', '-class-']) {
      expect([kind, names.some(name => name.includes(kind))]).toEqual([kind, true])
    }
    for (const name of names) {
      const { sides, marked } = await readPdf(name)
      const pages = name.includes('-en-') ? 1 : 2
      expect({ name, pages: sides.length, marked }).toEqual({ name, pages, marked: true })
      for (const { smallest } of sides) expect(Math.min(smallest, 11.99)).toBe(11.99)
    }
  })

  test('the key has every lead with its number, and where each comes from', async () => {
    await runCommand(['handout', 'sourdough-starter', '--sheet', 'key', '--out', folder])
    const { page } = await visit()
    const file = join(folder, 'sourdough-starter-key-en-letter.html')
    await page.goto(pathToFileURL(file).href)
    expect(await page.evaluate(faintOn)).toEqual([])
    const numbers = await page.locator('.lead-number').allTextContents()
    expect(numbers).toEqual(numbers.map((_, index) => `${index + 1}`))
    expect(numbers.length).toBeGreaterThan(30)
    expect(await page.locator('.lead-from').count()).toBe(numbers.length - 1)
    const { sides } = await readPdf('sourdough-starter-key-en-letter')
    for (const { smallest } of sides) expect(Math.min(smallest, 11.99)).toBe(11.99)
    // This ferment asks who had some in words of its own.
    const own = starter.observations.drinkers.signs['at-risk-drank'].label
    expect(sides.map(({ text }) => text).join(' ')).toContain(own)
  })
})

test('nothing on a sheet needs a color or a light gray to be read', async () => {
  const verdicts = ['likely-mold', 'poison-help', 'pressure-hazard']
  const kinds = ['batch', 'look-alikes', 'class']
  const { code } = await handout(
    ...['verdict', ...kinds].flatMap(kind => ['--sheet', kind]),
    ...verdicts.flatMap(id => ['--verdict', id])
  )
  expect(code).toBe(0)
  const { page } = await visit()
  for (const about of [...verdicts, ...kinds]) {
    await page.goto(pathToFileURL(join(folder, `kombucha-jar-${about}-en-letter.html`)).href)
    await page.emulateMedia({ media: 'print' })
    expect([about, await page.evaluate(faintOn)]).toEqual([about, []])
  }
})

test('in large print nothing is smaller than 18 points, and all of it is there', async () => {
  await handout('--verdict', 'likely-mold', '--large')
  const { sides } = await readPdf('kombucha-jar-likely-mold-en-letter-large')
  expect(sides.length).toBeGreaterThan(1)
  for (const { smallest } of sides) expect(smallest).toBeGreaterThanOrEqual(17.99)
  const whole = sides.map(({ text }) => text).join(' ')
  expect(whole).toContain(steps['drain-and-air-dry'])
  expect(whole).toContain('Start again')
})
