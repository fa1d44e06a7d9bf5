import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import english from '../../locales/en/kombucha-jar.json' with { type: 'json' }
import spanish from '../../locales/es/kombucha-jar.json' with { type: 'json' }
import screens from '../../locales/es/ui.json' with { type: 'json' }
import { JARS } from '../helpers/jars.mjs'
import { axeFaults } from './axe.ts'
import { useEmbeds } from './embed-visit.ts'
import { playOn, verdictsOn } from './play.ts'
import { SAID } from './said.ts'

const question = (page: Page) => page.locator('.question').first()
describe('in a hostile page under a strict policy the jar', () => {
  const open = useEmbeds()

  test.each(Object.entries(SAID).map(([name, said], at) => [name, said, at % 2 === 1] as const))(
    '%s comes to what a specialist would say',
    async (name, { first, also = [], use }, inSpanish) => {
      const { page, requests, home } = await open(inSpanish ? '/hostile-spanish' : '/hostile')
      await question(page).waitFor()
      await playOn(page, JARS[name] ?? {})

      expect(await verdictsOn(page)).toEqual([first, ...also])
      const words = inSpanish ? spanish : english
      const said = await page
        .locator('.use')
        .evaluateAll(uses => uses.map(one => one.firstChild?.textContent))
      expect(said).toEqual(use === null ? [] : [words.use[use]])
      const elsewhere = requests.filter(url => !url.startsWith(`${home}/jarside/`))
      expect(elsewhere.filter(url => !/\/hostile(-spanish|\.css)?$/.test(url))).toEqual([])
    }
  )

  test('looks as it does anywhere: nothing of the page comes in', async () => {
    const look = async (at: string) => {
      const { page } = await open(at)
      await question(page).waitFor()
      return page.locator('.question-how').evaluate(one => {
        const style = getComputedStyle(one)
        // What goes by the typeface, which is the page's own, and by the color scheme of its root.
        const theirs = /^(--|font-family|color-scheme)|size|width|height|origin/
        return [...style]
          .filter(name => !theirs.test(name) || name === 'font-size')
          .map(name => `${name}: ${style.getPropertyValue(name)}`)
      })
    }
    expect(await look('/hostile')).toEqual(await look('/county'))
  })
})

describe('a site that tries itself', () => {
  const open = useEmbeds()
  /** What is said of each check, with the lines to copy. */
  async function report(at: string) {
    const { page, faults } = await open(at, {
      before: page =>
        page.route('**/jarside/plain/*', route =>
          route.fulfill({ contentType: 'text/css', body: 'p { margin: 0 }' })
        )
    })
    await page.locator('[data-done]').waitFor()
    const rows = await page.locator('[data-check]').evaluateAll(all =>
      all.map(one => ({
        check: one.getAttribute('data-check'),
        standing: one.getAttribute('data-standing'),
        lines: [...one.querySelectorAll('code')].map(line => line.textContent)
      }))
    )
    const whole = await page.locator('.whole code').allTextContents()
    const bad = rows.filter(({ standing }) => standing !== 'passes')
    return { count: rows.length, bad, whole, faults, page }
  }

  test.each(['/tried', '/jarside/self-test.html'])('at %s finds nothing broken', async at => {
    const { count, bad } = await report(at)
    expect(bad).toEqual([])
    expect(count).toBe(11)
  })

  test('under a policy of scripts alone is told each line that is missing', async () => {
    const { bad, whole, faults, page } = await report('/tried-strictly')
    const lines = Object.fromEntries(bad.map(({ check, lines }) => [check, lines]))
    expect(lines).toEqual({
      words: ["connect-src 'self'"],
      office: ["connect-src 'self'"],
      frame: ["frame-src 'self'"],
      plain: ["style-src 'self'"]
    })
    expect(whole).toEqual([
      "Content-Security-Policy: default-src 'none'; script-src 'self'; connect-src 'self'; frame-src 'self'; style-src 'self'"
    ])
    expect(await axeFaults(page)).toEqual([])
    // It breaks the policy on purpose.
    faults.length = 0
  })

  test('whose theme hides the element is told which box does, in two languages', async () => {
    const { bad, page } = await report('/tried-hidden')
    expect(bad).toEqual([
      { check: 'theme', standing: 'broken', lines: ['div.row { display: block !important }'] }
    ])
    await page.locator('jarside-self-test button[lang="es"]').click()
    expect(await page.locator('[data-check="theme"] h2').textContent()).toBe(
      screens['self-test'].tried.theme
    )
  })
})
