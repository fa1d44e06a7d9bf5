import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { describe, expect, inject, test } from 'vitest'
import { filesOfPage } from '../../bench/files-of-page.mjs'
import { shippedTrees } from '../helpers/shipped.ts'
import { answer, begin, openList, verdictsOn } from './play.ts'
import { useVisits } from './visit.ts'

/** What was asked for until something stood on the screen, by addresses in the folder. */
const askedUntil = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const { asked = [] } = window as unknown as { asked?: readonly string[] }
    return asked.map(url => new URL(url).pathname.slice(1))
  })

/** Notes what has been asked for at the moment when a selector is first there. */
const noteAt = (selector: string) => (page: Page) =>
  page.addInitScript(selector => {
    const look = () => {
      if (document.querySelector(selector) === null) return
      watch.disconnect()
      const asked = performance.getEntriesByType('resource').map(({ name }) => name)
      Object.assign(window, { asked })
    }
    const watch = new MutationObserver(look)
    watch.observe(document, { childList: true, subtree: true })
  }, selector)

describe('before the first question stands', () => {
  const visit = useVisits()

  test('nothing of any other tree was asked for, and no more than is counted', async () => {
    const trees = await shippedTrees()
    for (const { id } of trees) {
      const { page } = await visit({}, { hash: `#/${id}`, before: noteAt('.question') })
      await page.locator('.question').waitFor()
      const asked = await askedUntil(page)
      expect(asked.some(name => name.startsWith(`assets/first-${id}-en-`))).toBe(true)
      const counted = new Set([...filesOfPage(inject('built'), 'index.html'), 'office.json'])
      const beyond = asked.filter(name => !counted.has(name))
      expect(beyond.map(name => name.replace(/-[\w-]{8}\.json$/, ''))).toEqual([
        `assets/first-${id}-en`
      ])
      const others = trees.filter(other => other.id !== id)
      const whole = asked
        .filter(name => !name.endsWith('.woff2'))
        .map(name => readFileSync(join(inject('built'), name), 'utf8'))
        .join('')
      expect(others.filter(other => whole.includes(other.id)).map(other => other.id)).toEqual([])
    }
  })

  test('the choice of one takes the choice alone', async () => {
    const { page } = await visit({}, { before: noteAt('.choose') })
    await page.locator('.choose').waitFor()
    const asked = await askedUntil(page)
    expect(asked.filter(name => /first-|catalogue|whole/.test(name))).toEqual([])
    expect(asked.filter(name => name.startsWith('assets/choose-en-'))).toHaveLength(1)
  })
})

describe('the first answer', () => {
  const visit = useVisits()
  const WHOLE = /\/assets\/whole-[^/]*\.js$/

  test('is kept while the rest is on its way, and said to be', async () => {
    let go = () => {}
    const held = new Promise<void>(resolve => {
      go = resolve
    })
    const { page } = await visit(
      {},
      { before: page => page.route(WHOLE, route => held.then(() => route.continue())) }
    )
    await begin(page)
    await openList(page)
    await page.locator('[data-sign="severe-symptoms"]').check()
    await answer(page, 'people-signs', [])
    const said = page.locator('[role="status"]:focus')
    await said.waitFor()
    expect(await page.locator('.foot-numbers').textContent()).toContain('911')
    go()
    await page.locator('.emergency').waitFor()
    expect(await verdictsOn(page)).toEqual(['emergency'])
  })

  test('is asked for once more where the rest failed before it, and goes on', async () => {
    let broken = true
    const visitor = await visit(
      {},
      { before: page => page.route(WHOLE, route => (broken ? route.abort() : route.continue())) }
    )
    const { page, faults } = visitor
    await begin(page)
    await page.waitForLoadState('networkidle')
    broken = false
    await answer(page, 'people-signs', [])
    await page.locator('[data-observation="container-signs"]').waitFor()
    expect(await page.locator('h1:focus').count()).toBe(1)
    faults.length = 0
  })

  test('brings the numbers back where the rest cannot be had at all', async () => {
    const visitor = await visit({}, { before: page => page.route(WHOLE, route => route.abort()) })
    const { page, faults } = visitor
    await begin(page)
    await answer(page, 'people-signs', [])
    await page.locator('#last-resort').waitFor({ state: 'visible' })
    expect(await page.locator('#last-resort').textContent()).toContain('1-800-222-1222')
    faults.length = 0
  })

  test('keeps its marks when another language is chosen before it', async () => {
    const { page } = await visit({}, { hash: '#/kombucha-jar' })
    await openList(page)
    await page.locator('[data-sign="mild-upset"]').check()
    await page.locator('.masthead [data-language="es"]').click()
    await page.locator('.masthead [data-language="en"]').waitFor()
    expect(await page.evaluate(() => document.documentElement.lang)).toBe('es')
    expect(new URL(page.url()).hash).toBe('#/es/kombucha-jar')
    expect(await page.locator('[data-sign="mild-upset"]').isChecked()).toBe(true)
    await answer(page, 'people-signs', [])
    await page.locator('[data-observation="container-signs"]').waitFor()
    expect(await page.evaluate(() => document.documentElement.lang)).toBe('es')
  })
})
