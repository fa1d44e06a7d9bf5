import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, test } from 'vitest'
import { JARS } from '../helpers/jars.mjs'
import { axeFaults } from './axe.ts'
import { atDesk, callOn, callUntil, factsOn, say } from './desk-call.ts'
import { cutOff, spilling } from './layout.ts'
import { verdictsOn } from './play.ts'
import { toPrint } from './to-print.ts'
import { useVisits, type Visit } from './visit.ts'

const visit = useVisits()
const toDesk = async (options = {}) => {
  const opened = await visit(options, { hash: 'desk.html' })
  await atDesk(opened.page)
  return opened
}

/** Mold and a wet film were both told: what the film would be asked is asked too. */
const TWO_SURFACES = {
  ...JARS['new-film'],
  'surface-texture': 'dry-fuzzy',
  'jar-ph': ['3.2', 'meter']
}

describe('a line of facts', () => {
  test('is taken in any order', async () => {
    const { page } = await toDesk()
    await say(page, '75 F, ph 4.1 strip, hairy, day 9')
    expect(await factsOn(page)).toEqual([
      'Room: 75 °F',
      'pH: pH 4.1 (Not sure which)',
      'Surface: Dry, like fur or cotton',
      'Day: 9 days'
    ])
  })

  test('is told what it comes to at once, before any question is answered', async () => {
    const { page } = await toDesk()
    await say(page, 'hairy')
    await page.locator('.decided', { hasText: 'Likely mold' }).waitFor()
  })

  test('typed before callers’ own words have arrived is kept, and taken once they have', async () => {
    let arrive = () => {}
    const arrived = new Promise<void>(done => {
      arrive = done
    })
    const before = (page: Page) =>
      page.route('**/assets/kombucha-jar-*.js', async route => {
        const response = await route.fetch()
        if ((await response.text()).includes('may-mean')) await arrived
        await route.fulfill({ response })
      })
    const { page } = await visit({}, { hash: 'desk.html', before })
    await page.locator('.desk .question').waitFor()
    await say(page, 'hairy, day 9')
    expect(await page.locator('.fact-input').inputValue()).toBe('hairy, day 9')
    expect(await factsOn(page)).toEqual([])
    arrive()
    await page.locator('.fact').nth(1).waitFor()
    expect(await factsOn(page)).toContain('Surface: Dry, like fur or cotton')
    expect(await page.locator('.fact-input').inputValue()).toBe('')
  })

  test('with something that may mean two things takes neither and offers both', async () => {
    const { page } = await toDesk()
    await say(page, 'pink')
    expect(await factsOn(page)).toEqual([])
    expect(await page.locator('.fact-message').textContent()).toContain('is not clear')
    await page.locator('.fact-input').press('ArrowDown')
    await page.locator('.fact-input').press('Enter')
    expect(await factsOn(page)).toEqual(['Color: Pink to yellow on top'])
  })

  test('that is not understood stays in the field and is said', async () => {
    const { page } = await toDesk()
    await say(page, 'zqzq, day 9')
    expect(await factsOn(page)).toEqual(['Day: 9 days'])
    expect(await page.locator('.fact-input').inputValue()).toBe('zqzq')
    expect(await page.locator('.fact-message').textContent()).toContain('Not understood')
  })

  test('is read in Spanish too once the caller speaks it', async () => {
    const { page } = await toDesk()
    await page.locator('[data-language="es"]').click()
    await page.locator('.step-heading .second').waitFor()
    await say(page, 'peludo, día 9')
    expect(await factsOn(page)).toEqual(['Surface: Dry, like fur or cotton', 'Day: 9 days'])
  })
})

