import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest'
import { parse } from 'yaml'
import { refusals } from '../load/outside-validator.ts'
import { wholeProject } from '../load/project-files.ts'
import { runCommand } from './run-command.ts'

const own = mkdtempSync(join(tmpdir(), 'jarside-packet-'))
const out = join(own, 'out')
const review = join(out, 'jar.review.yaml')
const edition = join(own, 'trees/editions/jar@1.json')
const here = (...args: readonly string[]) => runCommand([...args, '--in', own])

/** The small project, one of whose rules rests on own caution, and over one of whose rules a source differs. */
const changes: Readonly<Record<string, (text: string) => string>> = {
  'trees/jar/tree.yaml': text =>
    text
      .replace(
        /(at-least: discard }\n {4}basis:) published\n {4}because: guide/,
        '$1 own-caution\n    because: [hunch]'
      )
      .replace(
        /(at-most: normal }\n {4}basis: published\n {4}because: guide)/,
        '$1\n    dissent: [{ source: other, says: Some keep it longer. }]'
      ),
  'shared/sources.yaml': text =>
    `${text}hunch:
  title: Our own caution
  publisher: null
  year: null
  address: null
  kind: own-caution
  copy: none
  checked: { how: memory, on: 2026-11-01 }
other:
  title: Another guide
  publisher: null
  year: 2021
  address: null
  kind: publication
  copy: original
  checked: { how: read, on: 2026-11-01 }
`
}

function write(path: string, text: string): void {
  mkdirSync(dirname(join(own, path)), { recursive: true })
  writeFileSync(join(own, path), text)
}

beforeAll(async () => {
  for (const { path, text } of wholeProject()) {
    const changed = changes[path]?.(text) ?? text
    if (path in changes && changed === text) throw new Error(`nothing changed in ${path}`)
    write(path, changed)
  }
  // No browser on the path: the HTML has to be complete without it.
  vi.stubEnv('PATH', '')
  vi.stubEnv('JARSIDE_BROWSER', '')
  const { code, output, errors } = await here('packet', 'jar', '--out', out)
  expect({ code, errors }).toEqual({
    code: 0,
    errors: 'No PDF: it needs Chromium or Chrome. The HTML prints the same.\n'
  })
  expect(output).toBe(`jar.packet.html  3 items to decide\n${review}\n`)
})
afterAll(() => {
  vi.unstubAllEnvs()
  rmSync(own, { recursive: true, force: true })
})

const blank = () => readFileSync(review, 'utf8')
/** Every decision the same, and the specialist has signed. */
const filled = (decision = 'agree') =>
  blank()
    .replaceAll('decision:\n', `decision: ${decision}\n`)
    .replace('signed:\n', 'signed: 2026-11-20\n')

/** Gives a review to `publish`, and says what came of it. */
async function publishing(text: string) {
  const file = join(own, 'returned.yaml')
  writeFileSync(file, text)
  const { code, output, errors } = await here('publish', 'jar', '--review', file)
  return { code, output, errors: errors.replaceAll(file, 'returned.yaml') }
}

