import { type Browser, chromium } from 'playwright-core'
import { inject } from 'vitest'
import { BROWSER_FLAGS } from '../../tools/browser.mjs'

let running: Promise<Browser> | undefined

/**
 * The browser of this worker, for all of its files: starting one takes longer than many a test. Nobody
 * closes it; it ends when the worker does, with which it loses its pipe.
 *
 * @throws Error with what to install, when there is no browser.
 */
export async function workerBrowser(): Promise<Browser> {
  const browser = await running
  if (!browser?.isConnected()) running = launched()
  return running as Promise<Browser>
}

/** A browser of the caller's own, who closes it. */
export function launched(...flags: readonly string[]): Promise<Browser> {
  const found = inject('browser')
  if ('missing' in found) throw new Error(found.missing)
  return chromium.launch({ executablePath: found.program, args: [...BROWSER_FLAGS, ...flags] })
}
