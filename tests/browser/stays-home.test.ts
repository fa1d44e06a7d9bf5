import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import shipped from '../../public/office.json' with { type: 'json' }
import { JARS } from '../helpers/jars.mjs'
import { PAGES } from './pages.ts'
import { play } from './play.ts'
import { address, useVisits } from './visit.ts'

const healthy = JARS['merging-islands'] ?? {}
const OFFICE = '**/office.json'
/** The numbers at the foot, as a phone would dial them. */
const footNumbers = (page: Page) =>
  page
    .locator('.foot .phone')
    .evaluateAll(links => links.map(link => link.getAttribute('href') ?? ''))

describe('nothing leaves the device', () => {
  const visit = useVisits()

  test('every request of a whole walk goes to where the page came from', async () => {
    const { page, requests } = await visit()
    await play(page, healthy)
    await page.evaluate(() => document.fonts.ready)

    expect(requests.filter(url => !url.startsWith(address()))).toEqual([])
    expect(requests).toContain(`${address()}office.json`)
    expect(requests.filter(url => url.includes('?'))).toEqual([])
  })

  // What is loaded once a tree is open may come late on a busy machine: the second walk has all of it.
  test('answers cause no request at all once everything has been opened', async () => {
    const { page, requests } = await visit()
    await play(page, healthy)
    await page.evaluate(() => document.fonts.ready)
    await page.locator('[data-move="start-over"]').click()
    requests.length = 0
    await play(page, healthy)
    // The browser asks for the page's icon when it likes.
    expect(requests.filter(url => url !== `${address()}icon.svg`)).toEqual([])
  })

  test.each(PAGES)('the policy stands in the header and, alike, in the page %s', async place => {
    const answer = await fetch(`${address()}${place === 'index' ? '' : `${place}.html`}`)
    const header = answer.headers.get('content-security-policy')?.split('; ') ?? []
    const html = await answer.text()
    const [, meta = ''] = /Content-Security-Policy" content="([^"]+)"/.exec(html) ?? []

    expect(header).toContain("default-src 'none'")
    expect(header).toContain("script-src 'self'")
    // A page cannot forbid its own framing from within.
    expect(meta.split('; ')).toEqual(header.filter(part => !part.startsWith('frame-ancestors')))
    // It holds for everything that follows it, and so nothing to be loaded may stand before it.
    expect(html.slice(0, html.indexOf('http-equiv'))).not.toMatch(/<script|<link|<style/)
    expect(html).not.toMatch(/<style|<script(?![^>]* src=)|\son\w+=|\sstyle=/)
    expect(answer.headers.get('referrer-policy')).toBe('no-referrer')
    expect(answer.headers.get('x-content-type-options')).toBe('nosniff')
  })

  test('a script slipped into the page is refused', async () => {
    const { page, faults } = await visit()
    const ran = await page.evaluate(() => {
      const script = document.createElement('script')
      script.textContent = 'window.slippedIn = true'
      document.body.append(script)
      return 'slippedIn' in window
    })

    expect(ran).toBe(false)
    expect(faults.splice(0).join()).toContain('Content Security Policy')
  })
})

describe('without its office file', () => {
  const visit = useVisits()
  const fixed = ['tel:911', 'tel:18002221222']

  test('every screen still shows 911 and Poison Help', async () => {
    const { page, faults } = await visit(
      {},
      { before: page => page.route(OFFICE, one => one.abort()) }
    )
    expect(await footNumbers(page)).toEqual(fixed)
    await play(page, healthy, async () => {
      expect(await footNumbers(page)).toEqual(fixed)
    })
    expect(faults.splice(0).every(fault => fault.includes('ERR_FAILED'))).toBe(true)
  })

  test('that never comes, the page waits for nothing', async () => {
    const { page } = await visit({}, { before: page => page.route(OFFICE, () => undefined) })
    await play(page, healthy)
    expect(await footNumbers(page)).toEqual(fixed)
  })

  const hours = { ...shipped.hours, zone: 'America/Chicgao' }
  test.each([
    ['that breaks off', '{"office":', 'country'],
    ['that holds something else', '[]', 'country'],
    [
      'that claims other emergency numbers',
      '{"emergency":"555-0100","country":"__proto__"}',
      'country'
    ],
    ['with a mistyped time zone', JSON.stringify({ ...shipped, hours }), 'hours.zone']
  ])('but one %s, both numbers stand, and the console says why', async (_, body, at) => {
    const fulfil = { status: 200, contentType: 'application/json', body }
    const { page, faults } = await visit(
      {},
      { before: page => page.route(OFFICE, one => one.fulfill(fulfil)) }
    )
    await play(page, healthy)
    expect((await footNumbers(page)).slice(0, 2)).toEqual(fixed)
    expect(faults.splice(0).join()).toContain(`office.json, ${at}:`)
  })

  test.each(['kiosk', 'desk'])('but one with a mistyped time zone, /%s goes on', async place => {
    const body = JSON.stringify({ ...shipped, hours })
    const fulfil = { status: 200, contentType: 'application/json', body }
    const { page, faults } = await visit(
      {},
      { hash: place, before: page => page.route(OFFICE, one => one.fulfill(fulfil)) }
    )
    await page.locator('.foot', { hasText: '555-0110' }).waitFor()
    expect(await page.locator('.foot-open').count()).toBe(0)
    expect(await page.locator('.last-resort').isVisible()).toBe(false)
    expect(faults.splice(0).join()).toContain('office.json, hours.zone:')
  })
})
