/*
 * Runs beside the page's own script and shares no file with it, so that it works where that one does not.
 * It looks whether a first screen came; if not, a kiosk puts back the copy that last showed one, and
 * else, once, it throws away what the browser kept of the page and loads it anew. The layer with the
 * numbers stands in the page by itself, whatever happens here.
 */
import { nextMend } from './next-mend.ts'
import { isProvenKept, isRolledBack, isUnproven, putBack } from './put-back.ts'

const MINUTE = 60_000
const PATIENCE = 10_000
const layer = document.getElementById('last-resort')
const isKiosk = document.documentElement.classList.contains('kiosk')
const isUnshown = () => layer?.hidden === false
let mending = false
let touches = 0

/** Kept with this entry of the history: it outlives a reload, and nothing of it is in the address. */
const entry = (): object => {
  const state: unknown = history.state
  return typeof state === 'object' && state !== null ? state : {}
}
const wasMended = (): boolean => {
  const state = entry()
  return 'mended' in state && state.mended === true
}
const wasRestored = (): boolean => {
  const state = entry()
  return 'restored' in state && state.restored === true
}
const setMended = (mended: boolean, restored = false) =>
  history.replaceState({ ...entry(), mended, restored }, '')

// A script that cannot be had, read or run says so. One that says nothing may still be waiting for a slow network.
for (const fault of ['error', 'unhandledrejection']) addEventListener(fault, mendUnshown, true)
addEventListener('load', () => setTimeout(mendUnshown, PATIENCE))

function mendUnshown() {
  if (isUnshown()) void mend(isKiosk)
}

// Nobody is there to load a kiosk again; elsewhere whoever reads the layer decides.
addEventListener('jarside-trouble', async () => {
  if (!isKiosk) return
  if (!wasRestored() && (await isUnproven())) return restore()
  if (wasMended()) return
  // Without a network the copy on the device is all there is; it has shown screens before. And what the
  // server has may be the copy that did not start.
  const isAll = navigator.serviceWorker?.controller && !navigator.onLine
  if (isAll || (await isRolledBack())) reloadOnce()
  // The proven copy is the one whose screen threw.
  else void mend(false)
})

// A part of the copy is broken, and the page stands untouched: it is mended only if that stays so.
addEventListener('jarside-copy-broken', async () => {
  const asked = touches
  if (await isRolledBack()) return
  if (!wasRestored() && (await isUnproven()) && asked === touches) return restore()
  if (!wasMended() && (await isReached()) && asked === touches) await renew()
})

for (const input of ['pointerdown', 'keydown']) {
  addEventListener(
    input,
    () => {
      touches += 1
      // Somebody uses the page again: should it fail once more, it may be mended once more.
      if (layer?.hidden && (wasMended() || wasRestored())) setMended(false)
    },
    true
  )
}

layer?.querySelector('.last-resort-again')?.addEventListener('click', event => {
  event.preventDefault()
  void again()
})

async function again() {
  // A browser's own word for "no network" would take the numbers off the screen.
  if (navigator.serviceWorker?.controller || (await isReached())) {
    setMended(false)
    location.reload()
    return
  }
  const offline = layer?.querySelector<HTMLElement>('.last-resort-offline')
  if (offline) offline.hidden = false
}

async function mend(mayRestore: boolean): Promise<void> {
  if (mending) return
  mending = true
  const tried = { restored: wasRestored(), mended: wasMended() }
  const proven = mayRestore && (await isProvenKept().catch(() => false))
  let next = nextMend({ ...tried, proven, reached: false })
  while (next === 'wait') {
    next = nextMend({ ...tried, proven, reached: await isReached() })
    if (next === 'wait') await networkOrMinute()
  }
  // The first screen may have come after all.
  if (isUnshown() && next === 'restore') await restore()
  else if (isUnshown() && next === 'renew') await renew()
  mending = false
}

async function restore(): Promise<void> {
  await putBack().catch(() => undefined)
  setMended(wasMended(), true)
  location.reload()
}

async function renew(): Promise<void> {
  await dropCopies()
  await renewFiles()
  reloadOnce()
}

function reloadOnce() {
  setMended(true, wasRestored())
  location.reload()
}

/** Whether this very page can be had from its server now; a sign-in page of a network is not this page. */
async function isReached(): Promise<boolean> {
  try {
    const answer = await fetch(`${location.pathname}?fresh=${Date.now()}`, {
      cache: 'no-store',
      signal: AbortSignal.timeout(PATIENCE)
    })
    return answer.ok && (await answer.text()).includes('id="last-resort"')
  } catch {
    return false
  }
}

const networkOrMinute = () =>
  new Promise<void>(go => {
    addEventListener('online', () => go(), { once: true })
    setTimeout(go, MINUTE)
  })

/** Throws away the program kept on this device, and its keeper; the office's numbers stay. */
async function dropCopies(): Promise<void> {
  // Put back already, or none: nothing would serve it without a keeper.
  if (isKiosk) await globalThis.caches?.delete('proven')
  const registrations = (await navigator.serviceWorker?.getRegistrations()) ?? []
  for (const registration of registrations) {
    if (!location.href.startsWith(registration.scope)) continue
    const names = (await caches.keys()).filter(name => name.endsWith(registration.scope))
    await Promise.all(names.map(name => caches.delete(name)))
    await registration.unregister()
  }
}

/** Asks the server for every file of this page anew, past whatever the browser keeps of them. */
async function renewFiles(): Promise<void> {
  const loaded = performance.getEntriesByType('resource').map(({ name }) => name)
  const named = [...document.querySelectorAll('script')].map(({ src }) => src)
  const own = new Set([...loaded, ...named].filter(url => url.startsWith(location.origin)))
  await Promise.allSettled(
    [...own].map(url => fetch(url, { cache: 'reload', signal: AbortSignal.timeout(PATIENCE) }))
  )
}
