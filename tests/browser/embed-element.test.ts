import { describe, expect, test } from 'vitest'
import { JARS } from '../helpers/jars.mjs'
import { spillingInside, useEmbeds } from './embed-visit.ts'
import { playOn, verdictsOn } from './play.ts'
import { address } from './visit.ts'

const fuzz = JARS['white-fuzz'] ?? {}

test('the page for frames, and no other, may be framed by anybody', async () => {
  const policy = async (page: string) =>
    (await fetch(address() + page)).headers.get('content-security-policy')
  expect(await policy('frame.html')).toContain("default-src 'none'")
  expect(await policy('frame.html')).not.toContain('frame-ancestors')
  expect(await policy('index.html')).toContain("frame-ancestors 'none'")
})

describe('an element', () => {
  const open = useEmbeds()
  const asks = '.question h1'

  test('of a tree that is not there says so, with numbers, and names the trees', async () => {
    const { page, faults } = await open('/unknown')
    await page.locator('.trouble').waitFor()
    expect(await page.locator('.trouble .phone').allTextContents()).toEqual([
      '911',
      '1-800-222-1222'
    ])
    expect(faults.splice(0).join()).toContain('kombucha-jar')
  })

  test('speaks its own language, else the page’s, else English, and follows its attributes', async () => {
    const { page, faults } = await open('/spanish')
    const lang = () => page.locator('.embed').getAttribute('lang')
    const set = (name: string, value: string) =>
      page.evaluate(
        ([name = '', value = '']) =>
          document.querySelector('jarside-walk')?.setAttribute(name, value),
        [name, value]
      )
    await page.locator(asks).waitFor()
    expect(await lang()).toBe('es')
    await playOn(page, fuzz, 'surface-texture')
    await set('lang', 'en-US')
    await page.locator('.embed[lang="en"] .question[data-observation="people-signs"]').waitFor()
    await set('lang', 'tlh')
    await page.locator('.embed[lang="en"] .question').waitFor()
    await set('tree', 'nowhere')
    await page.locator('.trouble').waitFor()
    expect(faults.splice(0).join()).toContain('tree="nowhere"')
  })

  test('keeps the answers when its reader changes the language', async () => {
    const { page } = await open('/county')
    await page.locator('.question').waitFor()
    await playOn(page, fuzz, 'surface-texture')
    await page.locator('[data-language="es"]').click()
    await page.locator('.embed[lang="es"] [data-observation="surface-texture"]').waitFor()
    expect(await page.locator('button.bead').count()).toBe(3)
  })

  test('beside another is a walk of its own, and leaves nothing when taken away', async () => {
    const { page, requests } = await open('/two')
    await page.locator('.question').nth(1).waitFor()
    const [one, other] = [page.locator('jarside-walk').first(), page.locator('jarside-walk').last()]
    await one.locator('.question [data-answer="none"]').click()
    await one.locator('[data-observation="container-signs"]').first().waitFor()
    expect(await other.locator('.question').getAttribute('data-observation')).toBe('people-signs')
    expect(requests.filter(url => url.endsWith('jarside-walk.js')).length).toBe(1)
    expect(requests.filter(url => url.includes('rest-')).length).toBe(1)

    const left = await page.evaluate(() => {
      const walk = document.querySelector('jarside-walk')
      walk?.remove()
      return walk?.shadowRoot?.childNodes.length
    })
    expect(left).toBe(0)
    await page.evaluate(() => {
      document.querySelector('main')?.append(document.createElement('jarside-walk'))
      document.querySelector('main > :last-child')?.setAttribute('tree', 'kombucha-jar')
    })
    await page.locator('jarside-walk').last().locator('.question').waitFor()
  })

  test('works under a versioned name, and in a row of boxes takes the room there is', async () => {
    const { page } = await open('/versioned', { viewport: { width: 320, height: 800 } })
    await page.locator('.question').waitFor()
    const box = await page.locator('jarside-walk').boundingBox()
    expect(box?.width).toBe(300)
    expect(await spillingInside(page)).toEqual([])
    await playOn(page, fuzz)
    expect(await verdictsOn(page)).toEqual(['likely-mold'])
  })

  test('without scripts shows the page’s own words', async () => {
    const { page } = await open('/county', { javaScriptEnabled: false })
    expect(await page.locator('jarside-walk p').isVisible()).toBe(true)
    expect(await page.locator('jarside-walk').textContent()).toBe('Call the office: 555-0110.')
  })

  test('may come from another origin that the policy allows', async () => {
    const { page, requests, home, abroad } = await open('/abroad')
    await page.locator('.question').waitFor()
    await playOn(page, fuzz)
    expect(await verdictsOn(page)).toEqual(['likely-mold'])
    const own = requests.filter(url => url.startsWith(home))
    expect(own.map(url => url.slice(home.length))).toEqual(['/abroad', '/county.css'])
    expect(
      requests.every(url => url.startsWith(home) || url.startsWith(`${abroad}/jarside/`))
    ).toBe(true)
  })

  test('plays a jar in a frame inside another page', async () => {
    const { page } = await open('/frame')
    const frame = page.frameLocator('iframe')
    await frame.locator('.embed[lang="es"] .question').waitFor()
    for (const id of ['people-signs', 'container-signs']) {
      await frame.locator(`.question[data-observation="${id}"] [data-answer="none"]`).click()
    }
    await frame.locator('[data-answer="dry-fuzzy"]').click()
    await frame.locator('[data-observation="drinkers"] [data-answer="none"]').click()
    const verdict = frame.locator('[data-verdict]')
    await verdict.waitFor()
    expect(await verdict.getAttribute('data-verdict')).toBe('likely-mold')
  })
})