describe('jarside packet', () => {
  test('lists in the review file each item, every role, and decides nothing', () => {
    const file = parse(blank())
    expect(refusals('review.schema.json', file)).toEqual([])
    expect(Object.keys(file.decisions)).toEqual([
      'rules/an-ordinary-jar-is-normal',
      'instruments/acidity',
      'rules/fuzz-is-discarded'
    ])
    expect(file.signatures).toEqual([
      { role: 'food-safety specialist', signed: null },
      { role: 'food-preservation educator', signed: null },
      { role: 'native reader of es', signed: null }
    ])
  })

  test('tells who says otherwise, beside the rule, by the full title', () => {
    const html = readFileSync(join(out, 'jar.packet.html'), 'utf8')
    const entry = html.slice(html.indexOf('id="rule-an-ordinary-jar-is-normal"'))
    expect(entry).toContain('Otherwise: Some keep it longer. <cite>Another guide</cite>')
    expect(html).toContain('No edition of this tree was published yet')
  })

  test('never writes over a review that somebody filled in', async () => {
    const before = blank()
    writeFileSync(review, filled())
    try {
      const { code, errors } = await here('packet', 'jar', '--out', out)
      expect(code).toBe(0)
      expect(errors).toContain('jar.review.yaml is there already and was left as it is.\n')
      expect(blank()).toBe(
        before
          .replaceAll('decision:\n', 'decision: agree\n')
          .replace('signed:\n', 'signed: 2026-11-20\n')
      )
    } finally {
      writeFileSync(review, before)
    }
  })

  test.each([
    ['no folder', ['jar'], 'Say where to: `--out <folder>`.'],
    [
      'a strange paper',
      ['jar', '--out', out, '--paper', 'tabloid'],
      'There is no paper `tabloid` for a packet. Papers: letter, a4.'
    ],
    [
      'an unknown tree',
      ['jam', '--out', out],
      'There is no tree `jam`. Did you mean `jar`? Trees: jar.'
    ]
  ])('refuses %s', async (_, args, sentence) => {
    const { code, errors } = await here('packet', ...args)
    expect([code, errors]).toEqual([2, `${sentence}\n`])
  })
})

describe('jarside publish --review refuses, and writes nothing', () => {
  afterEach(() => expect(existsSync(edition)).toBe(false))

  test.each([
    ['meaning', 'The meaning of `jar` changed since the packet was made.'],
    ['words', 'The English words or pictures of `jar` changed since the packet was made.'],
    ['items', 'The items of part 1 of `jar` changed since the packet was made.']
  ])('another fingerprint of the %s', async (key, sentence) => {
    const line =
      filled()
        .split('\n')
        .findIndex(each => each.startsWith(`${key}: `)) + 1
    const other = filled().replace(
      new RegExp(`^${key}: '.{64}'$`, 'm'),
      `${key}: '${'0'.repeat(64)}'`
    )
    expect(await publishing(other)).toEqual({
      code: 1,
      output: '',
      errors: `returned.yaml:${line}:${key.length + 3}  ${sentence}\n\n  Fix: Write a new packet, \`jarside packet jar --out <folder>\`, and have it reviewed.\n\n`
    })
  })

  test('a review of another tree', async () => {
    const { code, errors } = await publishing(filled().replace('tree: jar', 'tree: crock'))
    expect(code).toBe(1)
    expect(errors).toContain('This is a review of `crock`, not of `jar`.')
  })

  test('a decision that is empty, and one that is not there', async () => {
    const empty = filled().replace('    decision: agree', '    decision:')
    expect((await publishing(empty)).errors).toMatch(
      /^returned\.yaml:\d+:5 {2}Nothing is decided of item 1, `rules\/an-ordinary-jar-is-normal`\.\n\n {2}Fix: Ask the reviewer/
    )
    const gone = filled().replace(/ {2}instruments\/acidity:\n.*\n.*\n/, '')
    const { code, errors } = await publishing(gone)
    expect(code).toBe(1)
    expect(errors).toContain('Nothing is decided of item 2, `instruments/acidity`.')
  })

  test('a change that is wanted, with what the reviewer says to it', async () => {
    const text = filled().replace(
      '    decision: agree\n    comment:',
      '    decision: change\n    comment: "8 days"'
    )
    const { code, errors } = await publishing(text)
    expect(code).toBe(1)
    expect(errors).toContain(
      'The reviewer wants a change of item 1, `rules/an-ordinary-jar-is-normal`: “8 days”\n\n  Fix: Change the tree, write a new packet'
    )
  })

  test('an item that the packet does not have', async () => {
    const { errors } = await publishing(
      filled().replace('decisions:\n', 'decisions:\n  rules/made-up: { decision: agree }\n')
    )
    expect(errors).toContain('The packet has no item `rules/made-up`.')
  })

  test('a role that must sign and has not', async () => {
    const unsigned = filled().replace('signed: 2026-11-20', 'signed:')
    const byAnother = unsigned.replace(
      'educator\n    signed:\n',
      'educator\n    signed: 2026-11-20\n'
    )
    for (const text of [unsigned, byAnother]) {
      const { code, errors } = await publishing(text)
      expect(code).toBe(1)
      expect(errors).toMatch(/^returned\.yaml:\d+:5 {2}No food-safety specialist has signed\./)
    }
  })

  test('a signature on a day to come', async () => {
    const { errors } = await publishing(filled().replace('2026-11-20', '2026-11-26'))
    expect(errors).toContain('cannot have signed on 2026-11-26: that day is still to come.')
  })

  test('a name of a person', async () => {
    const named = filled().replace(
      'signed: 2026-11-20',
      'signed: 2026-11-20\n    name: Pat Example'
    )
    const { code, errors } = await publishing(named)
    expect(code).toBe(1)
    expect(errors).toContain('unknown-key')
    const asRole = filled().replace('role: food-safety specialist', 'role: Pat Example')
    expect((await publishing(asRole)).errors).toContain('wrong-form')
  })

  test('a review after which the next is due too late', async () => {
    const { code, errors } = await publishing(filled().replace('2026-11-20', '2024-11-20'))
    expect(code).toBe(1)
    expect(errors).toContain('review-day-unfit')
  })

  test('a file that is not there', async () => {
    const { code, errors } = await here('publish', 'jar', '--review', 'nowhere.yaml')
    expect([code, errors]).toEqual([
      2,
      'There is no file `nowhere.yaml`. Name the review file that came back.\n'
    ])
  })
})

