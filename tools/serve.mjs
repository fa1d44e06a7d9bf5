import { install, root } from '../.ci/install.mjs'
import { buildAll } from './build.mjs'

/**
 * Installs what is missing, builds the page and serves it to this machine alone until Ctrl-C.
 * `mode` and `at`: which page is built, and its file where that is not the first one. `places`: what else
 * is served beside it, by name.
 */
export async function serve({ mode = 'production', at = '', name, places = {} }) {
  const failed = install()
  if (failed) return failed
  // Not before: it has only just been installed.
  const { build, preview } = await import('vite')
  try {
    if (mode === 'production') await buildAll()
    else await build({ root, mode, logLevel: 'warn' })
  } catch (error) {
    process.stderr.write(`The page cannot be built. ${error.message}\n`)
    return 1
  }
  const server = await preview({ root, mode, logLevel: 'warn' })
  const { port } = server.httpServer.address()
  const home = `http://127.0.0.1:${port}/`
  process.stdout.write(`${name}: ${home}${at}  (Ctrl-C stops it)\n`)
  for (const [place, file] of Object.entries(places)) {
    process.stdout.write(`${place.padEnd(name.length)}: ${home}${file}\n`)
  }
  await stopped()
  // A browser keeps its connections open: they must not keep the server.
  server.httpServer.closeAllConnections?.()
  await server.close()
  return 0
}

function stopped() {
  return new Promise(stop => {
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.once(signal, stop)
  })
}
