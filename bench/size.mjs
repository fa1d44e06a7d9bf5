// What the embed costs over the wire: npm run -s size. Fails above the limit.
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { brotliCompressSync, constants } from 'node:zlib'
import { root } from '../.ci/install.mjs'
import { buildEmbed } from '../tools/build.mjs'

/** Bytes, so that a kilobyte is 1000 of them: the stricter reading of 40 kB. */
const LIMIT = 40_000
const TREE = 'kombucha-jar'
const TAGS = ['en', 'es']

process.env.NODE_ENV = 'production'
const folder = mkdtempSync(join(tmpdir(), 'jarside-size-'))
try {
  await buildEmbed({ outDir: folder, logLevel: 'error' })
  const names = readdirSync(join(folder, 'embed'))
  const built = start => `embed/${names.find(name => name.startsWith(start))}`
  const script = row('script, with its style', join(folder, 'jarside-walk.js'))
  const office = row('office pack', join(root, 'public/office.json'))
  const rest = [
    row('script and style of the rest', join(folder, built('rest-'))),
    row('whole tree', join(folder, built(`${TREE}-whole-`))),
    row('drawings', join(folder, built(`${TREE}-drawings-`)))
  ]
  const words = Object.fromEntries(
    TAGS.map(tag => [tag, row(`words, ${tag}`, join(folder, built(`${TREE}-words-${tag}-`)))])
  )
  for (const tag of TAGS) {
    const first = row('first question', join(folder, built(`${TREE}-first-${tag}-`)))
    const needed = [script, first, office]
    print(`first question, ${tag}`, needed)
    const spoken = [...new Set(['en', tag])].map(one => words[one])
    print(`whole walk, ${tag}`, [...needed, ...rest, ...spoken])
    if (sum(needed) > LIMIT) {
      console.error(`The first question in ${tag} takes ${sum(needed)} bytes: more than ${LIMIT}.`)
      process.exitCode = 1
    }
  }
} finally {
  rmSync(folder, { recursive: true, force: true })
}

function row(name, file) {
  const whole = readFileSync(file)
  const params = { [constants.BROTLI_PARAM_QUALITY]: constants.BROTLI_MAX_QUALITY }
  return { name, bytes: brotliCompressSync(whole, { params }).length, plain: whole.length }
}

function sum(rows) {
  return rows.reduce((total, { bytes }) => total + bytes, 0)
}

function print(name, rows) {
  console.log(`\n${name} (brotli 11; before)`)
  const total = { name: 'together', bytes: sum(rows) }
  for (const { name, bytes, plain } of [...rows, total]) {
    const before = plain === undefined ? `limit ${LIMIT}` : `${plain}`
    const isWalk = plain === undefined && rows.length > 3
    console.log(`  ${name.padEnd(30)}${`${bytes}`.padStart(7)}  ${isWalk ? '' : before}`)
  }
}