describe('a review that came back agreed and signed', () => {
  beforeEach(() => rmSync(join(own, 'trees/editions'), { recursive: true, force: true }))
  afterAll(() => rmSync(join(own, 'trees/editions'), { recursive: true, force: true }))

  test('publishes the edition as signed, with roles and days and what the tree has to say', async () => {
    const { code, output } = await publishing(
      filled().replace('educator\n    signed:\n', 'educator\n    signed: 2026-11-22\n')
    )
    expect(code).toBe(0)
    expect(output).toMatch(
      /^trees\/editions\/jar@1\.json: edition 1, signed, meaning [0-9a-f]{12}\nIn trees\/jar\/tree\.yaml write: review: { state: signed, by: \[food-safety specialist, food-preservation educator\], reviewed: 2026-11-20, due: 2027-11-01 }\n$/
    )
    const { tree, signed } = JSON.parse(readFileSync(edition, 'utf8'))
    expect(tree.review).toEqual({
      state: 'signed',
      by: ['food-safety specialist', 'food-preservation educator'],
      reviewed: '2026-11-20',
      due: '2027-11-01'
    })
    expect(signed).toEqual([
      { role: 'food-safety specialist', on: '2026-11-20' },
      { role: 'food-preservation educator', on: '2026-11-22' }
    ])
    expect((await publishing(filled())).errors).toContain('published without this review')
    const { output: opened } = await here('packet', 'jar', '--out', join(own, 'later'))
    expect(opened).toContain('jar.packet.html')
    const later = readFileSync(join(own, 'later/jar.packet.html'), 'utf8')
    expect(later).toContain('Since edition 1, meaning')
    expect(later).toContain('The meaning is the same.')
  })

  test('says how much nobody could judge', async () => {
    const { code, output } = await publishing(filled('cannot judge'))
    expect(code).toBe(0)
    expect(output).toContain('3 items stay unconfirmed: the reviewer cannot judge.\n')
  })

  test('published before as a draft, asks for the next number', async () => {
    expect((await here('publish', 'jar')).output).toContain('edition 1, draft')
    const draft = readFileSync(edition, 'utf8')
    const { code, errors } = await publishing(filled())
    expect([code, errors]).toEqual([
      2,
      'Edition 1 is published without this review, and is never changed. Write `edition: 2` in trees/jar/tree.yaml. The review holds for it.\n'
    ])
    expect(readFileSync(edition, 'utf8')).toBe(draft)
    write(
      'trees/jar/tree.yaml',
      readFileSync(join(own, 'trees/jar/tree.yaml'), 'utf8').replace('edition: 1', 'edition: 2')
    )
    expect((await publishing(filled())).output).toContain('jar@2.json: edition 2, signed')
  })
})
