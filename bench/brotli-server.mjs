import { readdirSync, readFileSync } from 'node:fs'
import { createServer } from 'node:http'
import { extname, join, relative, sep } from 'node:path'
import { brotliCompressSync, constants } from 'node:zlib'

const KINDS = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2'
}

/** Serves a folder to this machine alone, compressed beforehand as a static host would; gives its address. */
export async function serveBrotli(folder) {
  const files = new Map(filesIn(folder))
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://127.0.0.1')
    const file = files.get(pathname === '/' ? '/index.html' : pathname)
    response.writeHead(file === undefined ? 404 : 200, file?.headers ?? {})
    response.end(file?.body)
  })
  await new Promise(listening => server.listen(0, '127.0.0.1', listening))
  const close = () =>
    new Promise(closed => {
      server.close(closed)
      server.closeAllConnections()
    })
  return { address: `http://127.0.0.1:${server.address().port}/`, close }
}

function filesIn(folder) {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  return names
    .filter(name => extname(name) in KINDS)
    .map(name => {
      const whole = readFileSync(join(folder, name))
      // A font is compressed already: brotli would only add to it.
      const packed = extname(name) !== '.woff2'
      const body = packed ? compressed(whole) : whole
      const headers = {
        'content-type': KINDS[extname(name)],
        'content-length': body.length,
        ...(packed && { 'content-encoding': 'br' })
      }
      return [`/${relative(folder, join(folder, name)).split(sep).join('/')}`, { body, headers }]
    })
}

const compressed = whole =>
  brotliCompressSync(whole, {
    params: {
      [constants.BROTLI_PARAM_QUALITY]: constants.BROTLI_MAX_QUALITY,
      [constants.BROTLI_PARAM_SIZE_HINT]: whole.length
    }
  })
