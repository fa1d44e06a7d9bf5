import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { JARS } from '../helpers/jars.mjs'
import { axeFaults } from './axe.ts'
import { play } from './play.ts'
import { toPrint } from './to-print.ts'
import { useVisits } from './visit.ts'

const visit = useVisits()
const outcomes = Object.entries(JARS).filter(([name]) => name !== 'emergency')

/** A page's PDF as a printer would get it, and how many sides it takes. */
async function sides(page: Page, format: 'Letter' | 'A4'): Promise<number> {
  const pdf = await page.pdf({ format, preferCSSPageSize: true })
  // One page object for each side (ISO 32000-1, 7.7.3.3); Chromium writes them uncompressed.
  return pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0
}

describe('printed from the screen the outcome', () => {
  /** What has so much to do that it takes a second page in Spanish. */
  const LONGER = ['somebody-ill']

  test.each(outcomes)('of %s takes one side for each language', async (name, jar) => {
    const { page } = await visit()
    await play(page, jar)
    expect(await sides(page, 'Letter')).toBe(1)
    await page.locator('[data-language="es"]').click()
    await page.locator('.outcome [lang="en"]').first().waitFor()
    const both = LONGER.includes(name) ? 3 : 2
    expect(await sides(page, 'Letter')).toBe(both)
    expect(await sides(page, 'A4')).toBe(both)
  })

  test('with more notes than a side holds goes on overleaf, and nothing is cut', async () => {
    const { page } = await visit()
    await play(page, {
      'people-signs': ['illness-signs', 'swallowed-cleaner'],
      drinkers: ['someone-drank', 'at-risk-drank'],
      'container-signs': ['cracked-glass', 'tight-lid'],
      'jar-signs': [
        ...['mold-removed', 'insects-inside', 'lead-risk-vessel'],
        ...['continuous-vessel', 'flies-outside', 'late-acid']
      ],
      'lead-signs': ['signs-of-lead'],
      'surface-texture': 'dry-fuzzy'
    })
    expect(await sides(page, 'Letter')).toBe(2)
    await toPrint(page)
    const cut = await page.locator('.sheet').evaluate(sheet => {
      sheet.setAttribute('data-fitting', '')
      const columns = sheet.querySelector('.sheet-columns') as HTMLElement
      const over = columns.scrollWidth - columns.clientWidth
      sheet.removeAttribute('data-fitting')
      return over
    })
    expect(cut).toBeLessThanOrEqual(1)
  })
})

describe('the sheet', () => {
  test('is black on white, whatever the screen', async () => {
    const { page } = await visit({ colorScheme: 'dark' })
    await play(page, JARS['white-fuzz'] ?? {})
    await toPrint(page)
    const colors = await page.locator('.sheet *').evaluateAll(all => {
      const used = all.flatMap(one => {
        const { color, backgroundColor } = getComputedStyle(one)
        return [color, backgroundColor]
      })
      return [...new Set(used)]
    })
    const gray = colors.filter(color => {
      const [red, green, blue] = color.match(/\d+/g) ?? []
      return red === green && green === blue
    })
    expect(colors).toEqual(gray)
    expect(await page.locator('.screen').isVisible()).toBe(false)
  })

  test('has patterns of its own: those of the hidden screen would leave its edges blank', async () => {
    const { page } = await visit()
    await play(page, JARS['somebody-ill'] ?? {})
    await toPrint(page)
    const ids = await page.locator('pattern').evaluateAll(all => all.map(({ id }) => id))
    expect(ids.length).toBeGreaterThan(1)
    expect(new Set(ids).size).toBe(ids.length)
  })

  test('is not there on a screen, neither before it is printed nor after', async () => {
    const { page } = await visit()
    await play(page, JARS['white-fuzz'] ?? {})
    expect(await page.locator('.sheet').count()).toBe(0)
    await sides(page, 'Letter')
    expect(await page.locator('.sheet').count()).toBe(0)
  })
})

describe('before it is printed', () => {
  const opened = async () => {
    const visited = await visit()
    await play(visited.page, JARS['white-fuzz'] ?? {})
    await visited.page.getByRole('button', { name: 'Print this sheet' }).click()
    const preview = visited.page.getByRole('dialog', { name: 'Print preview' })
    await preview.locator('.sheet').waitFor()
    return { ...visited, preview }
  }

  test('the preview shows what the printer gets, and axe finds nothing', async () => {
    const { page, preview } = await opened()
    expect(await axeFaults(page)).toEqual([])
    const shown = await preview.locator('.sheet').allInnerTexts()
    expect(shown.join()).toMatch(/likely mold/i)
    const size = await preview.locator('.sheet').evaluate(one => one.style.cssText)
    await preview.getByRole('button', { name: 'Close' }).click()
    await toPrint(page)
    const side = page.locator('.sheet')
    expect(await side.allInnerTexts()).toEqual(shown)
    expect(await side.evaluate(one => one.style.cssText)).toBe(size)
  })

  test('paper and size of type are chosen there, and hold for the printer', async () => {
    const { page, preview } = await opened()
    await preview.getByLabel('A4').check()
    await preview.getByLabel('Large').check()
    await page.keyboard.press('Escape')
    await page.locator('.preview').waitFor({ state: 'detached' })
    expect(await sides(page, 'Letter')).toBeGreaterThan(1)
    const pdf = await page.pdf({ preferCSSPageSize: true })
    // ISO 216 A4 in points; Chromium rounds to whole pixels of 1/96 inch.
    const box = /\/MediaBox\s*\[0 0 ([\d.]+) ([\d.]+)\]/.exec(pdf.toString('latin1'))
    expect(Math.abs(Number(box?.[1]) - 595.28)).toBeLessThan(1.5)
    await toPrint(page)
    const type = await page.locator('.sheet').evaluate(one => getComputedStyle(one).fontSize)
    expect(Number.parseFloat(type)).toBeGreaterThanOrEqual(24)
  })

  test('other sheets are fetched for it alone, and printed as they are shown there', async () => {
    const { page, requests } = await visit()
    await play(page, JARS['white-fuzz'] ?? {})
    const isTheirs = (url: string) => url.includes('/other-sheets-')
    expect(requests.filter(isTheirs)).toEqual([])
    await page.getByRole('button', { name: 'Print this sheet' }).click()
    const preview = page.getByRole('dialog', { name: 'Print preview' })
    await preview.getByLabel('What to do').uncheck()
    expect(requests.filter(isTheirs)).not.toEqual([])
    expect(await preview.getByRole('button', { name: 'Print' }).isDisabled()).toBe(true)
    for (const name of ['Batch record', 'What gets mixed up', 'For the class']) {
      await preview.getByLabel(name).check()
    }
    expect(await axeFaults(page)).toEqual([])
    const shown = await preview.locator('.preview-paper > *').allInnerTexts()
    await preview.getByRole('button', { name: 'Close' }).click()
    await toPrint(page)
    expect(await page.locator('.sheet-place > *').allInnerTexts()).toEqual(shown)
    expect(await sides(page, 'Letter')).toBe(3)
  })

  test('a key opens and closes it, and the focus is back where it was', async () => {
    const { page } = await opened()
    await page.keyboard.press('Escape')
    await page.locator('.preview').waitFor({ state: 'detached' })
    const focused = await page.evaluate(() => document.activeElement?.textContent)
    expect(focused).toBe('Print this sheet')
    expect(await page.locator('.sheet').count()).toBe(0)
  })
})
