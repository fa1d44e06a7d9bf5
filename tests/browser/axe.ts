import axe from 'axe-core'
import type { Page } from 'playwright-core'

const checked = new Set<string>()

const COLORS: axe.RunOptions = {
  runOnly: { type: 'rule', values: ['color-contrast', 'link-in-text-block'] }
}

/**
 * What axe finds wrong on the screen shown, each as its rule and the elements it is about.
 * A screen that was found right before, to the letter, is not looked at again; in the dark one that was
 * found right in the light is looked at for its colors alone, which are all that differ.
 */
export async function axeFaults(page: Page, manner = 'light'): Promise<readonly string[]> {
  const shown = await page.evaluate(
    () => `${innerWidth} ${document.title}${document.body.innerHTML}`
  )
  const screen = manner + shown
  if (checked.has(screen)) return []
  const options = manner === 'dark' && checked.has(`light${shown}`) ? COLORS : {}
  const violations = await violationsOn(page, options)
  if (violations.length === 0) checked.add(screen)
  return violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`
  )
}

/** By its name the browser gives the same world again, as long as the page is the same. */
const WORLD = 'axe'

/**
 * Runs axe beside the page's own scripts, in a world of its own: there the page's policy does not hold it
 * up, and a clock that a test has stopped goes on. Its source takes as long to read as a screen to look at,
 * so it is given to a page once.
 */
async function violationsOn(page: Page, options: axe.RunOptions): Promise<axe.Result[]> {
  const session = await page.context().newCDPSession(page)
  try {
    const { frameTree } = await session.send('Page.getFrameTree')
    const { executionContextId: contextId } = await session.send('Page.createIsolatedWorld', {
      ...{ frameId: frameTree.frame.id, worldName: WORLD }
    })
    const evaluated = async (expression: string): Promise<string> => {
      const { result, exceptionDetails } = await session.send('Runtime.evaluate', {
        ...{ expression, contextId, awaitPromise: true, returnByValue: true }
      })
      if (exceptionDetails) throw new Error(exceptionDetails.exception?.description ?? 'axe failed')
      return result.value
    }
    if ((await evaluated('typeof axe')) === 'undefined') await evaluated(`${axe.source}; ''`)
    const run = JSON.stringify({ ...options, resultTypes: ['violations'] })
    return JSON.parse(
      await evaluated(
        `axe.run(document, ${run}).then(({ violations }) => JSON.stringify(violations))`
      )
    )
  } finally {
    await session.detach()
  }
}
