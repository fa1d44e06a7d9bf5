/*
 * The copy of the kiosk that last showed all of its screens stands in a cache of its own: see
 * `places/kiosk/prove-copy.ts`, which says the same names. The worker serves its files (`kiosk.config.ts`).
 */
const PROVEN = 'proven'
const PAGE = 'kiosk.html'
const MARK = 'rolled-back'

const here = (name: string) => new URL(name, location.href).href
const withoutRevision = (url: string) => url.replace(/\?.*$/, '')

/** Whether a proven copy is kept. */
export const isProvenKept = async (): Promise<boolean> => (await keptOf(PAGE)) !== undefined

/** Whether the proven copy is shown in place of a newer one that did not start. */
export const isRolledBack = async (): Promise<boolean> => (await keptOf(MARK)) !== undefined

/** Whether the copy that the worker serves is another than the proven one. */
export async function isUnproven(): Promise<boolean> {
  const proven = await keptOf(PAGE)
  const served = proven && (await servedPage())
  if (proven === undefined || served === undefined) return false
  return (await served.text()) !== (await proven.text())
}

/** What is kept beside what the worker serves; nothing where a browser keeps nothing, as of a file. */
async function keptOf(name: string): Promise<Response | undefined> {
  try {
    return await caches.match(here(name), { cacheName: PROVEN })
  } catch {
    return undefined
  }
}

/** Puts the proven copy in the place of the one that the worker serves, and marks it where that is another. */
export async function putBack(): Promise<void> {
  const proven = await caches.open(PROVEN)
  const isOther = await isUnproven()
  for (const name of await precaches()) {
    const served = await caches.open(name)
    for (const request of await served.keys()) {
      const url = withoutRevision(request.url)
      if (url !== here(PAGE) && !url.startsWith(here('assets/'))) continue
      const kept = await proven.match(url)
      if (kept) await served.put(request, kept)
    }
  }
  if (isOther) await proven.put(here(MARK), new Response(''))
}

async function servedPage(): Promise<Response | undefined> {
  for (const name of await precaches()) {
    const page = await caches.match(here(PAGE), { cacheName: name, ignoreSearch: true })
    if (page) return page
  }
  return undefined
}

/** The caches from which the workers of this page serve it. */
async function precaches(): Promise<readonly string[]> {
  const registrations = (await navigator.serviceWorker?.getRegistrations()) ?? []
  const scopes = registrations
    .map(({ scope }) => scope)
    .filter(scope => location.href.startsWith(scope))
  const names = await caches.keys()
  return names.filter(name => scopes.some(scope => name.endsWith(scope)))
}
