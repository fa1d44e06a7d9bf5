import { readFileSync } from 'node:fs'
import { join, posix } from 'node:path'

const IN_HTML = /(?:src|href)="\.\/([^"]+\.(?:js|css|svg))"/g
/** An import that runs before the script does; one that waits has a bracket. */
const IN_SCRIPT = /(?:from|import)\s*["'](\.[^"']+\.js)["']/g
const IN_STYLE = /url\(["']?([^"')]+\.woff2)["']?\)/g
/** What is fetched only where a rare letter is shown, or a text of another script. */
const RARE = /(?:-more|-vietnamese|noto-sans(?:-arabic|-sc-regular|-sc-bold)?)-[\w-]{8}\.woff2$/

/**
 * The built files that a page fetches before it asks for anything by itself: the page, its scripts with
 * what they import, its styles, and the typefaces that every text is set in.
 */
export function filesOfPage(folder, page) {
  const files = new Set()
  const add = file => {
    if (files.has(file) || RARE.test(file)) return
    files.add(file)
    const named = pattern =>
      [...readFileSync(join(folder, file), 'utf8').matchAll(pattern)].map(([, name]) =>
        posix.join(posix.dirname(file), name)
      )
    if (file.endsWith('.html')) named(IN_HTML).forEach(add)
    if (file.endsWith('.js')) named(IN_SCRIPT).forEach(add)
    if (file.endsWith('.css')) named(IN_STYLE).forEach(add)
  }
  add(page)
  return [...files]
}
