import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { loadProject } from '../../src/cli/read-project.ts'
import { textsIn } from '../../src/load/texts.ts'
import { copyShipped } from '../helpers/copy-shipped.ts'
import { runCommand } from './run-command.ts'

const own = mkdtempSync(join(tmpdir(), 'jarside-translate-'))
const here = (...args: readonly string[]) => runCommand(['translate', ...args, '--in', own])
const CALL = 'steps:call-911'
const stateOf = async (id: string) => {
  const { loaded } = await loadProject(own)
  return loaded.translations.es?.find(text => text.id === id)?.state
}
const shown = async () => {
  const { loaded } = await loadProject(own)
  return textsIn(loaded.words.es?.steps).get('call-911')
}
const rewrite = (tag: string, from: string, to: string) => {
  const file = join(own, `locales/${tag}/steps.json`)
  const text = readFileSync(file, 'utf8')
  expect(text).toContain(from)
  writeFileSync(file, text.replace(from, to))
}

beforeAll(() => {
  copyShipped(own)
})
afterAll(() => rmSync(own, { recursive: true, force: true }))

describe('what was reviewed holds for two sentences and no other', () => {
  test('a text that nobody signed is a draft', async () => {
    expect(await stateOf(CALL)).toBe('draft')
  })

  test('an accepted text is reviewed, by a role on a day', async () => {
    const { code, output } = await here('accept', 'es', '--text', CALL, '--by', 'native reader')
    expect({ code, output }).toEqual({
      code: 0,
      output: '1 text of `es` reviewed by a native reader on 2026-11-25 (shared/reviews/es.json).\n'
    })
    expect(await stateOf(CALL)).toBe('reviewed')
    expect(await shown()).toBe('Llame ahora al 911.')
    expect((await here('packet', 'es')).output).not.toContain(`${CALL}\n`)
  })

  test('a changed English makes it stale at once, and the English is shown', async () => {
    rewrite('en', '"Call 911 now."', '"Call 911 right now."')
    expect(await stateOf(CALL)).toBe('stale')
    expect(await shown()).toBe(
      'Call 911 right now. (En inglés: la traducción se revisó el 25 de noviembre de 2026, con un texto anterior.)'
    )
    const { output } = await here('packet', 'es')
    expect(output).toContain(`${CALL} (signed before one of the two was changed)`)
    rewrite('en', '"Call 911 right now."', '"Call 911 now."')
    expect(await stateOf(CALL)).toBe('reviewed')
  })

  test('so does a changed translation', async () => {
    rewrite('es', '"Llame ahora al 911."', '"Llame ya al 911."')
    expect(await stateOf(CALL)).toBe('stale')
    expect(await shown()).toBe(
      'Call 911 now. (En inglés: la traducción se revisó el 25 de noviembre de 2026, con un texto anterior.)'
    )
  })
})

describe('what a coordinator reads', () => {
  test('the table counts each kind', async () => {
    const { code, output } = await here('status')
    expect(code).toBe(0)
    expect(output).toMatch(/^(?:.*\n)*es\n +texts +missing +draft +reviewed +stale\n {2}action /)
    expect(output).toMatch(/\n {2}all +\d{4} +0 +\d{4} +0 +1\n/)
  })

  test('what to do comes first, and of that what forbids something', async () => {
    const { output } = await here('packet', 'es')
    const heads = [...output.matchAll(/^([A-Z]+): \d+$/gm)].map(([, kind]) => kind)
    expect(heads).toEqual(['ACTION', 'REFERRAL', 'CAUTION', 'ADVICE', 'LABEL'])
    expect(/^ {2}en {2}(.*)$/m.exec(output)?.[1]).toMatch(/\b(?:not|never|no|none|nothing|only)\b/i)
  })

  test.each([
    [['status', 'es'], 'Say `status`, `packet <language>`'],
    [['packet', 'fr'], 'Name one language: es.'],
    [['accept', 'es', '--text', CALL, '--by', 'Bob'], 'Say who read it, by role: '],
    [['accept', 'es', '--by', 'translator'], 'Name what was read: `--text <name>`.'],
    [
      ['accept', 'es', '--text', 'steps:call-9', '--by', 'translator'],
      'There is no text `steps:call-9`.'
    ]
  ])('%s is refused', async (args, why) => {
    const { code, errors } = await here(...args)
    expect(code).toBe(2)
    expect(errors).toContain(why)
  })
})
