import { existsSync, readFileSync } from 'node:fs'
import { createServer } from 'node:http'
import { extname, join } from 'node:path'

/** What a server sends beside a page. */
type Headers = Readonly<Record<string, string>>

const KINDS: Readonly<Record<string, string>> = {
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.html': 'text/html; charset=utf-8',
  '.svg': 'image/svg+xml'
}

/** Somebody's web server on this machine alone: its own pages, and the embed's files under `/jarside/`. */
export async function serveHost(
  built: string,
  pages: (address: string) => Readonly<Record<string, string>>,
  headers: (at: string) => Headers
) {
  let own: Readonly<Record<string, string>> = {}
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://127.0.0.1')
    const page = own[pathname]
    const file = join(built, pathname.replace(/^\/jarside\//, ''))
    if (page !== undefined) {
      const kind = pathname.endsWith('.css') ? 'text/css' : 'text/html; charset=utf-8'
      response.writeHead(200, { 'content-type': kind, ...headers(pathname) }).end(page)
    } else if (pathname.startsWith('/jarside/') && existsSync(file)) {
      const kind = KINDS[extname(file)] ?? 'text/plain'
      response.writeHead(200, { 'content-type': kind, ...headers(pathname) })
      response.end(readFileSync(file))
    } else response.writeHead(pathname === '/favicon.ico' ? 204 : 404).end()
  })
  await new Promise<void>(listening => server.listen(0, '127.0.0.1', listening))
  const at = server.address()
  if (at === null || typeof at === 'string') throw new Error('the host is served nowhere')
  const address = `http://127.0.0.1:${at.port}`
  own = pages(address)
  const close = () => {
    server.closeAllConnections()
    return new Promise<void>(closed => server.close(() => closed()))
  }
  return { address, close }
}

/** A plain page of a made-up county, with something of its own above and below the element. */
export function countyPage({
  lang = 'en',
  style = 'county',
  script = '/jarside/jarside-walk.js',
  element = '<jarside-walk tree="kombucha-jar"><p>Call the office: 555-0110.</p></jarside-walk>'
} = {}): string {
  return `<!doctype html>
<html lang="${lang}">
  <head>
    <meta charset="utf-8">
    <meta name="viewport" content="width=device-width, initial-scale=1">
    <title>Larkspur County</title>
    <link rel="stylesheet" href="/${style}.css">
    <script type="module" src="${script}"></script>
  </head>
  <body>
    <header><strong>Larkspur County</strong></header>
    <main>
      <h1>Food at home</h1>
      <p id="theirs">Does something look odd? <button id="press" type="button">Subscribe</button></p>
      ${element}
    </main>
    <footer><p>Larkspur County, 1 Court Square</p></footer>
  </body>
</html>`
}

/** A style that means no harm. */
export const COUNTY = `:root { color-scheme: light } html { font-size: 62.5% }
body { margin: 0; font: 1.6rem/1.4 sans-serif; background: #fff; color: #222 }
.row { display: flex } main, header, footer { padding: 0 10px } button { background: #1f3f5b; color: #fff }`

/** A style that takes hold of all it can reach: what inherits, what is on top, every box of a kind. */
export const HOSTILE = `html { font-size: 6px }
* { font-size: 40px !important; font-weight: 900 !important; font-style: italic !important;
  line-height: 4 !important; letter-spacing: 0.4em !important; word-spacing: 2em !important;
  text-transform: uppercase !important; text-align: right !important; text-indent: 60px !important;
  text-shadow: 0 0 4px red !important; white-space: nowrap !important; color: rgb(255, 0, 0) !important;
  direction: rtl !important; list-style: square inside !important; cursor: wait !important;
  user-select: none !important; pointer-events: none !important; hyphens: auto !important;
  word-break: break-all !important; border-spacing: 30px !important; caret-color: red !important;
  --ink: red; --paper: red; --jarside-rem: 1px; box-sizing: content-box !important }
div, section, footer { display: none !important }
header { position: relative; z-index: 999999 }
button { all: unset; border-radius: 99px; background: lime; text-transform: uppercase }
input { appearance: none; opacity: 0; width: 1px } h1::before, li::before { content: "!!" }
html, body { pointer-events: auto !important }`
