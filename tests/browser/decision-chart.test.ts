import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { afterAll, expect, test } from 'vitest'
import { textWidth } from '../../src/paper/text-width.ts'
import { runCommand } from '../cli/run-command.ts'
import { useVisits } from './visit.ts'

const visit = useVisits()
const folder = mkdtempSync(join(tmpdir(), 'jarside-charts-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

test('a chart is printed on its paper in 9 points or more, no text wider than it was reckoned', async () => {
  const name = 'outside-this-tool-chart-es-letter'
  const { code, output } = await runCommand([
    ...['handout', 'outside-this-tool', '--sheet', 'chart', '--lang', 'es', '--out', folder]
  ])
  expect({ code, output }).toEqual({ code: 0, output: `${name}.pdf  ${name}.html  ${name}.svg\n` })
  expect(readFileSync(join(folder, 'index.html'), 'utf8')).toContain(`href="${name}.svg"`)

  // Of the drawing by itself: it has its typefaces with it.
  const { page } = await visit()
  await page.goto(pathToFileURL(join(folder, `${name}.svg`)).href)
  const lines = await page.evaluate(async () => {
    await document.fonts.ready
    const pages = [...document.querySelectorAll('.decision-page')]
    return pages.flatMap(drawing =>
      [...drawing.querySelectorAll('text')].map(text => ({
        tag: drawing.getAttribute('lang') ?? '',
        text: text.textContent,
        size: Number(text.getAttribute('font-size')),
        bold: text.getAttribute('font-weight') === '700',
        width: text.getComputedTextLength()
      }))
    )
  })
  expect(lines.length).toBeGreaterThan(300)
  const wider = lines.filter(
    ({ tag, text, size, bold, width }) => width > textWidth(text, { size, bold }, tag) + 0.1
  )
  expect(wider).toEqual([])
  // Nor is room given away: together they take nearly what was reckoned.
  const sum = (widths: readonly number[]) => widths.reduce((all, width) => all + width, 0)
  const reckoned = sum(
    lines.map(({ tag, text, size, bold }) => textWidth(text, { size, bold }, tag))
  )
  expect(sum(lines.map(({ width }) => width)) / reckoned).toBeGreaterThan(0.93)

  const bytes = new Uint8Array(readFileSync(join(folder, `${name}.pdf`)))
  const pdf = await getDocument({ data: bytes, verbosity: 0 }).promise
  const svg = readFileSync(join(folder, `${name}.svg`), 'utf8')
  expect(pdf.numPages).toBe(svg.match(/class="decision-page"/g)?.length)
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const side = await pdf.getPage(number)
    expect(side.view.slice(2).map(Math.round)).toEqual([612, 792])
    const { items } = await side.getTextContent()
    const sizes = items.flatMap(item =>
      'str' in item && item.str.trim() !== ''
        ? [Math.hypot(item.transform[2], item.transform[3])]
        : []
    )
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(8.99)
  }
})
