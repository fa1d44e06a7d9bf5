import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { copyShipped } from '../helpers/copy-shipped.ts'
import { openOnce, runCommand } from './run-command.ts'

const own = mkdtempSync(join(tmpdir(), 'jarside-editions-'))
const tree = join(own, 'trees/kombucha-jar/tree.yaml')
const published = join(own, 'trees/editions/kombucha-jar@1.json')
const here = (...args: readonly string[]) => runCommand([...args, '--in', own])
/** What loading finds; `check` proves every tree besides. */
const findings = async () => (await openOnce(own)).loaded.findings.map(({ code }) => code)
const edit = (file: string, by: (text: string) => string) => {
  const text = readFileSync(file, 'utf8')
  const changed = by(text)
  if (changed === text) throw new Error(`nothing changed in ${file}`)
  writeFileSync(file, changed)
  return () => writeFileSync(file, text)
}

beforeAll(async () => {
  copyShipped(own)
  rmSync(join(own, 'trees/editions'), { recursive: true, force: true })
  expect((await here('publish', 'kombucha-jar')).code).toBe(0)
})
afterAll(() => rmSync(own, { recursive: true, force: true }))

describe('a published edition', () => {
  test('is opened again with its own words after the tree and its words have changed', async () => {
    const file = join(own, 'locales/en/kombucha-jar.json')
    const back = edit(file, text =>
      text.replace('Likely mold. Throw it all out', 'Mold. Out with it')
    )
    const walked = ['--given', 'surface-texture=dry-fuzzy', '--none', 'people-signs']
    const rest = ['container-signs', 'jar-signs', 'drinkers'].flatMap(id => ['--none', id])
    try {
      const then = await here('walk', 'kombucha-jar@1', ...walked, ...rest)
      const now = await here('walk', 'kombucha-jar', ...walked, ...rest)
      expect(then.output).toContain('Likely mold. Throw it all out')
      expect(now.output).toContain('Mold. Out with it')
    } finally {
      back()
    }
  })

  test('published once more, unchanged, is left as it is', async () => {
    const before = readFileSync(published, 'utf8')
    const { code, output } = await here('publish', 'kombucha-jar')
    expect({ code, output }).toEqual({
      code: 0,
      output: 'trees/editions/kombucha-jar@1.json is published already, just so.\n'
    })
    expect(readFileSync(published, 'utf8')).toBe(before)
  })

  test('that somebody edits is found', async () => {
    const back = edit(published, text => text.replace('"never"', '"as-directed"'))
    try {
      expect(await findings()).toContain('edition-changed')
    } finally {
      back()
    }
  })

  test('whose number a changed tree still bears is found', async () => {
    const back = edit(tree, text =>
      text.replace(
        'at-most: 4.2, end: normal-growth }\n      - { over: 4.2, raise',
        'at-most: 4.1, end: normal-growth }\n      - { over: 4.1, raise'
      )
    )
    try {
      expect(await findings()).toContain('edition-not-raised')
    } finally {
      back()
    }
  })
})

describe('an edit that is less cautious', () => {
  const freer = (text: string) =>
    text.replace(
      'at-most: 4.2, end: normal-growth }\n      - { over: 4.2, raise',
      'at-most: 4.4, end: normal-growth }\n      - { over: 4.4, raise'
    )
  const copy = join(own, 'freer.yaml')
  beforeAll(() => writeFileSync(copy, freer(readFileSync(tree, 'utf8'))))

  test('is told first, with what it has in common and an example, and ends with 1', async () => {
    const { code, output, errors } = await here('compare', 'kombucha-jar@1', copy)
    expect(code).toBe(1)
    expect(output.indexOf('LESS CAUTIOUS 1')).toBeGreaterThan(0)
    expect(output).toContain('when  pH: ')
    expect(output).toMatch(/such as {2}.+as-directed|such as {2}.+ → /)
    expect(errors).toContain('--accept')
  })

  test('passes when a source that the tree cites is named, and says so', async () => {
    const { code, errors } = await here('compare', 'kombucha-jar@1', copy, '--accept', 'fsis-molds')
    expect({ code, errors }).toEqual({ code: 0, errors: 'Accepted: source fsis-molds.\n' })
  })

  test('passes for no name that is neither a rule nor a cited source', async () => {
    const { code, errors } = await here('compare', 'kombucha-jar@1', copy, '--accept', 'because')
    expect(code).toBe(2)
    expect(errors).toContain('has no rule `because` and cites no source of that name')
  })

  test('is one object for programs, with exact counts, and a page for reviewers', async () => {
    const page = join(own, 'review.html')
    const { output } = await here('compare', 'kombucha-jar@1', copy, '--json', '--html', page)
    const { sets, changed, patterns } = JSON.parse(output)
    expect(
      BigInt(changed['less-cautious']) > 0n && BigInt(sets) > BigInt(changed['less-cautious'])
    ).toBe(true)
    expect(patterns[0].change).toBe('less-cautious')
    const html = readFileSync(page, 'utf8')
    expect(html).toContain('data-change="less-cautious"')
    expect(html).not.toMatch(/<script|src=/)
  })

  test('the other way round is more cautious and ends with 0', async () => {
    expect((await here('compare', copy, 'kombucha-jar@1')).code).toBe(0)
  })
})

describe('what is said otherwise', () => {
  test('is shown text by text though it means the same', async () => {
    const back = edit(join(own, 'locales/es/steps.json'), text =>
      text.replace('No lo huela.', 'No lo olfatee.')
    )
    try {
      const { code, output } = await here('compare', 'kombucha-jar@1', 'kombucha-jar')
      expect(code).toBe(0)
      expect(output).toContain('es steps:do-not-sniff')
      expect(output).toMatch(/ {2}- .*No lo huela\./)
      expect(output).toMatch(/ {2}\+ .*No lo olfatee\./)
    } finally {
      back()
    }
  })
})

describe('what rests on a source', () => {
  test('is listed rule by rule, with what rests on it alone', async () => {
    const { code, output } = await here('cites', 'fsis-molds')
    expect(code).toBe(0)
    expect(output).toContain('  rule fuzz-is-mold')
    expect(output).toContain('  verdict likely-mold')
  })

  test('of a misspelled name is not guessed', async () => {
    const { code, errors } = await here('cites', 'fsis-mold')
    expect(code).toBe(2)
    expect(errors).toMatch(/^There is no source `fsis-mold`\. Did you mean `fsis-molds`/)
  })
})
