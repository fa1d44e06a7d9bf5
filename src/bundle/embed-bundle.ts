import type { Texts } from '../opening/bundle.ts'
import type { FirstQuestion } from '../opening/first-question.ts'
import type { WholeTree } from '../places/embed/embed-files.ts'
import { groupOf } from '../tree/group.ts'
import { SOURCE_TAG } from '../words/words.ts'
import type { BrowserBundle } from './browser-bundle.ts'
import { firstQuestion, uiOf } from './first-question.ts'

/** What the embed's files hold of one tree. */
export interface EmbedTree {
  /** By language tag. */
  readonly first: Readonly<Record<string, FirstQuestion>>
  readonly whole: WholeTree
  /** By language tag: the screens' words and the tree's. */
  readonly words: Readonly<Record<string, Texts>>
  readonly drawings: Readonly<Record<string, string>>
}

/** Parts a browser's bundle into what the embed takes at once and what it takes later, tree by tree. */
export function embedTrees(bundle: BrowserBundle): Readonly<Record<string, EmbedTree>> {
  return Object.fromEntries(
    Object.entries(bundle.trees).map(([id, { tree, sources, pictures, lookAlikes }]) => [
      id,
      {
        first: eachTag(bundle, tag => firstQuestion(bundle, id, tag)),
        whole: { tree, sources, pictures, lookAlikes },
        words: eachTag(bundle, tag => ({ ui: uiOfWalk(bundle, tag), ...bundle.words[id]?.[tag] })),
        drawings: bundle.drawings[id] ?? {}
      }
    ])
  )
}

/** The languages of which the script itself says something: every reader of any language fetches them. */
const HELP_TAGS: ReadonlySet<string> = new Set(['en', 'es'])

/** By language tag the few words for when no file comes: who to call, and how to try again. */
export const helpTexts = (bundle: BrowserBundle): Readonly<Record<string, Texts>> => {
  const help = eachTag(bundle, tag => {
    const { embed, referral, 'who-to-call': who } = uiOf(bundle, tag)
    const named = ['emergency', 'poison-help'].map(
      to => [to, { name: groupOf(groupOf(referral)[to]).name }] as const
    )
    return { ui: { embed, 'who-to-call': who, referral: Object.fromEntries(named) } }
  })
  return Object.fromEntries(Object.entries(help).filter(([tag]) => HELP_TAGS.has(tag)))
}

/** By language tag what the self-test says: a language that has no words for it says the English. */
export function selfTestTexts({ selfTest }: BrowserBundle): Readonly<Record<string, Texts>> {
  const english = JSON.stringify(selfTest[SOURCE_TAG])
  return Object.fromEntries(
    Object.entries(selfTest)
      .filter(([tag, words]) => tag === SOURCE_TAG || JSON.stringify(words) !== english)
      .map(([tag, words]) => [tag, groupOf(words['self-test'])])
  )
}

const eachTag = <T>({ screens }: BrowserBundle, of: (tag: string) => T) =>
  Object.fromEntries(Object.keys(screens).map(tag => [tag, of(tag)]))

/** The screens' own words, without those of the choice of a ferment, which no embed shows. */
function uiOfWalk(bundle: BrowserBundle, tag: string): Texts {
  const { 'ask-how': _, ...ui } = uiOf(bundle, tag)
  return ui
}
