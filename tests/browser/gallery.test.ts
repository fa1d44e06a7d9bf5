import { readdirSync, readFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import type { Page } from 'playwright-core'
import { describe, expect, inject, test } from 'vitest'
import { axeFaults } from './axe.ts'
import { workerBrowser } from './worker-browser.ts'

const root = join(import.meta.dirname, '../..')
/** Files of `src/parts` that draw nothing themselves. */
const DRAWS_NOTHING = ['setting']

/** The list of sheets, on a page that remembers what the browser complained of. */
async function opened(colorScheme: 'light' | 'dark' = 'light') {
  const browser = await workerBrowser()
  const page = await browser.newPage({ colorScheme })
  const complaints: string[] = []
  page.on('pageerror', error => complaints.push(error.message))
  page.on('console', message => message.type() === 'error' && complaints.push(message.text()))
  await page.goto(`${inject('gallery')}gallery.html`)
  await page.waitForSelector('.gallery-list')
  const sheets = await page
    .locator('.gallery-list a')
    .evaluateAll(links => links.map(link => link.getAttribute('href') ?? ''))
  return { page, sheets, complaints }
}

async function turnTo(page: Page, sheet: string) {
  await page.evaluate(at => {
    location.hash = at
  }, sheet)
  await page.waitForFunction(
    id => document.querySelector('.gallery-moves')?.getAttribute('data-sheet') === id,
    sheet.slice(2)
  )
  // States that are staged by typing are drawn one frame later.
  await page.evaluate(() => new Promise(done => requestAnimationFrame(() => setTimeout(done))))
}

describe('the gallery shows every part of the page', () => {
  test('it lists each part by the name of its file', async () => {
    const { page } = await opened()
    const listed = await page
      .locator('[data-parts]')
      .evaluateAll(items => items.flatMap(item => item.getAttribute('data-parts')?.split(' ')))
    const parts = readdirSync(join(root, 'src/parts'))
      .filter(file => file.endsWith('.tsx'))
      .map(file => basename(file, '.tsx'))
      .filter(part => !DRAWS_NOTHING.includes(part))

    expect([...new Set(listed)]).toEqual(expect.arrayContaining(parts))
    await page.close()
  })

  test('no state of any part is left empty', async () => {
    const { page, sheets, complaints } = await opened()
    for (const sheet of sheets) {
      await turnTo(page, sheet)
      const empty = await page
        .locator('.specimen')
        .evaluateAll(all =>
          all
            .filter(one => one.textContent === '' && one.querySelector('svg, .picture') === null)
            .map(one => one.getAttribute('data-state'))
        )
      expect(empty, sheet).toEqual([])
    }
    expect(complaints).toEqual([])
    await page.close()
  })

  test('fourteen verdicts stand there with their edges', async () => {
    const { page } = await opened()
    await turnTo(page, '#/verdict-card')

    expect(await page.locator('.verdict').count()).toBe(14)
    expect(await page.locator('.verdict > .edge').count()).toBe(14)
    await page.close()
  })

  test('an unreadable measure is shown with its sentence', async () => {
    const { page } = await opened()
    await turnTo(page, '#/measure-answers/acidity-in-letters')

    await page.waitForSelector('.measure [aria-invalid="true"]')
    expect(await page.locator('.error').textContent()).toMatch(/digits/)
    await page.close()
  })

  test.each(['light', 'dark'] as const)('axe finds nothing on any sheet, %s', async scheme => {
    const { page, sheets } = await opened(scheme)
    const found: string[] = []
    for (const sheet of sheets) {
      await turnTo(page, sheet)
      found.push(...(await axeFaults(page, scheme)).map(one => `${sheet} ${one}`))
    }
    expect(found).toEqual([])
    await page.close()
  })
})

describe('the gallery is for development alone', () => {
  test('its page has the same content-security policy', async () => {
    const policy = (page: string) =>
      /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(page)?.[1]
    const published = policy(readFileSync(join(inject('built'), 'index.html'), 'utf8'))
    const gallery = await fetch(`${inject('gallery')}gallery.html`)

    expect(published).toMatch(/^default-src 'none'/)
    expect(policy(await gallery.text())).toBe(published)
  })

  test('nothing of it is in the page that is published', () => {
    const published = inject('built')
    const files = readdirSync(published, { recursive: true, encoding: 'utf8' })
    const texts = files
      .filter(file => /\.(html|js|css)$/.test(file))
      .map(file => readFileSync(join(published, file), 'utf8'))

    expect(files).toContain('index.html')
    expect(files.filter(file => file.includes('gallery'))).toEqual([])
    expect(texts.filter(text => text.includes('specimen') || text.includes('gallery'))).toEqual([])
  })
})
