import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { loadProject } from '../../src/cli/read-project.ts'
import { copyShipped } from '../helpers/copy-shipped.ts'
import { runCommand } from './run-command.ts'

const own = mkdtempSync(join(tmpdir(), 'jarside-exchange-'))
const here = (...args: readonly string[]) => runCommand(['translate', ...args, '--in', own])
const file = (name: string) => join(own, name)
const words = (tag: string, stem = 'steps') => file(`locales/${tag}/${stem}.json`)
const rewrite = (path: string, ...changes: readonly (readonly [string, string])[]) => {
  const text = readFileSync(path, 'utf8')
  const changed = changes.reduce((all, [from, to]) => {
    expect(all.includes(from), from).toBe(true)
    return all.replace(from, to)
  }, text)
  writeFileSync(path, changed)
}
/** Whether the Spanish steps hold this; their text itself would fill a report. */
const stands = (text: string) => readFileSync(words('es'), 'utf8').includes(text)
const ENGLISH = 'Watch for signs of illness for 10 days.'
const NEWER = 'Watch all of them for signs of illness for 10 days.'
const OLD = 'Durante 10 días, fíjese si aparecen señales de enfermedad.'
const BETTER = 'Fíjese durante 10 días si aparecen señales de enfermedad.'
const THEIRS = 'Vigile durante 10 días si aparecen señales de enfermedad.'
const REFUSED = 'No se fije durante 12 días si aparecen señales de enfermedad.'
const anew = () => copyShipped(own)

beforeAll(anew)
afterAll(() => rmSync(own, { recursive: true, force: true }))

