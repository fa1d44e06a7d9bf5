import type { Page } from 'playwright-core'

/** Shows the page as its printer gets it, and leaves it so. */
export async function toPrint(page: Page): Promise<void> {
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')))
  await page.emulateMedia({ media: 'print' })
}
