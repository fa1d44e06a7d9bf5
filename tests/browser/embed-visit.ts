import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, expect, inject } from 'vitest'
import { COUNTY, countyPage, HOSTILE, serveHost } from './embed-host.ts'
import { launched, workerBrowser } from './worker-browser.ts'

const TWO = ['lang="en"', 'lang="es"'].map(
  lang => `<jarside-walk tree="kombucha-jar" ${lang}></jarside-walk>`
)

const TRIED = `<jarside-walk tree="kombucha-jar"></jarside-walk>
<script type="module" src="/jarside/jarside-self-test.js"></script>`

/** The pages of a county that puts the embed to use, and to trial. */
const PAGES = (abroad: string) => ({
  '/county.css': COUNTY,
  '/dark.css': COUNTY.replace('light', 'dark').replace('#fff', '#14181c').replace('#222', '#eee'),
  '/hostile.css': HOSTILE,
  '/county': countyPage(),
  '/spanish': countyPage({ lang: 'es-MX' }),
  '/dark': countyPage({ style: 'dark' }),
  '/hostile': countyPage({ style: 'hostile' }),
  '/hostile-spanish': countyPage({ style: 'hostile', lang: 'es' }),
  '/two': countyPage({ element: TWO.join('\n') }),
  // As a content system names scripts, in a row of boxes as it sets them.
  '/versioned': countyPage({
    script: '/jarside/jarside-walk.js?ver=6.4',
    element: '<div class="row"><jarside-walk tree="kombucha-jar"></jarside-walk></div>'
  }),
  '/unknown': countyPage({ element: '<jarside-walk tree="toaster"></jarside-walk>' }),
  '/abroad': countyPage({ script: `${abroad}/jarside/jarside-walk.js` }),
  // A webmaster's line beneath the two that show the questions.
  '/tried': countyPage({ element: `<div class="row">${TRIED}</div>` }),
  '/tried-strictly': countyPage({ element: TRIED }),
  '/tried-hidden': countyPage({ style: 'hidden', element: `<div class="row">${TRIED}</div>` }),
  '/hidden.css': `${COUNTY} .row { display: none }`,
  '/frame': countyPage({
    element: `<iframe title="Kombucha" width="600" height="500" src="/jarside/frame.html?tree=kombucha-jar&amp;lang=es"></iframe>`
  })
})

/**
 * Opens a county's pages, sent under a strict policy, in one browser for a test file. After each test
 * every page is closed, and the test fails if any reported an error or broke the policy.
 */
export function useEmbeds(...flags: string[]) {
  let browser: Browser | undefined
  let served: Awaited<ReturnType<typeof serveHost>>[] = []
  let opened: { page: Page; faults: string[] }[] = []

  beforeAll(async () => {
    const abroad = await serveHost(
      inject('built'),
      () => ({}),
      () => ({ 'access-control-allow-origin': '*' })
    )
    const policies: Readonly<Record<string, string>> = {
      '/abroad': `default-src 'self' ${abroad.address}`,
      '/tried-strictly': "default-src 'none'; script-src 'self'"
    }
    const home = await serveHost(
      inject('built'),
      () => PAGES(abroad.address),
      at => ({ 'content-security-policy': policies[at] ?? "default-src 'self'" })
    )
    served = [home, abroad]
    browser = flags.length > 0 ? await launched(...flags) : await workerBrowser()
  })

  afterEach(async () => {
    const ended = opened
    opened = []
    await Promise.all(ended.map(({ page }) => page.context().close()))
    expect(ended.flatMap(({ faults }) => faults)).toEqual([])
  })

  afterAll(async () => {
    if (flags.length > 0) await browser?.close()
    await Promise.all(served.map(({ close }) => close()))
  })

  return async function open(
    at: string,
    {
      before,
      ...options
    }: BrowserContextOptions & { before?: (page: Page) => Promise<unknown> } = {}
  ) {
    if (browser === undefined) throw new Error('the browser is not there yet')
    const context = await browser.newContext({ viewport: { width: 700, height: 800 }, ...options })
    context.setDefaultTimeout(240_000)
    const page = await context.newPage()
    const faults: string[] = []
    const requests: string[] = []
    page.on('console', message => {
      if (message.type() !== 'log') faults.push(message.text())
    })
    page.on('pageerror', error => faults.push(error.message))
    page.on('request', request => requests.push(request.url()))
    await page.addInitScript(() =>
      addEventListener('securitypolicyviolation', ({ blockedURI, violatedDirective }) =>
        console.error(`the policy was broken: ${violatedDirective} by ${blockedURI}`)
      )
    )
    opened.push({ page, faults })
    await before?.(page)
    const [home = '', abroad = ''] = served.map(({ address }) => address)
    await page.goto(home + at)
    return { page, faults, requests, home, abroad }
  }
}

/** What reaches past the sides of any element of ours, and whether the page scrolls sideways. */
export const spillingInside = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement
    const spilt = [...document.querySelectorAll('jarside-walk')].flatMap(host => {
      const box = host.getBoundingClientRect()
      return [...(host.shadowRoot?.querySelectorAll('*') ?? [])]
        .filter(one => {
          // The string of answers scrolls by itself, and what is for the ear alone has no place.
          if (one.closest('.string ol, .visually-hidden, svg')) return false
          const { left, right, width } = one.getBoundingClientRect()
          return width > 0 && (right > box.right + 0.5 || left < box.left - 0.5)
        })
        .map(
          one =>
            `${one.tagName}.${one.className} reaches past the side: ${one.textContent?.slice(0, 60)}`
        )
    })
    return scrollWidth > clientWidth ? [`scrolls to ${scrollWidth}`, ...spilt] : spilt
  })
