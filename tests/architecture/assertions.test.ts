import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { FILES, MAY_IMPORT, roomOf } from './rooms.ts'

/**
 * How many type assertions a room may still hold, and why. Elsewhere `must` and `observationOf`
 * (`tree/must.ts`) and narrowing take their place. A number only falls.
 */
const STILL: Readonly<Record<string, { readonly most: number; readonly because: string }>> = {
  tree: {
    most: 7,
    because: 'bands and decisions are in every page, and the index of a table has just been checked'
  },
  diagrams: { most: 26, because: 'inner loops over arrays whose bounds the class holds itself' },
  evaluate: {
    most: 11,
    because: 'in every page: what is asserted is an entry that the loader has linked'
  },
  science: {
    most: 5,
    because: 'a tuple of fixed length, and an amount whose unit was held against its dimension'
  },
  load: { most: 38, because: 'what zod has checked, under a type that zod cannot infer' },
  prove: {
    most: 14,
    because: 'a slip is made of parts of one kind, which the compiler cannot follow'
  },
  tables: { most: 2, because: 'a slice of known length, and the ways of columns of one kind' },
  machine: { most: 26, because: 'the types of XState for events and snapshots' },
  words: { most: 3, because: 'texts as i18next types them' },
  reader: { most: 3, because: 'answers by a sign that was just heard' },
  addresses: { most: 2, because: 'a value that was just held against a list' },
  parts: {
    most: 4,
    because: 'a name in small letters, and the first of a list that is never empty'
  },
  opening: { most: 2, because: 'texts of the screens, which are checked when they are loaded' },
  'last-resort': { most: 2, because: "the state of the browser's history" },
  'places/embed': { most: 3, because: 'texts out of a file of the same build' },
  'places/workbench': { most: 2, because: 'a name in small letters' },
  'places/gallery': { most: 3, because: 'played jars, for development alone' },
  cli: {
    most: 3,
    because: 'what was read back from a cache or an edition whose content is checked by its hash'
  },
  bundle: { most: 19, because: 'texts of the screens, which are checked when they are loaded' }
}

/** Comments and quoted text: "as" is a word there. Templates stay, for the code in them. */
const PROSE =
  /\/\*[\s\S]*?\*\/|\/\/[^\n]*|'(?:\\.|[^'\\\n])*'|"(?:\\.|[^"\\\n])*"|`(?:\\.|[^`\\])*`/g
const RENAMED = /^(?:import|export) [^\n]*$|^(?:import|export) (?:type )?\{[^}]*\}/gm
const ASSERTION = /[\w)\]}] as (?!const\b)[A-Za-z({['"]/g

const assertionsIn = (file: string): number =>
  readFileSync(file, 'utf8').replace(PROSE, '``').replace(RENAMED, '').match(ASSERTION)?.length ?? 0

describe('a type is narrowed, not asserted', () => {
  test.each(Object.keys(MAY_IMPORT))('%s', room => {
    const files = FILES.filter(file => roomOf(file) === room)
    const found = files
      .map(file => ({ file, count: assertionsIn(file) }))
      .filter(({ count }) => count)
    const total = found.reduce((sum, { count }) => sum + count, 0)
    expect(total, JSON.stringify(found, null, 1)).toBeLessThanOrEqual(STILL[room]?.most ?? 0)
  })
})
