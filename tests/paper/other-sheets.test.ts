import { Fragment, h } from 'preact'
import { renderToString } from 'preact-render-to-string'
import { expect, test } from 'vitest'
import { screenWords } from '../../src/bundle/page-words.ts'
import { sheetsOf } from '../../src/bundle/sheets-bundle.ts'
import { wordsOfTree } from '../../src/cli/words-of-tree.ts'
import { textsOf } from '../../src/load/texts-of-tree.ts'
import { settingOf } from '../../src/opening/setting-of.ts'
import type { TextsByTag } from '../../src/opening/speech.ts'
import {
  batchCardHtml,
  classSheetHtml,
  keySheetHtml,
  lookAlikeChartHtml
} from '../../src/paper/framed-html.tsx'
import { otherSheets } from '../../src/paper/other-sheets.tsx'
import type { SheetOf } from '../../src/paper/verdict-sheet.tsx'
import { sidesOf } from '../../src/parts/print-choice.ts'
import type { Setting } from '../../src/parts/setting.tsx'
import type { Tree } from '../../src/tree/tree.ts'
import { createWords } from '../../src/words/words.ts'
import { openShipped } from '../helpers/shipped.ts'

const { loaded, office } = await openShipped()
const { words, pictures, lookAlikes, knowHow } = loaded
const today = new Date('2026-11-25T12:00:00Z')
const tags = Object.keys(words)

const each = (
  of: (texts: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>
) => Object.fromEntries(tags.map(tag => [tag, of(words[tag] ?? {})]))

const screens: TextsByTag = each(texts => screenWords(loaded.trees, texts))

/** What the page has of a tree in a language, before anybody prints. */
function settingIn(tree: Tree, tag: string): Setting {
  const texts: TextsByTag = each(own => ({
    ...textsOf(tree, own),
    'look-alikes': own['look-alikes'],
    pictures: own.pictures
  }))
  const bundle = {
    tree: { ...tree, rules: [] },
    sources: {},
    texts: {},
    pictures,
    lookAlikes: lookAlikes.filter(({ trees }) => trees.includes(tree.id))
  }
  return settingOf({ bundle, texts, drawings: {} }, { tag, texts: screens }, office, today)
}

const shown = (setting: Setting, tree: Tree) =>
  otherSheets(sheetsOf(tree, loaded))(setting).map(
    ({ name, side }) =>
      [
        name,
        sidesOf(setting, false)
          .map(own => renderToString(h(Fragment, null, side(own))))
          .join('')
      ] as const
  )

test('a page prints the very sheets that the command writes', () => {
  const tag = 'es'
  for (const tree of loaded.trees) {
    const sheet: SheetOf = {
      tree,
      language: tag,
      ...wordsOfTree(tree, loaded),
      office,
      home: office?.address ?? '',
      today,
      paper: 'letter',
      print: 'standard',
      pictures,
      lookAlikes,
      knowHow,
      drawings: {},
      style: ''
    }
    const written = {
      card: batchCardHtml(sheet),
      chart: lookAlikeChartHtml(sheet),
      class: classSheetHtml(sheet),
      key: keySheetHtml(sheet)
    }
    const body = (page: string) => /<body[^>]*>(.*)<\/body>/s.exec(page)?.[1]
    const pages = Object.entries(written).flatMap(([name, page]) =>
      page === null ? [] : [[name, body(page)]]
    )
    expect(shown(settingIn(tree, tag), tree)).toEqual(pages)
  }
})

test('behind a reviewed translation English stands where it is wanted, behind a draft always', () => {
  const [tree] = loaded.trees
  if (tree === undefined) throw new Error('there is no tree')
  const draft = settingIn(tree, 'es')
  const reviewed: Setting = { ...draft, second: null, behind: createWords(words, 'en') }
  const tagsOf = (setting: Setting, twoSides: boolean) =>
    sidesOf(setting, twoSides).map(own => own.tag)
  expect(tagsOf(draft, false)).toEqual(['es', 'en'])
  expect(tagsOf(reviewed, false)).toEqual(['es'])
  expect(tagsOf(reviewed, true)).toEqual(['es', 'en'])
  expect(tagsOf(settingIn(tree, 'en'), true)).toEqual(['en'])
})
