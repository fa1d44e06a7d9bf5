import { readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { FILES, MAY_IMPORT, ROOMS, roomOf } from './rooms.ts'

const IMPORT =
  /^\s*(?:import|export)\b[^'"]*?\bfrom\s*['"]([^'"]+)['"]|^\s*import\s*['"]([^'"]+)['"]|\bimport\s*\(\s*['"]([^'"]+)['"]/gm

/** `preact/hooks` → `preact`, `node:fs/promises` → `node:fs` */
const packageOf = (name: string) =>
  name
    .split('/')
    .slice(0, name.startsWith('@') ? 2 : 1)
    .join('/')

/** Every import in `src`: who imports, what it names, and the room where that is; null for a package. */
const imports = FILES.flatMap(file =>
  [...readFileSync(file, 'utf8').matchAll(IMPORT)].map(match => {
    const name = match[1] ?? match[2] ?? match[3] ?? ''
    const to = name.startsWith('.') ? roomOf(join(dirname(file), name)) : null
    return { file, from: roomOf(file), name, to }
  })
)

type Import = (typeof imports)[number]

// The type of the screens' own texts, so that a misspelled key does not compile.
const isTextKeys = ({ file, name }: Import) =>
  file.endsWith('text-key.ts') && name.endsWith('locales/en/ui.json')

const told = (broken: readonly Import[]) => broken.map(({ file, name }) => `${file}: ${name}`)

describe('imports point one way', () => {
  test('every room of src has a rule and every rule a room', () => {
    expect(Object.keys(MAY_IMPORT).sort()).toEqual([...ROOMS].sort())
    expect(FILES.filter(file => !ROOMS.includes(roomOf(file)))).toEqual([])
  })

  test('every rule names only rooms listed above it', () => {
    const order = Object.keys(MAY_IMPORT)
    const broken = Object.entries(MAY_IMPORT).flatMap(([room, { rooms }]) =>
      rooms
        .filter(each => !order.slice(0, order.indexOf(room)).includes(each))
        .map(each => `${room}: ${each}`)
    )
    expect(broken).toEqual([])
  })

  test('a file imports only what its room may', () => {
    const broken = imports.filter(each => {
      if (isTextKeys(each)) return false
      const rule = MAY_IMPORT[each.from] ?? { rooms: [], packages: [] }
      return each.to === null
        ? !rule.packages.includes(packageOf(each.name))
        : each.to !== each.from && !rule.rooms.includes(each.to)
    })
    expect(told(broken)).toEqual([])
  })

  test('a rule allows only what its room imports', () => {
    const unused = Object.entries(MAY_IMPORT).flatMap(([room, { rooms, packages }]) => {
      const own = imports.filter(({ from }) => from === room)
      const used = new Set(own.map(({ name, to }) => to ?? packageOf(name)))
      return [...rooms, ...packages].filter(each => !used.has(each)).map(each => `${room}: ${each}`)
    })
    // What all places share: two of them have no walk.
    expect(unused).toEqual(['places/workbench: tree', 'places/contacts: tree'])
  })

  test('a place never imports another place, and parts and what they rest on no place at all', () => {
    const order = Object.keys(MAY_IMPORT)
    const firstPlace = order.findIndex(room => room.startsWith('places/'))
    const broken = imports.filter(
      ({ from, to }) =>
        to?.startsWith('places/') &&
        to !== from &&
        (from.startsWith('places/') || order.indexOf(from) < firstPlace)
    )
    expect(told(broken)).toEqual([])
  })

  test('nothing in src imports tools, bench or tests', () => {
    expect(told(imports.filter(each => each.to === '..' && !isTextKeys(each)))).toEqual([])
  })

  test('no inner barrel hides where a name lives', () => {
    expect(FILES.filter(file => /[/\\]index\.tsx?$/.test(file))).toEqual([])
  })
})
