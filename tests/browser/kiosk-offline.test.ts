import type { Page } from 'playwright-core'
import { afterEach, beforeEach, describe, expect, inject, test } from 'vitest'
import { JARS } from '../helpers/jars.mjs'
import { KIOSK, touchLanguage, verdictsShown } from './kiosk.ts'
import { officeServer } from './kiosk-office-server.ts'
import { begin, play } from './play.ts'
import { useVisits, type Visit } from './visit.ts'

const MINUTE = 60_000
let server: Awaited<ReturnType<typeof officeServer>>

beforeEach(async () => {
  server = await officeServer(inject('built'))
})

afterEach(() => server.switchOff())

/** Opens the kiosk from the office's server and waits until the device keeps all of it. */
async function keptKiosk({ page }: Visit): Promise<void> {
  await page.goto(`${server.address}kiosk`)
  await page.locator('.start-edition', { hasText: /· Kept on this device/ }).waitFor()
  // The office's file is read once more when it can be kept.
  await page.waitForFunction(async () => (await caches.match('office.json')) !== undefined)
}

/** An hour of somebody who goes on reading, in which a newer copy arrives and waits. */
async function readsOn(page: Page): Promise<void> {
  for (let moves = 0; moves < 75; moves++) {
    await page.clock.fastForward(50_000)
    await page.mouse.move(300 + moves, 300)
  }
  await page.waitForFunction(async () => {
    const registration = await navigator.serviceWorker.getRegistration('/kiosk')
    return registration?.waiting != null
  })
}

describe('a kiosk that was opened once', () => {
  const visit = useVisits()

  test('works with the network gone, in Spanish, with pictures, type and the numbers', async () => {
    const visitor = await visit({}, KIOSK)
    const { page } = visitor
    await keptKiosk(visitor)
    await server.switchOff()
    await page.goto('about:blank')
    await page.goto(`${server.address}kiosk.html`)
    await touchLanguage(page, 'es')
    await play(page, JARS['pink-with-hibiscus'] ?? {}, async screen => {
      if (screen === 'surface-texture') {
        expect(await page.locator('.card .picture > svg').count()).toBeGreaterThan(9)
      }
    })

    expect(await verdictsShown(page)).toEqual(['normal-growth'])
    const faces = await page.evaluate(async () => {
      await document.fonts.ready
      return [...document.fonts].map(({ family, status }) => `${family} ${status}`).sort()
    })
    // The start screen greets in every language. Of each face the signs that no text here has stay where they are.
    const plain = faces.map(face => face.replaceAll('"', ''))
    for (const family of ['Atkinson Hyperlegible Next', 'Literata', 'Noto Sans Arabic']) {
      expect(plain).toContain(`${family} loaded`)
    }
    expect(plain.filter(face => !/ (?:un)?loaded$/.test(face))).toEqual([])
    expect(await page.locator('.foot-office').textContent()).toContain('555-0110')
  })

  test('keeps the numbers when a wireless network answers in their place', async () => {
    const visitor = await visit({}, KIOSK)
    const { page } = visitor
    await keptKiosk(visitor)
    server.askToSignIn()
    await page.reload()
    await page.locator('.foot-office', { hasText: '555-0110' }).waitFor({ state: 'attached' })
  })

  test('leaves the page beside it alone', async () => {
    const visitor = await visit({}, KIOSK)
    const { page } = visitor
    await keptKiosk(visitor)
    const controlled = () => page.evaluate(() => navigator.serviceWorker.controller !== null)
    expect(await controlled()).toBe(true)
    await page.goto(server.address)
    expect(await controlled()).toBe(false)
    expect(await page.locator('head [rel="manifest"]').count()).toBe(0)
  })

  test('goes on with the copy it has when a newer one does not start, without any network', async () => {
    const visitor = await visit({}, { ...KIOSK, before: page => page.clock.install() })
    const { page, faults } = visitor
    await keptKiosk(visitor)
    await page.waitForFunction(
      async () => (await caches.match('kiosk.html', { cacheName: 'proven' })) !== undefined
    )
    server.renewBroken()
    await readsOn(page)
    server.setAway(true)
    // It is taken at rest, and fails; the page that comes after it is the one from before.
    await page.mouse.move(500, 500)
    await page.clock.runFor(MINUTE + 1_000)
    await page.waitForFunction(() => history.state?.restored === true)
    await page.locator('body:not([data-build]) .start').waitFor()
    await touchLanguage(page, 'es')
    await play(page, JARS['green-fuzz'] ?? {})
    expect(await verdictsShown(page)).toEqual(['likely-mold'])

    await page.reload()
    await page.locator('.start').waitFor()
    expect(await page.locator('body[data-build]').count()).toBe(0)
    await page.locator('.start-staff').focus()
    await page.keyboard.press('Enter')
    for (const digit of '24682468') {
      await page.locator('.pin-key', { hasText: digit }).click()
      if (digit === '8') await page.locator('.pin-enter').click()
    }
    await page.locator('.staff-copy .notice', { hasText: 'did not start' }).waitFor()
    expect(faults.splice(0).join()).toContain('this copy is broken')
  })

  test('takes a newer build at rest, never in the middle of a walk', async () => {
    const visitor = await visit({}, { ...KIOSK, before: page => page.clock.install() })
    const { page } = visitor
    await keptKiosk(visitor)
    await touchLanguage(page)
    await begin(page)
    server.renew()
    await readsOn(page)
    await page.clock.runFor(2_000)
    const newer = page.locator('body[data-build="newer"]')
    expect(await page.locator('.question').count()).toBe(1)

    await page.locator('[data-move="start-over"]').click()
    await page.locator('.start').waitFor()
    await page.clock.runFor(MINUTE - 5_000)
    await page.mouse.move(500, 500)
    await page.clock.runFor(MINUTE - 5_000)
    expect(await newer.count()).toBe(0)
    await page.clock.runFor(6_000)
    await newer.waitFor()
    await page.locator('.start').waitFor()
  })
})
