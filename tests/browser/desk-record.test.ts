import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { JARS } from '../helpers/jars.mjs'
import { axeFaults } from './axe.ts'
import { atDesk, callOn, say } from './desk-call.ts'
import { databasesOf, entriesOf } from './log-database.ts'
import { useVisits } from './visit.ts'

const visit = useVisits()
const toDesk = async (before?: (page: Page) => Promise<unknown>) => {
  const opened = await visit({}, { hash: 'desk.html', ...(before && { before }) })
  await atDesk(opened.page)
  return opened
}
const saved = (page: Page) => page.locator('.record-done p').waitFor()
/** F2 opens the record with everything filled in, Enter saves it. */
const recordByKeys = async (page: Page) => {
  await page.keyboard.press('F2')
  await page.locator('[data-action="record"]:focus').waitFor()
  await page.keyboard.press('Enter')
  await saved(page)
}

describe('a call is recorded', () => {
  test('about canning in three keys, before any question is answered', async () => {
    const { page } = await toDesk()
    await page.keyboard.press('F2')
    await page.locator('[name="topic"]:focus').waitFor()
    await page.keyboard.press('c')
    await page.keyboard.press('Enter')
    await saved(page)
    expect(await entriesOf(page)).toMatchObject([{ topic: 'canning', tree: null, batch: null }])
  })

  test('and taken back: it is void, and the one before is kept until it was seen', async () => {
    const { page } = await toDesk()
    await callOn(page, JARS['white-fuzz'] ?? {})
    await recordByKeys(page)
    await page.keyboard.press('Enter')
    await page.locator('.record-done', { hasText: 'Taken back' }).waitFor()
    const { entries, earlier } = (await databasesOf(page))['jarside-contacts'] ?? {}
    expect(entries).toMatchObject([{ state: 'void', edit: 1 }])
    expect(earlier).toMatchObject([{ state: 'resolved', edit: 0 }])
  })

  test('with everything that can be chosen, by keyboard alone, and axe finds nothing', async () => {
    const { page } = await toDesk()
    await callOn(page, JARS['white-fuzz'] ?? {})
    await page.keyboard.press('F2')
    await page.locator('[data-action="record"]:focus').waitFor()
    expect(await axeFaults(page)).toEqual([])
    await page.locator('[name="method"]').focus()
    await page.keyboard.press('W')
    await page.keyboard.press('Tab')
    await page.keyboard.type('12')
    await page.keyboard.press('Tab')
    await page.keyboard.press('O')
    await page.locator('[name="zip"]').waitFor()
    await page.keyboard.press('Tab')
    await page.keyboard.type('555')
    await page.locator('[name="pending"]').focus()
    await page.keyboard.press('Space')
    await page.keyboard.press('Enter')
    await saved(page)
    expect(await entriesOf(page)).toMatchObject([
      { method: 'walk-in', area: '555', state: 'pending', batch: 'likely-mold' }
    ])
    expect(await axeFaults(page)).toEqual([])
  })
})

describe('the record of an emergency', () => {
  test('a key in the record of an emergency takes no answer back', async () => {
    const { page } = await toDesk()
    await say(page, 'trouble breathing')
    await page.locator('.desk-emergency').waitFor()
    await page.keyboard.press('F2')
    await page.locator('[name="minutes"]').fill('7')
    await page.keyboard.press('Backspace')
    expect(await page.locator('.desk-emergency').count()).toBe(1)
    expect(await axeFaults(page)).toEqual([])
  })
})

describe('a slip to call back', () => {
  test('lies apart from the log, is due on its day, and is gone when the call was made', async () => {
    const { page } = await toDesk()
    await page.locator('.slip > summary').focus()
    await page.keyboard.press('Enter')
    await page.keyboard.press('Tab')
    await page.keyboard.type('Robin')
    await page.keyboard.press('Tab')
    await page.keyboard.type('555-0142')
    const today = await page.evaluate(() =>
      new Intl.DateTimeFormat('en-CA', { timeZone: 'America/Chicago' }).format(new Date())
    )
    await page.locator('[name="on"]').fill(today)
    expect(await axeFaults(page)).toEqual([])
    await page.locator('[data-action="save-slip"]').click()
    await page.locator('[data-slip]').waitFor()
    expect(await page.locator('.desk-due').textContent()).toBe('1 call to make today')
    const all = await databasesOf(page)
    expect(all['jarside-call-backs']?.slips).toMatchObject([{ firstName: 'Robin' }])
    expect(JSON.stringify(all['jarside-contacts'] ?? {})).not.toContain('Robin')
    await page.locator('[data-action="slip-done"]').click()
    await page.locator('[data-slip]').waitFor({ state: 'detached' })
    expect((await databasesOf(page))['jarside-call-backs']?.slips).toEqual([])
  })

  test('is deleted three days after its recheck, whenever the desk is opened', async () => {
    const { page } = await toDesk()
    await page.evaluate(async () => {
      const opening = indexedDB.open('jarside-call-backs')
      await new Promise(resolve => {
        opening.onsuccess = resolve
      })
      const old = { id: 'old', firstName: 'Lee', phone: '555-0143', part: 'any-time' }
      const writing = opening.result.transaction('slips', 'readwrite')
      writing.objectStore('slips').put({ ...old, on: '2020-01-02', recheckOn: '2020-01-05' })
      await new Promise(resolve => {
        writing.oncomplete = resolve
      })
      opening.result.close()
    })
    await page.reload()
    await atDesk(page)
    await page.waitForFunction(async () => {
      const opening = indexedDB.open('jarside-call-backs')
      await new Promise(resolve => {
        opening.onsuccess = resolve
      })
      const counting = opening.result.transaction('slips').objectStore('slips').count()
      await new Promise(resolve => {
        counting.onsuccess = resolve
      })
      opening.result.close()
      return counting.result === 0
    })
  })
})

describe('a browser that keeps nothing', () => {
  const FAULTS = {
    full: () => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('no room', 'QuotaExceededError')
      }
    },
    blocked: () => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('not here', 'SecurityError')
      }
    }
  }
  const SAID = { full: 'no room left', blocked: 'does not let the page keep anything' }

  test.each(['full', 'blocked'] as const)(
    '%s: what was not saved is said and offered',
    async why => {
      const { page } = await toDesk(page => page.addInitScript(FAULTS[why]))
      await callOn(page, JARS['white-fuzz'] ?? {})
      await page.keyboard.press('F2')
      await page.locator('[data-action="record"]:focus').waitFor()
      await page.keyboard.press('Enter')
      const notice = page.locator('.not-saved')
      await notice.waitFor()
      const text = (await notice.textContent()) ?? ''
      expect(text).toContain(SAID[why])
      expect(text).toContain('Likely mold, Phone, 1 minute')
      expect(await axeFaults(page)).toEqual([])
      const download = page.waitForEvent('download')
      await page.locator('[data-action="unsaved-file"]').click()
      const stream = await (await download).createReadStream()
      let file = ''
      for await (const part of stream) file += part
      expect(JSON.parse(file)).toMatchObject({ batch: 'likely-mold', kind: 'contact' })
      expect(file.endsWith('\n')).toBe(true)
    }
  )
})
