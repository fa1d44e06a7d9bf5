import { expect, test } from 'vitest'
import { wordsOfTree } from '../../src/cli/words-of-tree.ts'
import { batchCardHtml, keySheetHtml } from '../../src/paper/framed-html.tsx'
import { type SheetOf, verdictSheetHtml } from '../../src/paper/verdict-sheet.tsx'
import { openShipped } from '../helpers/shipped.ts'

const { loaded, office } = await openShipped()

function sheetIn(language: string): SheetOf {
  const tree = loaded.trees.find(({ id }) => id === 'kombucha-jar')
  if (tree === undefined) throw new Error('no tree')
  const { pictures, lookAlikes, knowHow } = loaded
  return {
    ...{ tree, language, pictures, lookAlikes, knowHow, drawings: {}, office },
    ...wordsOfTree(tree, loaded),
    home: 'https://jarside.larkspur.example/',
    today: new Date('2026-11-25T12:00:00Z'),
    paper: 'letter',
    print: 'standard',
    style: ''
  }
}

/** The side in front; English stands behind it. */
const front = (page: string | null) =>
  page?.split('<body')[1]?.split(/<article class="(?:sheet|framed[^"]*)" lang="en"/)[0] ?? ''

const sidesIn = (tag: string) => {
  const sheet = sheetIn(tag)
  return {
    verdict: front(verdictSheetHtml(sheet, 'likely-mold')),
    batch: front(batchCardHtml(sheet)),
    key: front(keySheetHtml(sheet))
  }
}

test.each(Object.entries(sidesIn('ar')))(
  'a phone number keeps its order on a %s sheet in Arabic',
  (_, side) => {
    expect(side).toContain('1-800-222-1222')
    // Among letters read from the right its groups would be set the other way about (UAX #9).
    const loose = side.replace(/<bdi>.*?<\/bdi>|[\u2066-\u2068][^\u2069]*\u2069/g, '')
    expect(loose.match(/1-800-222-1222|555-01\d\d/g) ?? []).toEqual([])
  }
)

test.each(['ar', 'zh', 'vi'])(
  'in %s limits are said in its own words, and a sentence ends once',
  tag => {
    const sides = sidesIn(tag)
    expect(sides.key.match(/\d+ or (?:less|more)|(?:over|under) \d/g) ?? []).toEqual([])
    expect(
      Object.values(sides)
        .join('')
        .match(/[。！？؟]\s*\./g) ?? []
    ).toEqual([])
  }
)
