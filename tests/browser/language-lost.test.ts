import { describe, expect, test } from 'vitest'
import { JARS } from '../helpers/jars.mjs'
import { factsOn, say } from './desk-call.ts'
import { answer, askedOn, begin, playOn } from './play.ts'
import { useVisits, type Visit } from './visit.ts'

const visit = useVisits()

/** Lets the second of a language's files come and not come, as a bad connection does. */
async function unsteady({ page }: Visit) {
  let broken = true
  await page.route(/\/es-[^/]*\.js$/, route => (broken ? route.abort() : route.continue()))
  return () => {
    broken = false
  }
}

/** What the browser says of a file that did not come is no fault of the page. */
const forgive = (opened: Visit) => {
  opened.faults.length = 0
}

describe('a language that cannot be loaded', () => {
  test('leaves the walk as it is, says so, and comes when it is pressed again', async () => {
    const opened = await visit()
    const { page } = opened
    const mended = await unsteady(opened)
    await begin(page)
    await playOn(page, JARS['white-fuzz'] ?? {}, 'surface-texture')
    await page.locator('[data-language="es"]').click()
    await page.locator('.masthead-trouble:not(:empty)').waitFor()
    expect(await page.locator('.question').getAttribute('data-observation')).toBe('surface-texture')
    expect(await page.locator('.string .bead').count()).toBe(4)

    mended()
    await page.locator('[data-language="es"]').click()
    await page.locator('html[lang="es"]').waitFor()
    await page.locator('h1:has-text("Mire el frasco")').waitFor()
    expect(await page.locator('.masthead-trouble').textContent()).toBe('')
    forgive(opened)
  })

  test('at the desk leaves every fact of the call', async () => {
    const opened = await visit({}, { hash: 'desk.html' })
    const { page } = opened
    await unsteady(opened)
    await page.locator('.desk .question').waitFor()
    await say(page, 'hairy, day 9')
    await page.locator('[data-language="es"]').click()
    await page.locator('.masthead-trouble:not(:empty)').waitFor()
    expect(await factsOn(page)).toEqual(['Surface: Dry, like fur or cotton', 'Day: 9 days'])
    forgive(opened)
  })
})

describe('a tree that cannot be loaded', () => {
  test('is asked for again when it is chosen again, and what was answered is kept', async () => {
    const opened = await visit()
    const { page } = opened
    let broken = true
    await page.route(/kombucha-jar-[^/]*\.js$/, route =>
      broken ? route.abort() : route.continue()
    )
    await page.reload()
    await begin(page)
    await answer(page, 'people-signs', [])
    await page.locator('.notice').waitFor()
    broken = false
    await begin(page)
    expect(await askedOn(page)).toBe('container-signs')
    forgive(opened)
  })
})
