import { expect, test } from 'vitest'
import type { LocalText } from '../../src/office/local-text.ts'
import { decisionFiles } from '../../src/paper/decision/sheet.tsx'
import { keySheetHtml } from '../../src/paper/framed-html.tsx'
import { type SheetOf, verdictSheetHtml } from '../../src/paper/verdict-sheet.tsx'
import { openShipped } from '../helpers/shipped.ts'

const { loaded, office } = await openShipped()
const SERVES: LocalText = { en: 'We serve all.', es: 'Atendemos a todos.' }

/** The small tree's sheet for an office that says whom it serves, or says nothing. */
function sheetIn(language: string, nonDiscrimination: LocalText | null): SheetOf {
  const tree = loaded.trees.find(({ id }) => id === 'outside-this-tool')
  if (tree === undefined || office === null) throw new Error('no tree, or no office')
  const { words: texts, sources, pictures, lookAlikes, knowHow } = loaded
  return {
    ...{ tree, language, texts, sources, pictures, lookAlikes, knowHow, drawings: {} },
    office: { ...office, nonDiscrimination },
    home: 'https://jarside.larkspur.example/',
    today: new Date('2026-11-25T12:00:00Z'),
    paper: 'letter',
    print: 'standard',
    style: ''
  }
}

const WRITE = {
  verdict: (sheet: SheetOf) => verdictSheetHtml(sheet, 'poison-help'),
  key: keySheetHtml
}

/** Whom the office serves on each side, with the language and direction that it is marked with. */
const served = (page: string) =>
  [...page.matchAll(/<span class="sheet-serves" lang="(\w+)" dir="(\w+)">([^<]*)</g)].map(
    ([, lang, dir, text]) => [lang, dir, text]
  )
const ENGLISH = ['en', 'ltr', SERVES.en]

test.each(Object.entries(WRITE))(
  'at the foot of a %s sheet an office says whom it serves',
  (_, write) => {
    expect(served(write(sheetIn('en', SERVES)))).toEqual([ENGLISH])
    expect(served(write(sheetIn('es', SERVES)))).toEqual([['es', 'ltr', SERVES.es], ENGLISH])
    // A machine translates no such thing: in Arabic it stands as the office gave it.
    expect(served(write(sheetIn('ar', SERVES)))).toEqual([ENGLISH, ENGLISH])
    expect(served(write(sheetIn('ar', null)))).toEqual([])
  }
)

test('on a chart it stands once for each language, in its own direction', () => {
  const lines = (language: string, text: LocalText | null) =>
    [
      ...decisionFiles(sheetIn(language, text)).svg.matchAll(/<text [^>]*>[^<]*serve all[^<]*</g)
    ].map(([line]) => line)
  expect(lines('en', SERVES)).toHaveLength(1)
  const [arabic, english] = lines('ar', SERVES)
  expect(arabic).toMatch(/ lang="en">\u2066We serve all\.\u2069</)
  expect(english).toMatch(/">We serve all\.</)
  expect(lines('ar', null)).toEqual([])
})
