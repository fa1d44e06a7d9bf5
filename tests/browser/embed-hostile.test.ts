import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import english from '../../locales/en/kombucha-jar.json' with { type: 'json' }
import spanish from '../../locales/es/kombucha-jar.json' with { type: 'json' }
import { JARS } from '../helpers/jars.mjs'
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
