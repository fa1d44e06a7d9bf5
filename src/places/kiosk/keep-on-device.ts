import { registerSW } from 'virtual:pwa-register'

const HOUR = 3_600_000

/** What a kiosk learns of its own copy. */
export interface CopyNews {
  /** Everything is on this device: it works without a network. */
  onKept(): void
  /** A newer copy is on this device, and waits to be taken. */
  onNewer(): void
}

/** Keeps the kiosk on its device and looks for a newer copy every hour; gives back how to take that. */
export function keepOnDevice({ onKept, onNewer }: CopyNews): () => void {
  // Without https there is no keeping: the start screen says that it is not kept.
  if (!('serviceWorker' in navigator)) return () => undefined
  const workers = navigator.serviceWorker
  workers.ready.then(({ active }) => {
    const tell = () => active?.state === 'activated' && onKept()
    active?.addEventListener('statechange', tell)
    tell()
  })
  const activate = registerSW({
    immediate: true,
    onNeedRefresh: onNewer,
    onRegisteredSW(_, registration) {
      // Days without a network are usual: a look that fails is made again an hour later.
      const look = () => registration?.update().catch(() => undefined)
      setInterval(look, HOUR)
    },
    onRegisterError: () => undefined
  })
  return () => {
    // Also where this page was opened before there was any worker, which the register does not count.
    workers.addEventListener('controllerchange', () => location.reload(), { once: true })
    activate(true)
  }
}
