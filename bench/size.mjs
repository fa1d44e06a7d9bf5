// What comes over the wire for a first screen, compressed: npm run -s size. Fails above a limit.
// Of the folder that JARSIDE_BUILT names, if a whole build of this source stands in it; else of a new one.
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { brotliCompressSync, constants } from 'node:zlib'
import { buildAll, LAST_WRITTEN } from '../tools/build.mjs'
import { filesOfPage } from './files-of-page.mjs'

/** Bytes, so that a kilobyte is 1000 of them: the stricter reading of a kB. */
const LIMITS = { page: 110_000, embed: 37_000 }
const TAGS = ['en', 'es']

process.env.NODE_ENV = 'production'
const built = process.env.JARSIDE_BUILT
const isBuilt = built !== undefined && existsSync(join(built, LAST_WRITTEN))
const folder = isBuilt ? built : mkdtempSync(join(tmpdir(), 'jarside-size-'))
try {
  if (!isBuilt) await buildAll({ outDir: folder, logLevel: 'error' })
  const assets = readdirSync(join(folder, 'assets'))
  const page = filesOfPage(folder, 'index.html').map(row)
  const office = row('office.json')
  for (const tag of TAGS) {
    const first = largest(assets.filter(name => isFirst(name, tag)).map(name => `assets/${name}`))
    const choice = assets.find(name => name.startsWith(`choose-${tag}-`))
    hold(`page, first question, ${tag}`, [...page, office, first], LIMITS.page)
    hold(
      `page, choice of a ferment, ${tag}`,
      [...page, office, row(`assets/${choice}`)],
      LIMITS.page
    )
  }
  const embedded = readdirSync(join(folder, 'embed'))
  const named = start =>
    embedded.filter(name => name.startsWith(start)).map(name => `embed/${name}`)
  const script = row('jarside-walk.js')
  for (const tag of TAGS) {
    const first = largest(
      embedded.filter(name => name.includes(`-first-${tag}-`)).map(name => `embed/${name}`)
    )
    hold(`embed, first question, ${tag}`, [script, office, first], LIMITS.embed)
    const tree = 'kombucha-jar'
    const words = [...new Set(['en', tag])].flatMap(one => named(`${tree}-words-${one}-`))
    const rest = [...named('rest-'), ...named(`${tree}-whole-`), ...named(`${tree}-drawings-`)]
    print(`embed, whole walk, ${tag}`, [script, office, first, ...[...rest, ...words].map(row)])
  }
} finally {
  if (!isBuilt) rmSync(folder, { recursive: true, force: true })
}

function isFirst(name, tag) {
  return name.startsWith('first-') && name.includes(`-${tag}-`)
}

/** Of the same file of every tree the one that takes most. */
function largest(names) {
  const [most] = names.map(row).sort((a, b) => b.bytes - a.bytes)
  if (most === undefined) throw new Error('no tree has a first question')
  return most
}

function row(name) {
  const whole = readFileSync(join(folder, name))
  const params = { [constants.BROTLI_PARAM_QUALITY]: constants.BROTLI_MAX_QUALITY }
  // A font is compressed already.
  const bytes = name.endsWith('.woff2')
    ? whole.length
    : brotliCompressSync(whole, { params }).length
  return { name: name.replace(/-[\w-]{8}(?=\.\w+$)/, ''), bytes, plain: whole.length }
}

function hold(name, rows, limit) {
  const sum = print(name, rows, limit)
  if (sum <= limit) return
  console.error(`${name}: ${sum} bytes, more than ${limit}.`)
  process.exitCode = 1
}

function print(name, rows, limit) {
  const sum = rows.reduce((total, { bytes }) => total + bytes, 0)
  console.log(`\n${name} (brotli 11; before)`)
  for (const { name, bytes, plain } of rows) {
    console.log(`  ${name.padEnd(46)}${`${bytes}`.padStart(7)}  ${plain}`)
  }
  console.log(
    `  ${'together'.padEnd(46)}${`${sum}`.padStart(7)}  ${limit === undefined ? '' : `limit ${limit}`}`
  )
  return sum
}
