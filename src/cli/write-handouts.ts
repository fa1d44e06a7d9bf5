import { join } from 'node:path'
import { type HandoutOf, handoutHtml } from '../paper/handout.tsx'
import { fitSheet, SHEET_TYPE } from '../parts/fit-sheet.ts'
import { BadUse } from './bad-use.ts'
import { BROWSER_FLAGS, browserProgram } from './browser.ts'
import { makeFolder, writeWhole } from './write-file.ts'

/** One handout as it was written: its files' name, and whether it fits on one side. */
export interface Written {
  readonly name: string
  readonly fitted: boolean
}

/**
 * Writes handouts into a folder, one by one, each as tagged PDF and as HTML.
 *
 * @throws BadUse when there is no browser to print with, or nothing to drive it with.
 */
export async function* writeHandouts(
  handouts: readonly HandoutOf[],
  folder: string
): AsyncGenerator<Written> {
  const chromium = await chromiumDriver()
  const executablePath = browserProgram()
  if (executablePath === undefined) {
    throw new BadUse(
      'Printing needs Chromium or Chrome: install it, or name it in JARSIDE_BROWSER.'
    )
  }
  makeFolder(folder)
  const browser = await chromium.launch({ executablePath, args: [...BROWSER_FLAGS] })
  try {
    const page = await browser.newPage()
    for (const handout of handouts) {
      const { tree, verdict, language, paper } = handout
      const name = `${tree.id}-${verdict}-${language}-${paper}`
      await page.setContent(handoutHtml(handout))
      await page.evaluate(() => document.fonts.ready)
      const { size, fitted } = await page
        .locator('.sheet')
        // Sent into the page as its text: the function takes nothing along.
        .evaluate(fitSheet, SHEET_TYPE)
      writeWhole(join(folder, `${name}.html`), handoutHtml(handout, size))
      const pdf = await page.pdf({ tagged: true, outline: true, preferCSSPageSize: true })
      writeWhole(join(folder, `${name}.pdf`), pdf)
      yield { name, fitted }
    }
  } finally {
    await browser.close()
  }
}

/** It is 14 MB and serves this command alone: whoever prints installs it beside jarside. */
async function chromiumDriver() {
  try {
    return (await import('playwright-core')).chromium
  } catch {
    throw new BadUse('Printing needs playwright-core: `npm install playwright-core`.')
  }
}
