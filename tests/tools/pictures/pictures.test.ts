import { readdirSync, readFileSync } from 'node:fs'
import { gzipSync } from 'node:zlib'
import { describe, expect, test } from 'vitest'
import { HAND_DRAWN } from '../../../tools/pictures/hand-drawn.ts'
import { drawPicture, PICTURES } from '../../../tools/pictures/pictures.ts'

const FOLDER = 'shared/pictures'
const LARGEST = 150_000
const committed = new Map(
  readdirSync(FOLDER).map(file => [
    file.replace(/\.svg$/, ''),
    readFileSync(`${FOLDER}/${file}`, 'utf8')
  ])
)
const ids = [...committed.keys()]
const textOf = (id: string) => committed.get(id) ?? ''

describe('a picture is what its parameters draw', () => {
  test('the folder holds the drawn pictures, those by hand, and no others', () => {
    expect(ids.sort()).toEqual([...Object.keys(PICTURES), ...Object.keys(HAND_DRAWN)].sort())
  })

  test.each(Object.entries(PICTURES))('%s is committed as it is drawn', (id, layer) => {
    expect(textOf(id)).toBe(drawPicture(id, layer))
  })

  test.each(Object.entries(HAND_DRAWN))('%s is drawn by hand for a reason', (_, reason) => {
    expect(reason.split(' ').length).toBeGreaterThan(5)
  })

  test('there is a picture for far more than sixty answers', () => {
    expect(Object.keys(PICTURES).length).toBeGreaterThanOrEqual(60)
  })
})

describe('pictures can stand side by side in one page', () => {
  const ELEMENTS = ['svg', 'path', 'g', 'circle', 'ellipse', 'rect']
  const ATTRIBUTES =
    /^(xmlns|viewBox|fill|stroke|stroke-width|stroke-linecap|stroke-linejoin|stroke-dasharray|fill-rule|opacity|transform|d|c?[xy]|r[xy]?|width|height)$/

  test.each(ids)('%s has nothing inside that another could collide with', id => {
    const text = textOf(id)
    for (const [, name] of text.matchAll(/<([a-z]+)/g)) expect(ELEMENTS).toContain(name)
    for (const [, name] of text.matchAll(/\s([\w:-]+)=/g)) expect(name).toMatch(ATTRIBUTES)
    expect(text).not.toMatch(/url\(|NaN|undefined|<\/?text/)
  })

  test.each(ids)('%s keeps to the square of all pictures', id => {
    expect(textOf(id)).toMatch(/^<svg [^>]*viewBox="0 0 160 160"/)
    expect(textOf(id)).toMatch(/currentColor/)
  })

  test('all together weigh less than 150 kB on the wire, each packed alone', () => {
    const bytes = ids.reduce((sum, id) => sum + gzipSync(textOf(id), { level: 9 }).length, 0)
    expect(bytes).toBeLessThan(LARGEST)
  })
})
