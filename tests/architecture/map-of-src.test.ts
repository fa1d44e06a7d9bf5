import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { MAY_IMPORT } from './rooms.ts'

/** What fits a screen. */
const MOST_LINES = 46

const lines = readFileSync('DEVELOPERS.md', 'utf8').split('\n')
const start = lines.indexOf('## Map of `src`')
const length = lines.slice(start + 1).findIndex(line => line.startsWith('## '))
const map = lines.slice(start, start + 1 + length)

/** Each line of the map as its room and the files to begin at. */
const rows = map.flatMap(line => {
  const [, room, files] = /^\| `([a-z/-]+)\/` +\|.*\| ([^|]+) \|$/.exec(line) ?? []
  if (room === undefined || files === undefined) return []
  return [{ room, files: [...files.matchAll(/`([^`]+)`/g)].map(([, file = '']) => file) }]
})

describe('the map of src in DEVELOPERS.md', () => {
  test('fits a screen', () => {
    expect(start).toBeGreaterThan(0)
    expect(map.length).toBeLessThanOrEqual(MOST_LINES)
  })

  test('has one line for every room, in import order', () => {
    expect(rows.map(({ room }) => room)).toEqual(Object.keys(MAY_IMPORT))
  })

  test('names files to begin at that are there', () => {
    const missing = rows.flatMap(({ room, files }) =>
      files.map(file => join('src', room, file)).filter(file => !existsSync(file))
    )
    expect(missing).toEqual([])
    expect(rows.filter(({ files }) => files.length === 0)).toEqual([])
  })
})
