import { buildAll } from './build.mjs'
import { install, root } from './install.mjs'

/**
 * Installs what is missing, builds the page and serves it to this machine alone until Ctrl-C.
 * `mode` and `at`: which page is built, and its file where that is not the first one.
 */
export async function serve({ mode = 'production', at = '', name }) {
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
  process.stdout.write(`${name}: http://127.0.0.1:${port}/${at}  (Ctrl-C stops it)\n`)
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
