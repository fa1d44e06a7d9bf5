import { describe, expect, test } from 'vitest'
import english from '../../locales/en/ui.json' with { type: 'json' }
import spanish from '../../locales/es/ui.json' with { type: 'json' }
import { JARS } from '../helpers/jars.mjs'
import { useEmbeds } from './embed-visit.ts'
import { answer, openList, playOn, verdictsOn } from './play.ts'

const REST = '**/jarside/embed/{rest-*,*-whole-*,*-words-*,*-drawings-*}'
const FIRST = '**/jarside/embed/*-first-*'
const fuzz = JARS['white-fuzz'] ?? {}

describe('the first question of an embed', () => {
  const open = useEmbeds()

  test('waits for nothing else, and an answer given early is kept', async () => {
    let letGo: (() => void) | undefined
    const held = new Promise<void>(go => {
      letGo = go
    })
    const { page } = await open('/county', {
      before: page => page.route(REST, one => held.then(() => one.continue()))
    })
    await page.locator('.question').waitFor()
    await openList(page)
    await page.locator('[data-sign="mild-upset"]').check()
    await page.locator('[data-answer="none"]').click()
    const status = page.locator('[role="status"]:focus')
    await status.waitFor()
    expect(await status.textContent()).toBe(english.opening)

    letGo?.()
    await page.locator('[data-observation="container-signs"] h1:focus').waitFor()
    await page.locator('button.bead').first().click()
    expect(await page.locator('[data-sign="mild-upset"]').isChecked()).toBe(true)
  })

  test('asks for the rest by itself, before anybody answers', async () => {
    const { page, requests } = await open('/county')
    await page.locator('.question').waitFor()
    await page.waitForLoadState('networkidle')
    const kinds = ['rest-', '-whole-', '-words-en', '-drawings-']
    expect(kinds.filter(kind => !requests.some(url => url.includes(kind)))).toEqual([])
    await page.context().setOffline(true)
    await playOn(page, fuzz)
    expect(await verdictsOn(page)).toEqual(['likely-mold'])
  })

  test('whose rest cannot be had gives numbers, and goes on when tried again', async () => {
    const { page, faults } = await open('/county', {
      before: page => page.route(REST, one => one.abort())
    })
    await page.locator('.question').waitFor()
    await answer(page, 'people-signs', ['mild-upset'])
    const sentence = page.locator('.trouble [role="status"]:focus')
    await sentence.waitFor()
    expect(await sentence.textContent()).toBe(english.embed['not-gone-on'])
    const numbers = page.locator('.trouble .phone')
    expect(await numbers.allTextContents()).toEqual(['911', '1-800-222-1222'])
    expect(await page.locator('jarside-walk p').first().isVisible()).toBe(true)

    await page.unroute(REST)
    await page.locator('.trouble button').click()
    await page.locator('[data-observation="container-signs"] h1:focus').waitFor()
    expect(faults.splice(0).every(fault => fault.includes('ERR_FAILED'))).toBe(true)
  })

  test('that cannot be had itself leaves the page its own words beside the numbers', async () => {
    const { page, faults } = await open('/spanish', {
      before: page => page.route(FIRST, one => one.abort())
    })
    await page.locator('.trouble').waitFor()
    expect(await page.locator('.trouble [role="status"]').textContent()).toBe(
      spanish.embed['not-loaded']
    )
    expect(await page.locator('.trouble .phone').count()).toBe(2)
    expect(await page.locator('jarside-walk > p').isVisible()).toBe(true)
    await page.unroute(FIRST)
    await page.locator('.trouble button').click()
    await page.locator('.question').waitFor()
    expect(faults.splice(0).every(fault => fault.includes('ERR_FAILED'))).toBe(true)
  })
})
