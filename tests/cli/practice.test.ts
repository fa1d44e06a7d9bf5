import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, test } from 'vitest'
import { type Attempt, lineOfAttempt } from '../../src/practice/attempt.ts'
import { runCommand } from './run-command.ts'

const folder = mkdtempSync(join(tmpdir(), 'jarside-practice-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const MOLD = { person: null, container: null, batch: 'likely-mold', use: 'never' } as const
const WAIT = { person: null, container: null, batch: 'wait-and-recheck', use: 'not-yet' } as const
const lines = [MOLD, MOLD, MOLD, WAIT].map((given, at) =>
  lineOfAttempt({
    id: `call-${at}`,
    caller: 'white-fuzz',
    tree: 'kombucha-jar',
    took: 'kombucha-jar',
    fingerprint: 'abcdef0123456789',
    volunteer: at < 2 ? 3 : 12,
    day: '2026-11-29',
    given,
    expected: MOLD
  } satisfies Attempt)
)
const fileOf = (name: string, of: readonly string[]) => {
  const file = join(folder, name)
  writeFileSync(file, `${of.join('\n')}\n`)
  return file
}
// One call is in both files.
const desks = [fileOf('one.jsonl', lines.slice(0, 3)), fileOf('two.jsonl', lines.slice(2))]

describe('jarside practice', () => {
  test('tells dangers first, for the office and for each volunteer, each call once', async () => {
    const { code, output } = await runCommand(['practice', ...desks])
    expect(code).toBe(0)
    const [office, calls, seen, missed, one] = output.split('\n')
    expect(office).toBe('All volunteers')
    expect(calls).toBe('  4 calls')
    // Clopper and Pearson for 3 of 4: 0.194 to 0.994.
    expect(seen).toBe(
      '  Dangerous calls seen as dangerous: 3 of 4: 75 % (exact 95 % interval 19 to 100 %)'
    )
    expect(missed).toBe('  Dangers missed:')
    expect(one).toBe(
      '    2026-11-29, volunteer 12, white-fuzz: Wait, look again instead of Likely mold'
    )
    expect(output).toMatch(/Volunteer 3\n {2}2 calls\n.*2 of 2: 100 %/)
    expect(output).toMatch(/the batch +3 +1 +0 +−3: 1/)
  })

  test('gives the same as one object', async () => {
    const { output } = await runCommand(['practice', '--json', ...desks])
    expect(JSON.parse(output)).toMatchObject({
      office: {
        calls: 4,
        seen: { value: 0.75, of: 4 },
        sides: { batch: { gentle: 1, strict: 0 } }
      },
      volunteers: { 3: { calls: 2 }, 12: { calls: 2 } },
      unread: 0
    })
  })

  test('says which lines cannot be read, and counts the others', async () => {
    const bad = fileOf('bad.jsonl', ['{"kind":"contact"}', ...lines.slice(0, 1)])
    const { code, output, errors } = await runCommand(['practice', bad])
    expect(code).toBe(1)
    expect(output).toContain('1 call')
    expect(errors).toContain('1 line cannot be read and is not counted.')
    expect(errors).toContain(`${bad}:1: it is no practice call.`)
  })

  test('asks for files that are there', async () => {
    expect((await runCommand(['practice'])).code).toBe(2)
    expect((await runCommand(['practice', join(folder, 'none.jsonl')])).code).toBe(2)
  })
})
