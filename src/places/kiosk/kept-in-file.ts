import type { CopyNews, KeptCopy } from './keep-on-device.ts'

/** Stands in for the keeper of a copy where the page is its own copy: there is no server, and no newer one. */
export function keepOnDevice({ onKept }: CopyNews): KeptCopy {
  onKept()
  return { take: () => undefined, look: async () => 'unreached' }
}
