import { execFileSync } from 'node:child_process'
import { readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import type { Plugin } from 'vite'
import { VitePWA } from 'vite-plugin-pwa'

const root = import.meta.dirname
/** What people read here is in these folders; the rest is how it is shown. */
const CONTENT = ['trees', 'shared', 'locales']

/** What the kiosk says of itself: its version, and the day its content last changed. */
export const kioskEdition = () => ({
  __JARSIDE_VERSION__: JSON.stringify(
    JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')).version
  ),
  __JARSIDE_CONTENT_DATE__: JSON.stringify(committedOn() ?? changedOn())
})

/** The worker that keeps every built file on the kiosk's device. The page of the kiosk asks for it itself. */
export const kioskWorker = (): Plugin[] =>
  VitePWA({
    registerType: 'prompt',
    injectRegister: false,
    // Named by kiosk.html alone (public/kiosk.webmanifest): the other pages are not to be installed.
    manifest: false,
    // The beginning of an address: kiosk.html and /kiosk, and never the page beside it or an embed.
    scope: './kiosk',
    workbox: {
      globPatterns: ['**/*.{html,js,css,woff2,svg,png,webmanifest}'],
      // The first visit is served by the worker too, so that the office's numbers are kept from then on.
      clientsClaim: true,
      cleanupOutdatedCaches: true,
      inlineWorkboxRuntime: true,
      runtimeCaching: [
        {
          // Files of the copy that was put back for a newer one that did not start: see last-resort/put-back.ts.
          urlPattern: ({ url, sameOrigin }) => sameOrigin && url.pathname.includes('/assets/'),
          handler: 'CacheFirst',
          options: { cacheName: 'proven', plugins: [{ cacheWillUpdate: async () => null }] }
        },
        {
          urlPattern: ({ url, sameOrigin }) => sameOrigin && url.pathname.endsWith('/office.json'),
          handler: 'NetworkFirst',
          options: {
            cacheName: 'office',
            networkTimeoutSeconds: 3,
            // A sign-in page of somebody's wireless network, or an error, never replaces the numbers kept.
            plugins: [
              {
                fetchDidSucceed: async ({ response }) => {
                  const kind = response.headers.get('content-type') ?? ''
                  if (response.ok && !response.redirected && kind.includes('json')) {
                    const file = await response.clone().json()
                    if (file?.office && file.country) return response
                  }
                  throw new Error('this is no office file')
                }
              }
            ]
          }
        }
      ]
    }
  })

/** The day of the last commit that touched the content; null where there is no history to ask. */
function committedOn(): string | null {
  try {
    const args = ['log', '-1', '--format=%cs', '--', ...CONTENT]
    const day = execFileSync('git', args, { cwd: root, stdio: ['ignore', 'pipe', 'ignore'] })
    return day.toString().trim() || null
  } catch {
    return null
  }
}

/** The day on which the newest file of the content was written. */
function changedOn(): string {
  const times = CONTENT.flatMap(folder =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' }).map(
      file => statSync(join(root, folder, file)).mtimeMs
    )
  )
  return new Date(Math.max(...times)).toISOString().slice(0, 10)
}
