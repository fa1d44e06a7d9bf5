import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import fc from 'fast-check'
import { afterAll, describe, expect, test } from 'vitest'
import { eachLine } from '../../src/cli/each-line.ts'
import { lineOf } from '../../src/contacts/contact.ts'
import { CALL, CANNING, HOURS } from '../contacts/sample.ts'
import { HAND_TALLY, syntheticCalls } from '../contacts/synthetic-calls.ts'
import { runCommand } from './run-command.ts'

const folder = mkdtempSync(join(tmpdir(), 'jarside-tally-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const fileOf = (name: string, lines: readonly string[], end = '\n') => {
  const file = join(folder, name)
  writeFileSync(file, lines.join('\n') + end)
  return file
}
const lines = syntheticCalls().map(lineOf)
const desks = [
  fileOf('desk-1.jsonl', lines.slice(0, 120)),
  // Some records are in both files, and the last line has no end.
  fileOf('desk-2.jsonl', lines.slice(90), '')
]

describe('jarside tally', () => {
  test('two desks come to the hand tally, to the unit, in either order', async () => {
    for (const files of [desks, [...desks].reverse()]) {
      const { code, output } = await runCommand([
        ...['tally', '--quarter', '2026-4', '--json', '--every-number'],
        ...files
      ])
      expect(code).toBe(0)
      const { heard, least, ...report } = JSON.parse(output)
      expect(report).toEqual(HAND_TALLY)
      expect(heard).toMatchObject({ lines: 230, bad: 0, entries: 200 })
      expect(least).toBe(0)
    }
  })

  test('the latest version of a record counts, whichever file it is in', async () => {
    const later = { ...CALL, edit: 1, mark: '00000001', minutes: 30 }
    const files = [fileOf('a', [lineOf(later)]), fileOf('b', [lineOf(CALL), lineOf(HOURS)])]
    for (const args of [files, [...files].reverse()]) {
      const { output, errors } = await runCommand(['tally', '--json', '--every-number', ...args])
      expect(JSON.parse(output)).toMatchObject({ contacts: 1, minutes: 30, volunteerMinutes: 150 })
      expect(errors).toContain('1 more versions')
    }
  })

  test('lines that cannot be read are counted, shown by number and kept', async () => {
    const bad = ['{"kind":"contact"', lineOf(CALL).replace('"en"', '"Maria Lopez"'), '[]']
    const file = fileOf('bad', [lineOf(CALL), ...bad, '', lineOf(CANNING)])
    const mend = join(folder, 'mend')
    const { code, output, errors } = await runCommand([
      ...['tally', '--json', '--every-number', '--bad', mend, file]
    ])
    expect(code).toBe(1)
    expect(JSON.parse(output)).toMatchObject({ contacts: 2, heard: { lines: 5, bad: 3 } })
    expect(errors).toContain(`${file}:2: this is no JSON.`)
    expect(errors).toContain(`${file}:3: \`language\` is not written as this log writes it.`)
    // What is told of a line repeats none of it.
    expect(errors).not.toContain('Maria')
    expect(readFileSync(mend, 'utf8')).toBe(`${bad.join('\n')}\n`)
  })

  test('without --every-number small counts are hidden', async () => {
    const { output } = await runCommand(['tally', '--json', ...desks])
    const { tables, least } = JSON.parse(output)
    expect(least).toBe(5)
    expect(tables.reach).toEqual({ direct: null, indirect: null })
    expect(tables.container).toEqual(HAND_TALLY.tables.container)
  })

  test('as text and as CSV it has the names that people know', async () => {
    const text = await runCommand(['tally', '--quarter', '2026-4', '--every-number', ...desks])
    expect(text.output).toMatch(/\n +289 {2}people reached\n/)
    expect(text.output).toMatch(/\n +237 {2}Larkspur County\n/)
    const csv = await runCommand(['tally', '--csv', '--every-number', ...desks])
    expect(csv.output).toContain('2000-01-01,2099-12-31,batch,likely-mold,Likely mold,30\r\n')
  })

  test.each<[string, readonly string[]]>([
    ['Name at least one file', []],
    ['There is no file `gone`', ['gone']],
    ['Name one time', ['--year', '2026', '--quarter', '2026-1', 'x']],
    ['no quarter', ['--quarter', '2026-5', 'x']],
    ['no year', ['--fiscal-year', '27', 'x']],
    ['later day', ['--from', '2026-02-01', '--to', '2026-01-01', 'x']],
    ['Choose one', ['--csv', '--json', 'x']]
  ])('%s', async (message, args) => {
    const { code, errors } = await runCommand(['tally', ...args])
    expect(code).toBe(2)
    expect(errors).toContain(message)
  })
})

// JSON Lines: UTF-8, a line feed ends each line, the last may have none (jsonlines.org, from memory).
test('lines are the same wherever the stream is cut', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.string({ unit: 'binary' }).map(text => text.replaceAll('\n', ''))),
      fc.integer({ min: 1, max: 7 }),
      async (texts, size) => {
        const bytes = Buffer.from(texts.map(text => `${text}\n`).join(''))
        const parts = Array.from({ length: Math.ceil(bytes.length / size) }, (_, at) =>
          bytes.subarray(at * size, (at + 1) * size)
        )
        const seen: string[] = []
        await eachLine(Readable.from(parts, { objectMode: true }), (text, line) => {
          seen.push(text)
          expect(line).toBe(seen.length)
        })
        expect(seen).toEqual(texts)
      }
    ),
    { numRuns: 60 }
  )
})
