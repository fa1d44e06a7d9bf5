import { createHash } from 'node:crypto'
import type { Texts } from '../opening/bundle.ts'
import { choicesFile, type FrontBundle, firstFile, type TreeChoices } from '../opening/front.ts'
import { groupOf } from '../tree/group.ts'
import { SOURCE_TAG } from '../words/words.ts'
import type { BrowserBundle } from './browser-bundle.ts'
import { cautionsOf, firstQuestion, footReferral, only, uiOf } from './first-question.ts'

/** A page's front: what its script holds, and the files of its first screens by their addresses. */
export interface PackedFront {
  readonly front: FrontBundle
  readonly files: Readonly<Record<string, string>>
}

/** What head and foot say on every screen. */
const FRAME = [
  ...['language', 'draft-translation', 'language-not-loaded', 'back', 'start-over', 'opening'],
  ...['who-to-call', 'open-now', 'closed-now', 'education', 'more', 'more-about']
]
const CHOICE = [
  'choose',
  'choose-how',
  'ask-how',
  'something-else',
  'something-else-how',
  'look-alikes'
]

/** Packs the front: a file for each first question and for the choice of one, in each language. */
export function frontOf(bundle: BrowserBundle): PackedFront {
  const tags = bundle.catalogue.languages.map(({ tag }) => tag)
  const screens = tags.flatMap(tag => [
    [(edition: string) => choicesFile(tag, edition), choicesIn(bundle, tag)] as const,
    ...Object.keys(bundle.trees).map(
      id =>
        [
          (edition: string) => firstFile(id, tag, edition),
          firstQuestion(bundle, id, tag, ['switch'])
        ] as const
    )
  ])
  const written = screens.map(([name, screen]) => [name, JSON.stringify(screen)] as const)
  const hash = createHash('sha256')
  for (const [, text] of written) hash.update(text)
  const edition = hash.digest('hex').slice(0, 8)
  return {
    front: {
      languages: bundle.catalogue.languages,
      texts: Object.fromEntries(tags.map(tag => [tag, { ui: wordsOf(bundle, tag, FRAME) }])),
      edition
    },
    files: Object.fromEntries(written.map(([name, text]) => [name(edition), text]))
  }
}

function choicesIn(bundle: BrowserBundle, tag: string): TreeChoices {
  const { trees } = bundle.catalogue
  const ui = (of: string) => wordsOf(bundle, of, [...FRAME, ...CHOICE])
  const titles = only(
    bundle.screens[tag] ?? {},
    trees.map(({ id }) => id)
  )
  return {
    trees: trees.map(({ id, drawing }) => ({ id, drawing })),
    texts: { ui: ui(tag), ...titles },
    cautions: cautionsOf(tag, ui(SOURCE_TAG))
  }
}

function wordsOf(bundle: BrowserBundle, tag: string, keys: readonly string[]): Texts {
  const ui = uiOf(bundle, tag)
  const { 'look-alikes': pairs, ...rest } = only(ui, keys)
  return {
    ...rest,
    ...(pairs !== undefined && { 'look-alikes': only(groupOf(pairs), ['see-all']) }),
    referral: footReferral(ui)
  }
}
