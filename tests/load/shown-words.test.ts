import { describe, expect, test } from 'vitest'
import { type AuthoredFile, load } from '../../src/load/load.ts'
import { textsIn } from '../../src/load/texts.ts'
import { textHash } from '../../src/translation/ledger.ts'
import { authoredFiles } from '../helpers/shipped.ts'

const EN = 'Watch for signs of illness for 10 days.'
const ES = 'Durante 10 días, fíjese si aparecen señales de enfermedad.'

const changed = (
  files: readonly AuthoredFile[],
  path: string,
  to: (text: string) => string
): readonly AuthoredFile[] =>
  files.map(file => (file.path === path ? { path, text: to(file.text) } : file))

/** The shipped project with one signed sentence, signed against that English. */
const signed = async (english: string): Promise<readonly AuthoredFile[]> => {
  const hashes = { english: await textHash(english), target: await textHash(ES) }
  const entry = { ...hashes, by: 'native reader', on: '2026-11-20' }
  const text = JSON.stringify({ 'steps:watch-ten-days': entry })
  return [...authoredFiles(), { path: 'shared/reviews/es.json', text }]
}
const reviewedOnly = (files: readonly AuthoredFile[]) =>
  changed(files, 'public/office.json', text =>
    text.replace('"country":', '"translations": "reviewed-only",\n  "country":')
  )
const stepsOf = async (files: readonly AuthoredFile[]) => {
  const { words, findings } = await load(files)
  expect(findings).toEqual([])
  return textsIn(words.es?.steps)
}

describe('what a reader of another language is shown', () => {
  test('a reviewed text, and drafts beside it', async () => {
    const steps = await stepsOf(await signed(EN))
    expect(steps.get('watch-ten-days')).toBe(ES)
    expect(steps.get('call-911')).toBe('Llame ahora al 911.')
  })

  test('the English of a stale one, with the day of its review', async () => {
    const steps = await stepsOf(await signed('Watch for signs of illness for 9 days.'))
    expect(steps.get('watch-ten-days')).toBe(
      `${EN} (En inglés: la traducción se revisó el 20 de noviembre de 2026, con un texto anterior.)`
    )
  })

  test('where an office wants it, reviewed texts alone; a label is English without a reason', async () => {
    const files = reviewedOnly(await signed(EN))
    const steps = await stepsOf(files)
    expect(steps.get('watch-ten-days')).toBe(ES)
    expect(steps.get('call-911')).toBe(
      'Call 911 now. (En inglés: la traducción aún no está revisada.)'
    )
    const { words } = await load(files)
    const ui = textsIn(words.es?.ui)
    expect(ui.get('language')).toBe('Español')
    expect(ui.get('start-over')).toBe('Start over')
  })

  test('and no language at all of which nothing is reviewed', async () => {
    const { words, findings } = await load(reviewedOnly(authoredFiles()))
    expect(findings).toEqual([])
    expect(Object.keys(words)).toEqual(['en'])
  })

  test('the English of what is for an office’s people, where nobody has translated it', async () => {
    const files = changed(authoredFiles(), 'locales/es/ui.json', text => {
      const { desk: _, ...rest } = JSON.parse(text)
      return JSON.stringify(rest)
    }).filter(({ path }) => path !== 'locales/es/practice.json')
    const { words, findings } = await load(files)
    const missed = findings.filter(({ code }) => code !== 'accepted-for-nothing')
    expect(missed).toEqual([])
    const [own, english] = [textsIn(words.es?.ui), textsIn(words.en?.ui)]
    expect(own.get('desk.title')).toBe(english.get('desk.title'))
    expect(own.get('start-over')).toBe('Empezar de nuevo')
    expect(textsIn(words.es?.practice).size).toBe(textsIn(words.en?.practice).size)
  })

  test('and of nothing that a caller reads', async () => {
    const files = changed(authoredFiles(), 'locales/es/ui.json', text => {
      const { kiosk: _, ...rest } = JSON.parse(text)
      return JSON.stringify(rest)
    })
    const { findings } = await load(files)
    expect(findings.map(({ code }) => code)).toContain('text-not-translated')
  })
})
