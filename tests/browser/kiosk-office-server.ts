import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:http'
import { tmpdir } from 'node:os'
import { extname, join } from 'node:path'

const KINDS: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.json': 'application/json',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json'
}

/** Serves a copy of a built page, which can be changed, until it is switched off. */
export async function officeServer(built: string) {
  const folder = mkdtempSync(join(tmpdir(), 'jarside-kiosk-'))
  cpSync(built, folder, { recursive: true })
  let signIn = false
  let away = false
  const server = createServer((request, response) => {
    if (away) {
      request.destroy()
      return
    }
    const { pathname } = new URL(request.url ?? '/', 'http://kiosk')
    const name = { '/': '/index.html', '/kiosk': '/kiosk.html' }[pathname] ?? pathname
    if (signIn && name === '/office.json') {
      response.setHeader('Content-Type', 'text/html').end('<p>Sign in to the wireless network</p>')
      return
    }
    try {
      const file = readFileSync(join(folder, name))
      response.setHeader('Content-Type', KINDS[extname(name)] ?? 'text/plain').end(file)
    } catch {
      response.writeHead(404).end()
    }
  })
  await new Promise<void>(ready => server.listen(0, '127.0.0.1', ready))
  const at = server.address()
  if (at === null || typeof at === 'string') throw new Error('the copy is served nowhere')
  const change = (name: string, from: RegExp, to: string) => {
    const text = readFileSync(join(folder, name), 'utf8')
    if (!from.test(text)) throw new Error(`${name} is not as this test knows it`)
    writeFileSync(join(folder, name), text.replace(from, to))
  }
  return {
    address: `http://127.0.0.1:${at.port}/`,
    /** Answers for the office's file as a wireless network does that wants a sign-in first. */
    askToSignIn() {
      signIn = true
    },
    /** A newer build: its page is marked, and its worker names the page's new revision. */
    renew() {
      change('kiosk.html', /<body>/, '<body data-build="newer">')
      change(
        'sw.js',
        /(url:"kiosk\.html",revision:")[0-9a-f]+|[0-9a-f]+(",url:"kiosk\.html")/,
        '$1f00d$2'
      )
    },
    /** A newer build, every file of which arrives, and whose first screen never comes. */
    renewBroken() {
      const names = readdirSync(join(folder, 'assets'))
      const script = names.find(name => /^kiosk-.*\.js$/.test(name))
      if (script === undefined) throw new Error('the kiosk has no script')
      writeFileSync(
        join(folder, 'assets/kiosk-broken.js'),
        'throw new Error("this copy is broken")'
      )
      change('kiosk.html', new RegExp(script.replaceAll('.', '\\.')), 'kiosk-broken.js')
      change('kiosk.html', /<body>/, '<body data-build="broken">')
      change(
        'sw.js',
        /\{(?=[^{}]*url:"kiosk\.html")(?=[^{}]*revision:")[^{}]*\}/,
        '{url:"kiosk.html",revision:"b00"},{url:"assets/kiosk-broken.js",revision:null}'
      )
    },
    /** The network is gone, or there again. */
    setAway(gone: boolean) {
      away = gone
      if (gone) server.closeAllConnections()
    },
    async switchOff() {
      server.closeAllConnections()
      await new Promise(done => server.close(done))
      rmSync(folder, { recursive: true, force: true })
    }
  }
}