describe('a call that contradicts itself', () => {
  test('shows both facts, and says that the most cautious of each counts', async () => {
    const { page } = await toDesk()
    await say(page, 'hairy')
    await say(page, 'jelly')
    expect(await factsOn(page)).toEqual([
      'Surface: Dry, like fur or cotton',
      'Surface: Wet, one skin or disc'
    ])
    expect(await page.locator('.contradiction').textContent()).toMatch(
      /more than one answer for “Surface”: Dry, like fur or cotton \/ Wet, one skin or disc\. We use the most cautious/
    )
  })

  test('is one no more when the wrong fact is removed', async () => {
    const { page } = await toDesk()
    await say(page, 'hairy')
    await say(page, 'jelly')
    await page.locator('.fact').first().locator('.fact-remove').click()
    expect(await page.locator('.contradiction').count()).toBe(0)
    expect(await page.locator('.decided').textContent()).not.toContain('Likely mold')
  })
})

describe('a later line that corrects an earlier one', () => {
  test('replaces what it corrects, and says so', async () => {
    const { page } = await toDesk()
    await say(page, 'day 9, boozy, maggots')
    await say(page, 'sorry, day 12')
    await say(page, 'not boozy')
    expect(await page.locator('.fact-message').textContent()).toContain('Corrected, so removed:')
    const facts = await factsOn(page)
    expect(facts.filter(fact => fact.startsWith('Day:'))).toEqual(['Day: 12 days'])
    expect(await page.locator('.contradiction').count()).toBe(0)
    expect(facts).toHaveLength(3)
  })

  test('takes no danger back that it denies in other words', async () => {
    const { page } = await toDesk()
    await say(page, 'the lid is bulging')
    await say(page, 'no, it is not hissing')
    expect(await page.locator('.fact[data-observation="container-signs"]').count()).toBe(1)
  })
})

describe('a fact on the strip', () => {
  test('is changed where it stands, and the rest stays', async () => {
    const { page } = await toDesk()
    await say(page, 'hairy, day 9')
    await page.locator('.fact[data-observation="surface-texture"] .fact-change').click()
    await page.locator('.question [data-answer="wet-film"]').click()
    expect(await factsOn(page)).toEqual(['Day: 9 days', 'Surface: Wet, one skin or disc'])
  })

  test('is gone with the call', async () => {
    const { page } = await toDesk()
    await say(page, 'hairy, day 9')
    await page.locator('[data-move="start-over"]').click()
    expect(await factsOn(page)).toEqual([])
    expect(await page.locator('.decided').textContent()).not.toContain('Likely mold')
  })

  test('stays when the caller turns out to speak another language', async () => {
    const { page } = await toDesk()
    await say(page, 'hairy, day 9')
    await page.locator('[data-language="es"]').click()
    await page.locator('.step-heading .second').waitFor()
    expect(await factsOn(page)).toEqual(['Surface: Dry, like fur or cotton', 'Day: 9 days'])
  })
})

describe('a call in which everything is decided', () => {
  test('may be ended before every question was asked, and can be gone on with', async () => {
    const { page } = await toDesk()
    await say(page, 'hairs from the side')
    const drinkers = ['grandmother drank it', 'my ten year old drank it', 'we drank it']
    for (const who of [...drinkers, 'give it to my kids']) await say(page, who)
    await callUntil(page, JARS['green-fuzz'] ?? {}, 'surface-texture')
    await page.locator('[data-action="stop-here"]').click()
    expect(await verdictsOn(page)).toEqual(['poison-help', 'likely-mold'])
    await page.locator('[data-action="go-on"]').click()
    expect(await page.locator('.question').getAttribute('data-observation')).toBe('surface-texture')
  })

  test('is not ended while an open question could still add a step', async () => {
    const { page } = await toDesk()
    await say(page, 'hairy')
    await callUntil(page, JARS['white-fuzz'] ?? {}, 'container-signs')
    // Mold is certain by now; whether the pot holds lead is not.
    expect(await page.locator('.decided').textContent()).toContain('Likely mold')
    expect(await page.locator('[data-action="stop-here"]').count()).toBe(0)
  })
})

