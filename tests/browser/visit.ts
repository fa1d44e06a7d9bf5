import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core'
import { afterEach, beforeAll, expect, inject } from 'vitest'
import { workerBrowser } from './worker-browser.ts'

/** A page opened by somebody, with everything that went wrong in it and everything it asked for. */
export interface Visit {
  readonly page: Page
  readonly context: BrowserContext
  readonly faults: string[]
  readonly requests: string[]
}

/** Where the page under test is served. */
export const address = () => inject('address')

/**
 * Opens pages in the worker's browser. After each test every page is closed, and the test
 * fails if any of them reported an error, unless the test emptied `faults` itself.
 *
 * @throws Error with what to install, when there is no browser.
 */
export function useVisits() {
  let browser: Browser | undefined
  let visits: Visit[] = []

  beforeAll(async () => {
    browser = await workerBrowser()
  })

  afterEach(async () => {
    const ended = visits
    visits = []
    await Promise.all(ended.map(({ context }) => context.close()))
    expect(ended.flatMap(({ faults }) => faults)).toEqual([])
  })

  return async function visit(
    options: BrowserContextOptions = {},
    {
      hash = '',
      before,
      shows = 'h1'
    }: {
      hash?: string
      before?: (page: Page) => Promise<unknown>
      /** What is there once the page has opened. */
      shows?: string
    } = {}
  ): Promise<Visit> {
    if (browser === undefined) throw new Error('the browser is not there yet')
    const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, ...options })
    context.setDefaultTimeout(240_000)
    const page = await context.newPage()
    const opened = { page, context, ...listenTo(page) }
    visits.push(opened)
    await before?.(page)
    await page.goto(address() + hash)
    await page.locator(shows).first().waitFor()
    return opened
  }
}

function listenTo(page: Page) {
  const faults: string[] = []
  const requests: string[] = []
  page.on('console', message => {
    if (message.type() === 'error' || message.type() === 'warning') faults.push(message.text())
  })
  page.on('pageerror', error => faults.push(error.message))
  page.on('request', request => requests.push(request.url()))
  return { faults, requests }
}
