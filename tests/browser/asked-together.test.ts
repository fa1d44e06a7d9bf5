import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { JARS } from '../helpers/jars.mjs'
import { axeFaults } from './axe.ts'
import { answer, openList, playOn, verdictsOn } from './play.ts'
import { useVisits } from './visit.ts'

const healthy = JARS['merging-islands'] ?? {}
const question = (page: Page, observation: string) =>
  page.locator(`.question[data-observation="${observation}"]`)

/** At the lid's and the jar's signs, which one screen asks. */
async function atTheJar(page: Page): Promise<void> {
  await page.locator('[data-tree="kombucha-jar"]').click()
  await question(page, 'people-signs').waitFor()
  await answer(page, 'people-signs', 'none')
  await question(page, 'container-signs').locator('[data-along="jar-signs"]').waitFor()
}

describe('two screens of signs asked together', () => {
  const visit = useVisits()

  test('are both ruled out by one answer, and each can be changed by itself', async () => {
    const { page } = await visit()
    await atTheJar(page)
    expect(await axeFaults(page)).toEqual([])
    await answer(page, 'container-signs', 'none')
    await question(page, 'surface-texture').waitFor()
    const beads = page.locator('button.bead')
    expect(
      await beads.evaluateAll(all => all.map(one => one.getAttribute('data-observation')))
    ).toEqual(['people-signs', 'container-signs', 'jar-signs'])
    await page.locator('button.bead[data-observation="jar-signs"]').click()
    await answer(page, 'jar-signs', ['insects-inside'])
    await playOn(page, { ...healthy })
    expect(await verdictsOn(page)).toContain('discard-and-sanitize')
  })

  test('are listed one after the other where something is so, the second without its line again', async () => {
    const { page } = await visit()
    await atTheJar(page)
    await openList(page)
    await answer(page, 'container-signs', 'none')
    await question(page, 'jar-signs').locator('[data-sign="insects-inside"]').waitFor()
    expect(await page.locator('.sweep').count()).toBe(0)
  })
})
