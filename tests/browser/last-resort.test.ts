import type { Page } from 'playwright-core'
import { afterEach, beforeEach, describe, expect, inject, test } from 'vitest'
import { KIOSK, touchLanguage } from './kiosk.ts'
import { officeServer } from './kiosk-office-server.ts'
import { PAGES } from './pages.ts'
import { begin } from './play.ts'
import { useVisits } from './visit.ts'

const PLACES = PAGES.map(page => (page === 'index' ? '' : page))
const LAYER = '.last-resort'
const pageOf = (place: string) => (place === '' ? '' : `${place}.html`)

/** The layer is in sight, and says whom to call in both languages. */
async function expectNumbers(page: Page) {
  await page.locator(LAYER).waitFor()
  const text = await page.locator(LAYER).textContent()
  expect(text).toContain('911')
  expect(text).toContain('1-800-222-1222')
  expect(text).toContain('If anyone feels ill')
  expect(text).toContain('Si alguien se siente mal')
}

/** Every drawing put into the page from now on throws, in the middle of rendering. */
const breakDrawing = () => {
  Object.defineProperty(Element.prototype, 'innerHTML', {
    set() {
      throw new Error('no drawing can be shown')
    }
  })
}

describe('whom to call stands under every page', () => {
  const visit = useVisits()

  test.each(PLACES)('before any script: /%s', async place => {
    const { page } = await visit(
      { javaScriptEnabled: false },
      { hash: pageOf(place), shows: LAYER }
    )
    await expectNumbers(page)
    expect(await page.locator('h1').count()).toBe(0)
  })

  test.each(PLACES)('when no script can be had: /%s', async place => {
    const { page, faults } = await visit(
      {},
      {
        hash: pageOf(place),
        shows: LAYER,
        before: page => page.route(/\.js$/, route => route.abort())
      }
    )
    await page.waitForLoadState('load')
    await expectNumbers(page)
    expect(faults.splice(0).every(fault => fault.includes('ERR_FAILED'))).toBe(true)
  })

  test.each(PLACES.filter(place => place !== 'frame'))(
    'out of sight once a screen is there: /%s',
    async place => {
      const { page } = await visit({}, { hash: pageOf(place) })
      expect(await page.locator(LAYER).isVisible()).toBe(false)
    }
  )

  test.each(['', 'look-alikes'])('when the first screen throws: /%s', async place => {
    const { page, faults } = await visit(
      {},
      { hash: pageOf(place), shows: LAYER, before: page => page.addInitScript(breakDrawing) }
    )
    await page.waitForLoadState('networkidle')
    await expectNumbers(page)
    expect(await page.locator('#page > *').count()).toBe(0)
    expect(faults.splice(0).join()).toContain('no drawing can be shown')
  })

  test('when a later screen throws', async () => {
    const { page, faults } = await visit()
    await begin(page)
    await page.evaluate(breakDrawing)
    await page.locator('[data-answer="none"]').click()
    await expectNumbers(page)
    expect(faults.splice(0).join()).toContain('no drawing can be shown')
  })

  test('and the page is loaded anew, once, when its script is garbled', async () => {
    const opened = await visit(
      {},
      {
        shows: LAYER,
        before: page =>
          page.route(/\/index-[^/]*\.js$/, route =>
            route.fulfill({ contentType: 'text/javascript', body: '<p>Sign in' })
          )
      }
    )
    const { page, faults, requests } = opened
    await page.waitForFunction(() => history.state?.mended === true)
    await page.waitForLoadState('networkidle')
    await expectNumbers(page)
    expect(requests.filter(url => url === page.url())).toHaveLength(2)

    // A file that comes right afterwards is shown when somebody asks for it.
    await page.unroute(/\/index-[^/]*\.js$/)
    await page.locator('.last-resort-again').click()
    await page.locator('h1').waitFor()
    expect(await page.locator(LAYER).isVisible()).toBe(false)
    expect(faults.splice(0).join()).toContain('Unexpected token')
  })
})

describe('a kiosk mends itself', () => {
  const visit = useVisits()
  let server: Awaited<ReturnType<typeof officeServer>>

  beforeEach(async () => {
    server = await officeServer(inject('built'))
  })
  afterEach(() => server.switchOff())

  async function keptKiosk() {
    const opened = await visit({}, { ...KIOSK, before: page => page.clock.install() })
    await opened.page.goto(`${server.address}kiosk`)
    await isKept(opened.page)
    return opened
  }
  const isKept = (page: Page) =>
    page.locator('.start-edition', { hasText: /· Kept on this device/ }).waitFor()

  /** Spoils what the browser keeps of the files whose names begin so. */
  const garble = (page: Page, name: string) =>
    page.evaluate(async start => {
      for (const key of await caches.keys()) {
        const cache = await caches.open(key)
        for (const request of await cache.keys()) {
          if (!new URL(request.url).pathname.startsWith(start)) continue
          const headers = { 'content-type': 'text/javascript' }
          await cache.put(request, new Response('}}', { headers }))
        }
      }
    }, name)

  test('of a garbled script, as soon as there is a network, and until then shows the numbers', async () => {
    const { page, faults } = await keptKiosk()
    await garble(page, '/assets/kiosk-')
    server.setAway(true)
    await page.reload()
    await expectNumbers(page)
    expect(await page.locator('a[href^="tel:"]').count()).toBe(0)

    server.setAway(false)
    await page.clock.runFor(61_000)
    await page.locator('.start').waitFor()
    await isKept(page)
    expect(await page.locator(LAYER).isVisible()).toBe(false)
    faults.length = 0
  })

  test('of a tree that it kept badly, while it stands untouched', async () => {
    const { page, faults } = await keptKiosk()
    await garble(page, '/assets/kombucha-jar-')
    await page.reload()
    await isKept(page)
    await page.clock.runFor(61_000)
    await page.waitForFunction(() => history.state?.mended === true)
    await isKept(page)
    await touchLanguage(page)
    await begin(page)
    faults.length = 0
  })

  test('of a screen that throws: it begins anew, once for each visitor', async () => {
    const { page, faults } = await keptKiosk()
    await page.addInitScript(breakDrawing)
    await page.reload()
    let loads = 0
    page.on('load', () => {
      loads += 1
    })
    for (const visitor of [1, 2]) {
      await page.locator('.start [data-language="es"]').click()
      await page.waitForFunction(() => history.state?.mended === true)
      await expect.poll(() => loads, { timeout: 60_000 }).toBe(visitor)
      await page.locator('.start').waitFor()
      await isKept(page)
    }
    expect(faults.splice(0).join()).toContain('no drawing can be shown')
  })
})
