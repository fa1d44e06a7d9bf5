/*
 * A copy that has shown its screens is kept a second time, apart from what the worker serves: a newer one
 * that does not start must not be all that a device without a network has. `last-resort/put-back.ts`
 * says the same names; it is in the watchdog, which shares no file with this page.
 */
const PROVEN = 'proven'
const PAGE = 'kiosk.html'
const MARK = 'rolled-back'

const here = (name: string) => new URL(name, location.href).href
const withoutRevision = (url: string) => url.replace(/\?.*$/, '')

/** Whether an earlier copy is shown in place of a newer one that did not start. */
export const isRolledBack = async (): Promise<boolean> =>
  'caches' in globalThis && (await caches.match(here(MARK), { cacheName: PROVEN })) !== undefined

/**
 * Keeps this copy as the proven one, in place of the one before. That stays whole until the new page is
 * in its place, which is written last: a device that is switched off in between has one of the two.
 */
export async function proveCopy(): Promise<void> {
  const registration = await navigator.serviceWorker.getRegistration()
  const name = (await caches.keys()).find(
    one =>
      registration !== undefined && one.includes('precache') && one.endsWith(registration.scope)
  )
  if (name === undefined) return
  const served = await caches.open(name)
  const requests = await served.keys()
  const pages = requests.filter(({ url }) => withoutRevision(url) === here(PAGE))
  const [own, ...others] = await thoseShown(await Promise.all(pages.map(one => served.match(one))))
  // A newer one that waits and names the same scripts is not told apart: whichever is shown next proves itself.
  if (own === undefined || others.length > 0) return

  const proven = await caches.open(PROVEN)
  const before = await proven.match(here(PAGE))
  if (before && (await before.text()) === (await own.clone().text())) return
  const files = requests.filter(({ url }) => url.startsWith(here('assets/')))
  for (const request of files) {
    const kept = await served.match(request)
    const url = withoutRevision(request.url)
    if (kept && (await proven.match(url)) === undefined) await proven.put(url, kept)
  }
  await proven.put(here(PAGE), own)
  await proven.delete(here(MARK))
  const needed = new Set([here(PAGE), ...files.map(({ url }) => withoutRevision(url))])
  for (const { url } of await proven.keys()) {
    if (url.startsWith(here('./')) && !needed.has(url)) await proven.delete(url)
  }
}

/** Of the pages kept those that name every script that this page was begun with. */
async function thoseShown(pages: readonly (Response | undefined)[]): Promise<readonly Response[]> {
  const scripts = [...document.querySelectorAll('script[src]')].flatMap(
    one => one.getAttribute('src') ?? []
  )
  const named = await Promise.all(
    pages.map(async page => {
      const text = (await page?.clone().text()) ?? ''
      return scripts.every(script => text.includes(script))
    })
  )
  return pages.flatMap((page, index) => (page && named[index] ? [page] : []))
}
