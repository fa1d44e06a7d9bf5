import type { Page } from 'playwright-core'

export const KIOSK = { hash: 'kiosk' }
export const UPRIGHT = { width: 1080, height: 1920 }
/** Of ten inches, as they are sold most. */
export const SMALL = { width: 800, height: 1280 }
export const LYING = { width: 1920, height: 1080 }

/** Touches a language on the start screen: the choice of a ferment follows. */
export async function touchLanguage(page: Page, tag = 'en'): Promise<void> {
  await page.locator(`.start [data-language="${tag}"]`).click()
  await page.locator('[data-tree]').first().waitFor()
}

/** The verdicts on the screen; the sheet for the printer says them again. */
export async function verdictsShown(page: Page): Promise<readonly (string | null)[]> {
  const cards = await page.locator('.screen [data-verdict]').all()
  return Promise.all(cards.map(card => card.getAttribute('data-verdict')))
}

/** What can be pressed on less than 64 by 64 pixels; a field counts with its label. */
export const smallForFingers = (page: Page): Promise<readonly string[]> =>
  page.locator('a, button, summary, input').evaluateAll(targets =>
    targets.flatMap(target => {
      const labels = target instanceof HTMLInputElement ? [...(target.labels ?? [])] : []
      const boxes = [target, ...labels].map(one => one.getBoundingClientRect())
      const shown = boxes.some(({ width }) => width > 0)
      const fits = boxes.some(({ width, height }) => width >= 63.5 && height >= 63.5)
      const [{ width, height } = { width: 0, height: 0 }] = boxes
      return shown && !fits ? [`${target.outerHTML.slice(0, 90)} ${width}×${height}`] : []
    })
  )

/** Everything in which a browser could keep something; of what is cached, all but the page's own files. */
export const keptBy = (page: Page) =>
  page.evaluate(async () => {
    const cached = await Promise.all(
      (await caches.keys()).map(async name => (await caches.open(name)).keys())
    )
    const OWN_FILE = /^\/(assets\/)?[\w.-]+(\?__WB_REVISION__=\w+)?$/
    return {
      // Beside the counts of outcomes, which name nobody.
      local: Object.keys(localStorage).filter(key => key !== 'jarside-kiosk-counts'),
      session: sessionStorage.length,
      cookies: document.cookie,
      databases: (await indexedDB.databases()).map(({ name }) => name),
      cached: cached
        .flat()
        .map(({ url }) => url.replace(location.origin, ''))
        .filter(url => !OWN_FILE.test(url)),
      address: location.href.replace(location.origin, ''),
      entries: history.length
    }
  })
