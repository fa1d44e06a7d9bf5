import { readFileSync } from 'node:fs'
import { relative } from 'node:path'
import { describe, expect, test } from 'vitest'
import { FILES } from './rooms.ts'

/**
 * The type assertions that are left, by file, and why. Elsewhere `must`, `at` and `observationOf`
 * (`tree/must.ts`), `groupOf` (`tree/group.ts`) and type guards take their place. A number only falls.
 */
const STILL: Readonly<Record<string, { readonly most: number; readonly because: string }>> = {
  'bundle/first-question.ts': {
    most: 1,
    because: 'a question without its ways on is no `Question`; a first screen follows none of them'
  },
  'cli/loaded-cache.ts': { most: 1, because: 'read back from an entry whose sum was checked' },
  'cli/words-of-tree.ts': {
    most: 1,
    because: 'the sources of an edition whose fingerprint was checked when it was loaded'
  },
  'diagrams/diagram.ts': {
    most: 3,
    because:
      'inner loops over arrays that the class alone fills: a check takes a tenth of compiling'
  },
  'load/joined.ts': { most: 1, because: 'two of one format by name are again of that format' },
  'load/reader-of.ts': {
    most: 1,
    because: 'the ways of each kind of condition are the keys of its kind of question'
  },
  'load/shaped-file.ts': { most: 1, because: 'what is kept for a format was shaped by it' },
  'machine/calls.ts': { most: 1, because: 'XState reads types off a value it never looks at' },
  'machine/compile-machine.ts': {
    most: 1,
    because: 'states made at run time have names that the types of XState cannot follow'
  },
  'machine/reading.ts': { most: 1, because: 'XState reads types off a value it never looks at' },
  'machine/screen.ts': { most: 1, because: 'XState reads types off a value it never looks at' },
  'machine/stay.ts': { most: 1, because: 'XState reads types off a value it never looks at' },
  'places/embed/take.ts': { most: 1, because: 'each file of the same build has one type' },
  'science/units.ts': {
    most: 2,
    because: 'the unit was held against its dimension, in a type that holds for each apart'
  },
  'words/words.ts': { most: 1, because: 'texts in the shape that i18next types them in' }
}

/** Comments and quoted text: "as" is a word there. Templates stay, for the code in them. */
const PROSE =
  /\/\*[\s\S]*?\*\/|\/\/[^\n]*|'(?:\\.|[^'\\\n])*'|"(?:\\.|[^"\\\n])*"|`(?:\\.|[^`\\])*`/g
const RENAMED = /^(?:import|export) (?:type )?\{[^}]*\}|^(?:import|export) [^\n]*$/gm
const ASSERTION = /[\w)\]}`] as (?!const\b)[A-Za-z({['"]/g

const assertionsIn = (file: string): number =>
  readFileSync(file, 'utf8').replace(PROSE, '``').replace(RENAMED, '').match(ASSERTION)?.length ?? 0

describe('a type is narrowed, not asserted', () => {
  const found = FILES.map(file => [relative('src', file), assertionsIn(file)] as const)

  test('but for what is listed, file by file', () => {
    const over = found.filter(([file, count]) => count > (STILL[file]?.most ?? 0))
    expect(over).toEqual([])
  })

  test('and the list names none that is gone', () => {
    const most = Object.entries(STILL).map(([file, { most }]) => [file, most] as const)
    expect(most).toEqual(found.filter(([file]) => Object.hasOwn(STILL, file)).sort())
  })
})
