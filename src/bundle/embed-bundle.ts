import { progressOf } from '../evaluate/progress.ts'
import { walk } from '../evaluate/walk.ts'
import type { Texts, TreeBundle } from '../opening/bundle.ts'
import type { FirstQuestion, WholeTree } from '../places/embed/embed-files.ts'
import type { Observation } from '../tree/observation.ts'
import type { Tree } from '../tree/tree.ts'
import { isSafetyText } from '../words/kinds.ts'
import { SOURCE_TAG } from '../words/words.ts'
import type { BrowserBundle } from './browser-bundle.ts'

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
        words: eachTag(bundle, tag => ({ ui: uiOf(bundle, tag), ...bundle.words[id]?.[tag] })),
        drawings: bundle.drawings[id] ?? {}
      }
    ])
  )
}

/** By language tag the few words for when no file comes: who to call, and how to try again. */
export const helpTexts = (bundle: BrowserBundle): Readonly<Record<string, Texts>> =>
  eachTag(bundle, tag => {
    const { embed, referral = {}, 'who-to-call': who } = uiOf(bundle, tag) as Record<string, Texts>
    const named = ['emergency', 'poison-help'].map(
      to => [to, { name: (referral[to] as Texts).name }] as const
    )
    return { ui: { embed, 'who-to-call': who, referral: Object.fromEntries(named) } }
  })

const eachTag = <T>({ screens }: BrowserBundle, of: (tag: string) => T) =>
  Object.fromEntries(Object.keys(screens).map(tag => [tag, of(tag)]))

const uiOf = ({ screens }: BrowserBundle, tag: string) => screens[tag]?.ui as Texts

function firstQuestion(bundle: BrowserBundle, id: string, tag: string): FirstQuestion {
  const { tree, sources, pictures } = bundle.trees[id] as TreeBundle
  const walked = walk(tree, {})
  const asks = walked.asks
  const question = asks && tree.questions[asks.question]
  const observation = asks && tree.observations[asks.observation]
  if (!question || !observation) throw new Error(`${id} asks nothing at its start`)
  const words = bundle.words[id]?.[tag] as Record<string, Texts>
  return {
    tree: firstOf(tree, question, observation),
    sources: only(sources, question.because),
    pictures: only(pictures, [observation.id]),
    texts: {
      ui: firstWords(uiOf(bundle, tag), observation.kind),
      observations: only(words.observations ?? {}, [observation.id]),
      [id]: { title: words[id]?.title }
    },
    cautions:
      tag === SOURCE_TAG
        ? null
        : { ui: safetyOf(firstWords(uiOf(bundle, SOURCE_TAG), observation.kind)) },
    atMostMore: progressOf(tree, {}, walked).atMostMore
  }
}

/** Groups of the screens' words that no question shows; `embed` is in the script itself. */
const LATER = [
  'desk',
  'kiosk',
  'sheet',
  'short',
  'units',
  'signal',
  'embed',
  'table',
  'recall',
  'recall-how',
  'withdrawn',
  'worked-out',
  'reckon',
  'workbench',
  'switch',
  'look-alikes',
  'follow-ups',
  // What is said of an outcome, and of the way back to it.
  ...['do-now', 'later', 'later-steps', 'clean-up', 'keep', 'start-again', 'what-it-means'],
  ...['rules-of-thumb', 'what-to-change', 'who-must-not', 'sources', 'overdue'],
  ...['medical-help', 'medical-help-in-brief'],
  ...[
    'recheck-hours',
    'recheck-hours-exact',
    'recheck-hours-within',
    'recheck-between-days',
    'recheck-day',
    'recheck-days'
  ],
  ...['keep-in-mind', 'print', 'copy-text', 'copied-text', 'copy-link', 'copied-link', 'link-note'],
  ...['link-whole', 'link-other-edition', 'link-damaged', 'find-the-cause', 'find-the-cause-how'],
  ...[
    'answered',
    'take-back',
    'understood',
    'outcome',
    'outcome-from-address',
    'outcome-in-general'
  ],
  ...['outcome-other-edition', 'no-such-outcome', 'ask-about-mine', 'changing'],
  ...['change-answer', 'unsure-of-rest', 'people-first', 'from-memory', 'hands-off'],
  // The choice of a ferment is the page's.
  ...['choose', 'choose-how', 'something-else', 'something-else-how']
]
/** Groups that only a question for a number shows. */
const OF_MEASURES = ['prompts', 'errors', 'unit-names', 'go-on']
/** Whom the foot of every screen names. */
const AT_THE_FOOT = ['emergency', 'poison-help', 'office-missing', 'office-stale']

/** The screens' words without the groups that a first question never shows. */
function firstWords(ui: Texts, kind: Observation['kind']): Texts {
  const unused = kind === 'measure' ? LATER : [...LATER, ...OF_MEASURES]
  // A plural form stands behind an underscore.
  const kept = Object.entries(ui).filter(([key]) => !unused.includes(key.replace(/_\w+$/, '')))
  return { ...Object.fromEntries(kept), referral: only(ui.referral as Texts, AT_THE_FOOT) }
}

/** A tree that shows its first question and its standing, and says nothing of any outcome. */
const firstOf = (
  tree: Tree,
  question: Tree['questions'][string],
  observation: Tree['observations'][string]
): Tree => ({
  ...tree,
  verdicts: [],
  observations: { [observation.id]: observation },
  questions: {
    // What follows from an answer is not needed to ask for it.
    [question.id]: {
      ...question,
      signs: {},
      turns: [],
      answers: {},
      ranges: [],
      taste: []
    } as never
  },
  after: [],
  rules: [],
  askedAgain: [],
  openCases: {},
  unfoundFaults: {},
  spokenRules: [],
  presumptions: {},
  advice: { ...tree.advice, verdicts: {}, notes: {}, does: {}, followUps: [] }
})

/** The texts of a namespace that tell people what to do or what to beware of, groups kept. */
function safetyOf(texts: Texts, above: readonly string[] = []): Texts {
  const kept = Object.entries(texts).flatMap(([key, text]): [string, unknown][] => {
    const at = [...above, key]
    if (typeof text === 'string') return isSafetyText('ui', at.join('.')) ? [[key, text]] : []
    const group = safetyOf(text as Texts, at)
    return Object.keys(group).length > 0 ? [[key, group]] : []
  })
  return Object.fromEntries(kept)
}

const only = <T>(all: Readonly<Record<string, T>>, ids: readonly string[]) =>
  Object.fromEntries(Object.entries(all).filter(([id]) => ids.includes(id)))
