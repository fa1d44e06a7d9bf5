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
  // Evaluated, not added as a script: the page's policy allows no script from outside it.
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe.source)
  const options = manner === 'dark' && checked.has(`light${shown}`) ? COLORS : {}
  const { violations }: axe.AxeResults = await page.evaluate(
    `axe.run(document, ${JSON.stringify(options)})`
  )
  if (violations.length === 0) checked.add(screen)
  return violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`
  )
}
