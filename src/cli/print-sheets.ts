import { join } from 'node:path'
import type { Browser } from 'playwright-core'
import { fitSheet, SHEET_TYPE } from '../parts/fit-sheet.ts'
import { BadUse } from './bad-use.ts'
import { BROWSER_FLAGS, browserProgram } from './browser.ts'
import { writeWhole } from './write-file.ts'

/** A page to be printed. */
export interface PageToPrint {
  /** Of its files, without an ending. */
  readonly name: string
  readonly html: string
  /** The same as one drawing; null where it is none. */
  readonly svg: string | null
}

/** One page as it was written. */
export interface Printed {
  readonly name: string
  readonly pdf: Buffer
  /** In points; null where its sides were not fitted to anything. */
  readonly size: number | null
  /** A side takes more than the one page that it is given. */
  readonly tooLong: boolean
  /** How many parts had to leave its fullest side. */
  readonly left: number
}

/** Two pages are laid out at once: one browser draws while the other waits for its file. */
const AT_ONCE = 2

/**
 * Prints pages into a folder, several at a time, each as tagged PDF and as HTML; `onPrinted` hears of each.
 *
 * @throws BadUse when there is no browser to print with, or nothing to drive it with.
 */
export async function printPages<P extends PageToPrint>(
  pages: readonly P[],
  folder: string,
  today: Date,
  onPrinted: (page: P, printed: Printed) => void
): Promise<void> {
  const chromium = await chromiumDriver()
  const executablePath = browserProgram()
  if (executablePath === undefined) {
    throw new BadUse(
      'Printing needs Chromium or Chrome: install it, or name it in JARSIDE_BROWSER.'
    )
  }
  const browser = await chromium.launch({ executablePath, args: [...BROWSER_FLAGS] })
  const waiting = [...pages]
  const work = async () => {
    const print = await printer(browser, folder, today)
    for (let page = waiting.shift(); page !== undefined; page = waiting.shift()) {
      onPrinted(page, await print(page))
    }
  }
  try {
    // A tab costs its start: one sheet opens one.
    await Promise.all(Array.from({ length: Math.min(AT_ONCE, pages.length) }, work))
  } finally {
    await browser.close()
  }
}

async function printer(browser: Browser, folder: string, today: Date) {
  const tab = await browser.newPage()
  return async ({ name, html, svg }: PageToPrint): Promise<Printed> => {
    await tab.setContent(html)
    await tab.evaluate(() => document.fonts.ready)
    const sides = []
    for (const side of await tab.locator('html[data-print="standard"] .sheet').all()) {
      // Sent into the page as its text: the function takes nothing along.
      sides.push(await side.evaluate(fitSheet, SHEET_TYPE))
    }
    writeWhole(join(folder, `${name}.html`), await tab.content())
    if (svg !== null) writeWhole(join(folder, `${name}.svg`), svg)
    const printed = await tab.pdf({ tagged: true, outline: true, preferCSSPageSize: true })
    const pdf = datedPdf(printed, today)
    writeWhole(join(folder, `${name}.pdf`), pdf)
    return {
      name,
      pdf,
      size: sides.length === 0 ? null : Math.min(...sides.map(({ size }) => size)),
      tooLong: sides.some(({ fitted }) => !fitted),
      left: Math.max(0, ...sides.map(side => side.left))
    }
  }
}

/** How a PDF says when it was written: by ISO 32000-1, 7.9.4, to the second and with its zone. */
const PDF_DATE = /\(D:\d{14}[+-]\d{2}'\d{2}'\)/g

/** A PDF that says the day it speaks of, not the second at which it was written: the same again is the same bytes. */
function datedPdf(pdf: Buffer, today: Date): Buffer {
  const day = today.toISOString().slice(0, 10).replaceAll('-', '')
  // Its own length stays: the file counts its bytes.
  return Buffer.from(pdf.toString('latin1').replace(PDF_DATE, `(D:${day}000000+00'00')`), 'latin1')
}

/** It is 14 MB and serves this command alone: whoever prints installs it beside jarside. */
async function chromiumDriver() {
  try {
    return (await import('playwright-core')).chromium
  } catch {
    throw new BadUse('Printing needs playwright-core: `npm install playwright-core`.')
  }
}