describe.each(['xliff', 'csv'])('as %s', as => {
  const given = `given.${as}`
  const give = async (...more: readonly string[]) => {
    const { code } = await here('export', 'es', '--as', as, '--to', file(given), ...more)
    expect(code).toBe(0)
  }

  test('what is given out and taken back changes nothing', async () => {
    anew()
    await give()
    const before = readFileSync(words('es'), 'utf8')
    const { code, output } = await here('import', 'es', file(given))
    expect({ code, output }).toEqual({
      code: 0,
      output: expect.stringMatching(
        /^es: 0 taken, as drafts, 0 left, \d{4} as they stand, 0 open\.\n$/
      )
    })
    expect(readFileSync(words('es'), 'utf8')).toBe(before)
  })

  test('a better sentence is taken as a draft, whatever state the file claims', async () => {
    anew()
    await give()
    rewrite(file(given), [OLD, BETTER])
    const tried = await here('import', 'es', file(given), '--try')
    expect(tried.output).toMatch(/^es: 1 would be taken, 0 left/)
    expect(stands(`"${OLD}"`)).toBe(true)
    const { code, output } = await here('import', 'es', file(given))
    expect({ code, output }).toEqual({
      code: 0,
      output: expect.stringMatching(/^es: 1 taken, as drafts/)
    })
    expect(stands(`"watch-ten-days": "${BETTER}"`)).toBe(true)
    const { loaded } = await loadProject(own)
    expect(loaded.findings).toEqual([])
    const text = loaded.translations.es?.find(({ id }) => id === 'steps:watch-ten-days')
    expect(text).toMatchObject({ target: BETTER, state: 'draft' })
  })

  test('a newer English is never translated by an older one', async () => {
    anew()
    await give()
    rewrite(file(given), [OLD, BETTER])
    rewrite(words('en'), [`"${ENGLISH}"`, `"${NEWER}"`])
    const { code, output } = await here('import', 'es', file(given))
    expect(code).toBe(1)
    expect(output).toContain(
      `steps:watch-ten-days is left: its English is another one now: ${NEWER}.\n`
    )
    expect(stands(`"${OLD}"`)).toBe(true)
  })

  test('a translation that somebody changed meanwhile stays, and both are told', async () => {
    anew()
    await give()
    rewrite(file(given), [OLD, BETTER])
    rewrite(words('es'), [`"${OLD}"`, `"${THEIRS}"`])
    const { code, output } = await here('import', 'es', file(given))
    expect(code).toBe(1)
    expect(output).toContain(
      'steps:watch-ten-days is left: somebody changed the translation since it was given out.\n' +
        `  stands   ${THEIRS}\n  offered  ${BETTER}\n`
    )
    expect(stands(`"${THEIRS}"`)).toBe(true)
  })

  test('what the checks find is refused, by the rule', async () => {
    anew()
    await give()
    rewrite(file(given), [OLD, REFUSED])
    const { code, output } = await here('import', 'es', file(given))
    expect(code).toBe(1)
    expect(output).toMatch(
      /steps:watch-ten-days is left: the checks find something \(.*numbers: -10 \+12/
    )
    expect(output).toContain('negation: ')
    expect(stands(`"${OLD}"`)).toBe(true)
  })

  test('only what is open is given out where that is asked', async () => {
    anew()
    await here('accept', 'es', '--text', 'steps', '--by', 'translator')
    await give('--open')
    expect(readFileSync(file(given), 'utf8').includes(OLD)).toBe(false)
    rmSync(file('shared/reviews/es.json'))
  })

  test('a language that nobody began comes in as far as it is translated', async () => {
    anew()
    const { code } = await here('export', 'fr', '--as', as, '--to', file(given))
    expect(code).toBe(0)
    const text = readFileSync(file(given), 'utf8')
    const said = 'Observez pendant 10 jours tout signe de maladie.'
    // One text is translated, the others are open.
    writeFileSync(
      file(given),
      as === 'csv'
        ? text.replace(`${ENGLISH},,`, `${ENGLISH},${said},`)
        : text.replace(`${ENGLISH}</source>`, `${ENGLISH}</source><target>${said}</target>`)
    )
    const { output } = await here('import', 'fr', file(given))
    expect(output).toMatch(/^fr: 1 taken, as drafts, 0 left, 0 as they stand, \d{4} open\.\n$/)
    expect(JSON.parse(readFileSync(words('fr'), 'utf8'))).toEqual({
      $schema: '../../shared/schemas/locale-steps.schema.json',
      'watch-ten-days': said
    })
    rmSync(file('locales/fr'), { recursive: true })
  })
})

test('a text of one ferment alone is put where its English stands', async () => {
  anew()
  const english = JSON.parse(readFileSync(words('en', 'kombucha-jar'), 'utf8'))
  const [note = ''] = Object.keys(english.notes)
  const before = JSON.parse(readFileSync(words('es', 'kombucha-jar'), 'utf8'))
  const said: string = before.notes[note]
  await here('export', 'es', '--as', 'csv', '--to', file('own.csv'))
  rewrite(words('es', 'kombucha-jar'), [JSON.stringify(said), JSON.stringify(`${said} x`)])
  // The sheet is older than that: it is left, and the place is known.
  const { output } = await here('import', 'es', file('own.csv'))
  expect(output).toContain(`notes:${note} is left: somebody changed the translation`)
  await here('export', 'es', '--as', 'csv', '--to', file('own.csv'))
  rewrite(file('own.csv'), [`${said} x`, said])
  await here('import', 'es', file('own.csv'))
  expect(JSON.parse(readFileSync(words('es', 'kombucha-jar'), 'utf8'))).toEqual(before)
})

test.each([
  [['export', 'en'], '`en` is no language to translate into.'],
  [['export', 'es', '--as', 'pdf'], '`--as` takes `xliff` or `csv`.'],
  [['import', 'es', '/nowhere.xlf'], 'There is no file `/nowhere.xlf`.'],
  [['import', 'es'], 'Say `status`']
])('%s is refused', async (args, why) => {
  const { code, errors } = await here(...args)
  expect(code).toBe(2)
  expect(errors).toContain(why)
})
