import { existsSync, mkdirSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { type ExchangeText, UnreadableExchange } from '../exchange/exchange-text.ts'
import { textsToGive } from '../exchange/given-texts.ts'
import { type Agreed, type JudgedImport, judged, type LeftText } from '../exchange/judge.ts'
import { putTexts, type WordFiles } from '../exchange/put-texts.ts'
import { readXliff } from '../exchange/read-xliff.ts'
import { readSheet, sheetOf } from '../exchange/sheet.ts'
import { xliffOf } from '../exchange/write-xliff.ts'
import type { Loaded } from '../load/load.ts'
import { directionOf } from '../words/direction.ts'
import { SOURCE_TAG } from '../words/words.ts'
import { BadUse } from './bad-use.ts'
import { oneAtATime, writeWhole } from './write-file.ts'

/** Language tags as the folders of `locales` are named. */
const TAG = /^[a-z]{2,3}(?:-[A-Za-z0-9]{2,8})*$/

/** The texts that a language has and lacks. @throws BadUse for what is no tag, or English itself. */
export async function textsIn(loaded: Loaded, tag: string): Promise<readonly ExchangeText[]> {
  if (!TAG.test(tag) || tag === SOURCE_TAG) {
    throw new BadUse(
      `\`${tag}\` is no language to translate into. Name one by its tag, like \`es\`.`
    )
  }
  const english = loaded.words[SOURCE_TAG] ?? {}
  const translated = loaded.translations[tag] ?? []
  return textsToGive({ english, translated, notes: loaded.translatorNotes }, tag)
}

/** What `translate export` writes. @throws BadUse */
export async function exported(
  loaded: Loaded,
  tag: string,
  { as, open }: { readonly as: string; readonly open: boolean }
): Promise<string> {
  if (as !== 'xliff' && as !== 'csv') throw new BadUse('`--as` takes `xliff` or `csv`.')
  const all = await textsIn(loaded, tag)
  const texts = open ? all.filter(({ state }) => state !== 'reviewed') : all
  if (as === 'csv') return sheetOf(texts, SOURCE_TAG, tag)
  const rightToLeft = directionOf(tag) === 'rtl'
  return xliffOf(texts, { from: SOURCE_TAG, to: tag, rightToLeft })
}

/** What an import comes to, and unless it is tried alone, the files written. @throws BadUse */
export async function imported(
  folder: string,
  loaded: Loaded,
  tag: string,
  path: string,
  only: { readonly look: boolean }
): Promise<JudgedImport> {
  const current = await textsIn(loaded, tag)
  const text = textOf(path)
  const returned = orBadUse(path, () =>
    text
      .trimStart()
      .replace(/^\uFEFF/, '')
      .startsWith('<')
      ? readXliff(text, tag)
      : readSheet(text, SOURCE_TAG, tag)
  )
  const result = await judged(returned, current, tag, agreedOn(loaded, tag))
  if (only.look || result.taken.length === 0) return result
  await oneAtATime(folder, () => {
    const files = putTexts(result.taken, wordFiles(folder, SOURCE_TAG), wordFiles(folder, tag))
    mkdirSync(join(folder, 'locales', tag), { recursive: true })
    for (const [stem, words] of Object.entries(files)) {
      writeWhole(join(folder, `locales/${tag}/${stem}.json`), `${JSON.stringify(words, null, 2)}\n`)
    }
  })
  return result
}

function textOf(path: string): string {
  if (!existsSync(path)) throw new BadUse(`There is no file \`${path}\`.`)
  return readFileSync(path, 'utf8')
}

function orBadUse<T>(path: string, read: () => T): T {
  try {
    return read()
  } catch (error) {
    if (error instanceof UnreadableExchange) throw new BadUse(`${path}: ${error.message}`)
    throw error
  }
}

function agreedOn({ glossaries }: Loaded, tag: string): Agreed {
  const glossary = glossaries[tag] ?? null
  return {
    glossary,
    accepted: glossary?.accepted ?? [],
    twoWays: glossary?.['said-two-ways'] ?? {}
  }
}

/** A language's files as they stand. */
function wordFiles(folder: string, tag: string): WordFiles {
  const language = join(folder, 'locales', tag)
  const names = existsSync(language)
    ? readdirSync(language).filter(name => name.endsWith('.json'))
    : []
  return Object.fromEntries(
    names.map(name => [
      name.slice(0, -'.json'.length),
      JSON.parse(readFileSync(join(language, name), 'utf8'))
    ])
  )
}

const BECAUSE: Readonly<Record<LeftText['because'], (text: LeftText) => string>> = {
  unknown: () => 'there is no such text any more',
  twice: () => 'the file has it more than once, in different words',
  'english-changed': ({ detail }) => `its English is another one now: ${detail}`,
  'translation-changed': () => 'somebody changed the translation since it was given out',
  'origin-lost': () => 'the file does not say which translation it was made from',
  refused: ({ detail }) => `the checks find something (${detail})`,
  'too-long': ({ detail }) => `its place has room for ${detail} words`,
  'said-two-ways': ({ detail }) =>
    `the same English is “${detail}” elsewhere; list it under \`said-two-ways:\` or say it alike`
}

/** An import in lines: what was taken, and each text that was left with both sides. */
export function importLines(
  { taken, left, same, open }: JudgedImport,
  tag: string,
  look: boolean
): readonly string[] {
  const would = look ? 'would be taken' : 'taken, as drafts'
  return [
    `${tag}: ${taken.length} ${would}, ${left.length} left, ${same} as they stand, ${open} open.`,
    ...left.flatMap(text => [
      '',
      `${text.id} is left: ${BECAUSE[text.because](text)}.`,
      `  stands   ${text.stands ?? '(nothing)'}`,
      `  offered  ${text.offered}`
    ])
  ]
}