describe('what was told is never ruled out by going on', () => {
  test('a sign typed while its own screen stands is marked on it', async () => {
    const { page } = await toDesk()
    await callUntil(page, JARS['new-film'] ?? {}, 'container-signs')
    await say(page, 'it exploded')
    const box = page.locator('[data-sign="burst-or-out-of-reach"]')
    await expect.poll(() => box.isChecked()).toBe(true)
    await page.locator('.question [data-answer="none"]').click()
    await page.locator('.question:not([data-observation="container-signs"])').waitFor()
    expect(await page.locator('.at-once .verdict').getAttribute('data-verdict')).toBe(
      'pressure-hazard'
    )
  })

  test('a sign taken off the strip is marked no more', async () => {
    const { page } = await toDesk()
    await callUntil(page, JARS['new-film'] ?? {}, 'container-signs')
    await say(page, 'hissing')
    await page.locator('.fact').last().locator('.fact-remove').click()
    const box = page.locator('[data-sign="lid-bulging-or-hissing"]')
    await expect.poll(() => box.count()).toBe(0)
  })

  test('of a jar that may burst nobody is sent to look', async () => {
    const { page } = await toDesk()
    await callUntil(page, JARS['burst-jar'] ?? {}, 'surface-texture')
    expect(await page.locator('h1').textContent()).toMatch(/^From memory/)
    expect(await page.locator('.question-how').count()).toBe(0)
  })
})

describe('the outcome at the desk', () => {
  let opened: Visit
  beforeAll(async () => {
    opened = await toDesk({ permissions: ['clipboard-read', 'clipboard-write'] })
    const { page } = opened
    await page.locator('[data-language="es"]').click()
    await page.locator('.step-heading .second').waitFor()
    await callOn(page, JARS['white-fuzz'] ?? {})
  })

  test('is read aloud in both languages, is copied and printed in the caller’s', async () => {
    const { page } = opened
    const heading = page.locator('.desk .verdict .step-heading')
    expect(await heading.textContent()).toMatch(/Likely mold.*Es probable que sea moho/s)
    await page.locator('[data-action="copy-text"]').click()
    expect(await page.evaluate(() => navigator.clipboard.readText())).toMatch(/Es probable/)
    await page.locator('[data-action="copy-link"]').click()
    expect(await page.evaluate(() => navigator.clipboard.readText())).toMatch(
      /^https:\/\/jarside\.larkspur\.example\/#\/es\/kombucha-jar\?/
    )
    await toPrint(page)
    const sheet = page.locator('.sheet').first()
    expect(await sheet.isVisible()).toBe(true)
    expect(await page.locator('.desk').isVisible()).toBe(false)
    expect(await sheet.getAttribute('lang')).toBe('es')
    expect(await sheet.locator('h1').textContent()).toMatch(/^Es probable que sea moho/)
    // The English stands on the other side.
    expect(await page.locator('.sheet').last().getAttribute('lang')).toBe('en')
  })
})

describe('the call sheet', () => {
  test.each(['en', 'es'])('has no fault that axe finds, with a caller who speaks %s', async tag => {
    const { page } = await toDesk()
    await page.locator(`[data-language="${tag}"]`).click()
    await page.locator('.fact-input').fill('pink, day')
    const faults = [...(await axeFaults(page))]
    await say(page, 'hairy, jelly, day 9')
    await page.locator('.contradiction').waitFor()
    faults.push(...(await axeFaults(page)))
    await callOn(page, TWO_SURFACES)
    faults.push(...(await axeFaults(page)))
    expect(faults).toEqual([])
  })

  test('fits with its text at twice its size, in both languages', async () => {
    const { page } = await toDesk()
    await page.locator('[data-language="es"]').click()
    await page.locator('.step-heading .second').waitFor()
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '200%'
    })
    await say(page, 'hairy, jelly, day 9')
    expect([...(await spilling(page)), ...(await cutOff(page))]).toEqual([])
    await callOn(page, TWO_SURFACES)
    await page.locator('details').evaluateAll(folds => {
      for (const fold of folds) fold.setAttribute('open', '')
    })
    expect([...(await spilling(page)), ...(await cutOff(page))]).toEqual([])
  })
})
