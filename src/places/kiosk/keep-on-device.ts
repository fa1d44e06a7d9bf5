import { registerSW } from 'virtual:pwa-register'

const HOUR = 3_600_000

/** What a kiosk learns of its own copy. */
export interface CopyNews {
  /** Everything is on this device: it works without a network. */
  onKept(): void
  /** A newer copy is on this device, and waits to be taken. */
  onNewer(): void
  /** The server was reached. */
  onReached(): void
}

/** What a look for a newer copy came to; `refused`: a newer one arrived broken, and this one stays. */
export type Looked = 'same' | 'newer' | 'refused' | 'unreached'

export interface KeptCopy {
  /** Takes the newer copy that waits. */
  take(): void
  /** Looks for a newer copy now. */
  look(): Promise<Looked>
}

/** Keeps the kiosk on its device and looks for a newer copy at once and then every hour. */
export function keepOnDevice({ onKept, onNewer, onReached }: CopyNews): KeptCopy {
  // Without https there is no keeping: the start screen says that it is not kept.
  if (!('serviceWorker' in navigator)) {
    return { take: () => undefined, look: async () => 'unreached' }
  }
  const workers = navigator.serviceWorker
  workers.ready.then(({ active }) => {
    const tell = () => {
      if (active?.state !== 'activated') return
      onKept()
      // Before there is a worker that works, there is none to look past.
      void look()
    }
    active?.addEventListener('statechange', tell)
    tell()
  })
  // Else a tablet that runs out of room may throw the copy away.
  navigator.storage?.persist?.().catch(() => false)
  async function look(): Promise<Looked> {
    try {
      const registration = await workers.getRegistration()
      await registration?.update()
      if (registration === undefined) return 'unreached'
      onReached()
      if (registration.waiting) return 'newer'
      return registration.installing ? settled(registration.installing) : 'same'
    } catch {
      // Days without a network are usual: a look that fails is made again an hour later.
      return 'unreached'
    }
  }
  const activate = registerSW({
    immediate: true,
    onNeedRefresh: onNewer,
    onRegisteredSW() {
      setInterval(look, HOUR)
    },
    onRegisterError: () => undefined
  })
  return {
    look,
    take() {
      // Also where this page was opened before there was any worker, which the register does not count.
      workers.addEventListener('controllerchange', () => location.reload(), { once: true })
      activate(true)
    }
  }
}

/** What becomes of a copy that is arriving: one file that is missing or damaged, and none of it is kept. */
const settled = (worker: ServiceWorker): Promise<Looked> =>
  new Promise(done => {
    const tell = () => {
      if (worker.state === 'redundant') done('refused')
      else if (worker.state !== 'installing') {
        done(worker.state === 'installed' ? 'newer' : 'same')
      }
    }
    worker.addEventListener('statechange', tell)
    tell()
  })
