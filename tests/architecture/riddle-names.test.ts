import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parseSync } from 'vite'
import { expect, test } from 'vitest'

/** Names that say of a value how it came about and leave out what it is. */
const RIDDLES: ReadonlySet<string> = new Set(['made', 'told', 'at', 'known', 'got', 'it'])

/** Where such a name is a field's, or is still to give way. A number only falls. */
const STILL: Readonly<Record<string, number>> = {
  // The format's own key, and its schema.
  'src/load/schemas/rows.ts': 1,
  // Their words and screens are being changed by others.
  'src/parts/emergency.tsx': 1,
  'src/parts/outcome.tsx': 2,
  'src/parts/section-part.tsx': 2,
  'src/parts/sheet-side.tsx': 2,
  'src/translation/amounts.ts': 7,
  'src/translation/forms.ts': 3,
  'src/translation/glossary.ts': 3,
  'src/translation/pair.ts': 2
}

const FILES = ['src', 'bench', 'tools'].flatMap(folder =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter(file => /(?<!\.d)\.(ts|tsx|mjs)$/.test(file))
    .map(file => join(folder, file))
)

type Part = Readonly<Record<string, unknown>>
const isPart = (value: unknown): value is Part => typeof value === 'object' && value !== null

/** The names that a pattern gives; what a field gives under its own name is the field's. */
function namesIn(pattern: unknown): readonly string[] {
  if (!isPart(pattern)) return []
  switch (pattern.type) {
    case 'Identifier':
      return [String(pattern.name)]
    case 'ObjectPattern':
      return partsOf(pattern.properties).flatMap(one =>
        one.shorthand === true ? [] : namesIn(one.value ?? one.argument)
      )
    case 'ArrayPattern':
      return partsOf(pattern.elements).flatMap(namesIn)
    case 'AssignmentPattern':
      return namesIn(pattern.left)
    case 'RestElement':
      return namesIn(pattern.argument)
    default:
      return []
  }
}

const partsOf = (list: unknown): readonly Part[] => (Array.isArray(list) ? list.filter(isPart) : [])

/** Every variable and parameter that some code declares. */
function declaredIn(code: unknown): readonly string[] {
  if (!isPart(code)) return []
  const own =
    code.type === 'VariableDeclarator'
      ? namesIn(code.id)
      : partsOf(code.params).flatMap(param => namesIn(param))
  return [...own, ...Object.values(code).flatMap(declaredIn)]
}

const riddlesIn = (file: string, text: string): readonly string[] =>
  declaredIn(parseSync(file, text).program).filter(name => RIDDLES.has(name))

test('a variable is named by what it holds', () => {
  const found = FILES.flatMap(file => {
    const riddles = riddlesIn(file, readFileSync(file, 'utf8'))
    const most = STILL[file] ?? 0
    return riddles.length > most ? [`${file}: ${[...new Set(riddles)].join(', ')}`] : []
  })
  expect(FILES.length).toBeGreaterThan(600)
  expect(found).toEqual([])
})

test('a riddle is found in every kind of declaration, and a field keeps its name', () => {
  const code = `
    const made = 1
    for (const [at, { told: known }] of pairs) use(at)
    function read({ told }: Fact, ...got: number[]) { return list.map((it = 0, at) => it + at) }
    class Reader { read(known: string) { this.made = known } }
  `
  expect([...riddlesIn('code.ts', code)].sort()).toEqual(
    ['made', 'at', 'known', 'got', 'it', 'at', 'known'].sort()
  )
})
