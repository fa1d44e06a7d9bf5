import { describe, expect, test } from 'vitest'
import { drawPicture, PICTURES } from '../../../tools/pictures/pictures.ts'

/** How light a tint is, 0 to 255, as a photocopier sees it. */
function lightness(tint: string): number {
  const [r = 0, g = 0, b = 0] = (tint.slice(1).match(/../g) ?? []).map(part =>
    Number.parseInt(part, 16)
  )
  return 0.299 * r + 0.587 * g + 0.114 * b
}

/** The shapes of a picture without their hue: outline and how light it is, in steps an eye can tell. */
function grayShapes(text: string): Set<string> {
  return new Set(
    [...text.matchAll(/<path ([^>]*?)d="([^"]*)"/g)].map(([, looks = '', line]) => {
      const tints = [...looks.matchAll(/#[0-9A-F]{6}/g)].map(([tint]) =>
        Math.round(lightness(tint) / 24)
      )
      return `${tints.join(' ')}|${line}`
    })
  )
}

const gray = new Map(
  Object.entries(PICTURES).map(([id, layer]) => [id, grayShapes(drawPicture(id, layer))])
)
const drawn = (id: string) => {
  const layer = PICTURES[id]
  if (layer === undefined) throw new Error(`no picture ${id}`)
  return drawPicture(id, layer)
}
/** The light on wet things is the one shape filled with this white. */
const LIGHT = 'fill="#FFFDF7"'
/** Hair: one line of many short thin strokes. */
const HAIR = /stroke-width="0\.9" d="M[^"]{300,}"/

describe('no two pictures can be taken for each other without color', () => {
  test.each([...gray.keys()])('%s has shapes or shades of its own', id => {
    const own = gray.get(id) ?? new Set()
    for (const [other, shapes] of gray) {
      if (other === id) continue
      const different = [...own].filter(shape => !shapes.has(shape)).length
      const missing = [...shapes].filter(shape => !own.has(shape)).length
      expect(different + missing, `${id} and ${other}`).toBeGreaterThanOrEqual(2)
    }
  })
})

const WET = [
  'wet-islands',
  'wet-film',
  'wet-bumps-or-blisters',
  'strands-or-sediment',
  'color-within-or-below',
  'side-wet-islands',
  'side-wet-and-flat',
  'side-pellicle',
  'side-strands',
  'side-blisters',
  'bottle-jelly',
  'bottle-neck-film',
  'mother-disc',
  'brine-clear',
  'dough-hooch',
  'dough-pink-liquid'
]
const FUZZ = [
  'dry-fuzzy',
  'early-mold',
  'side-early-mold',
  'dry-raised-circles',
  'side-hairs-or-powder',
  'side-dry-colonies',
  'bottle-fuzz',
  'bottle-fruit-fuzz',
  'culture-store-fuzz',
  'brine-fuzz',
  'brine-dark-centers',
  'dough-fuzz',
  'kefir-fuzz'
]
const DULL = [
  'flat-wrinkled-film',
  'brine-flat-film',
  'brine-thick-film',
  'kefir-film',
  'vinegar-film',
  'side-flat-ridges',
  'side-film-yeast',
  'chalky-powder',
  'brine-powder',
  'dry-leathery',
  'dough-dry-crust'
]

describe('light lies on wet things, and hair stands on dry ones', () => {
  test.each(WET)('%s carries a light and no hair', id => {
    expect(drawn(id)).toContain(LIGHT)
    expect(drawn(id)).not.toMatch(HAIR)
  })

  test.each(FUZZ)('%s has hair and carries no light', id => {
    expect(drawn(id)).toMatch(HAIR)
    expect(drawn(id)).not.toContain(LIGHT)
  })

  test.each(DULL)('%s has neither light nor hair', id => {
    expect(drawn(id)).not.toContain(LIGHT)
    expect(drawn(id)).not.toMatch(HAIR)
  })
})
