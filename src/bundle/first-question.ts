import { progressOf } from '../evaluate/progress.ts'
import { walk } from '../evaluate/walk.ts'
import type { Texts } from '../opening/bundle.ts'
import type { FirstQuestion } from '../opening/first-question.ts'
import { groupOf } from '../tree/group.ts'
import { must } from '../tree/must.ts'
import { SAYS_NOTHING } from '../tree/says-nothing.ts'
import type { Tree } from '../tree/tree.ts'
import { isSafetyText } from '../words/kinds.ts'
import { SOURCE_TAG } from '../words/words.ts'
import type { BrowserBundle } from './browser-bundle.ts'

/** The screens' own words in one language. */
export const uiOf = ({ screens }: BrowserBundle, tag: string) => groupOf(screens[tag]?.ui)

/** What a tree's first question needs in one language; `more`: what a place says beside it. @throws Error when the tree begins with a number. */
export function firstQuestion(
  bundle: BrowserBundle,
  id: string,
  tag: string,
  more: readonly string[] = []
): FirstQuestion {
  const { tree, sources, pictures } = must(bundle.trees[id], `tree ${id}`)
  const walked = walk(tree, {})
  const asks = walked.asks
  const question = asks && tree.questions[asks.question]
  const observation = asks && tree.observations[asks.observation]
  if (!question || !observation) throw new Error(`${id} asks nothing at its start`)
  if (observation.kind === 'measure') {
    throw new Error(`${id} asks for a number first, which no first screen can take`)
  }
  const words = groupOf(bundle.words[id]?.[tag])
  return {
    tree: firstOf(tree, question, observation),
    sources: Object.fromEntries(
      question.because.map(id => [id, sources[id]?.title ?? id] as const)
    ),
    pictures: only(pictures, [observation.id]),
    texts: {
      ui: { ...firstWords(uiOf(bundle, tag)), ...only(uiOf(bundle, tag), more) },
      observations: only(groupOf(words.observations), [observation.id]),
      [id]: { title: groupOf(words[id]).title }
    },
    cautions: cautionsOf(tag, firstWords(uiOf(bundle, SOURCE_TAG))),
    atMostMore: progressOf(tree, {}, walked).atMostMore
  }
}

/** Groups of the screens' words that no question shows; `embed` is in the script itself. */
const LATER = [
  'desk',
  'sheet',
  'preview',
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
  'switch',
  'workbench',
  'contacts',
  'practice',
  'look-alikes',
  'follow-ups',
  'seen',
  'known',
  'what-is-known',
  'bring-in',
  'ask-how',
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
  // Of a tree that could not be had, and of an outcome's standing.
  ...['not-loaded', 'no-such-tree', 'draft', 'edition', 'change', 'quit'],
  // What only a question for a number shows.
  ...['prompts', 'errors', 'unit-names', 'go-on'],
  // The choice of a ferment is the page's.
  ...['choose', 'choose-how', 'something-else', 'something-else-how']
]

/** What the foot of a screen says of whom to call: the two numbers by name, the office with its doubt. */
export function footReferral(ui: Texts): Texts {
  const referral = groupOf(ui.referral)
  const named = ['emergency', 'poison-help'].map(to => [to, only(groupOf(referral[to]), ['name'])])
  return { ...Object.fromEntries(named), ...only(referral, ['office-missing', 'office-stale']) }
}

/** The screens' words without the groups that a first question never shows. */
function firstWords(ui: Texts): Texts {
  // A plural form stands behind an underscore.
  const kept = Object.entries(ui).filter(([key]) => !LATER.includes(key.replace(/_\w+$/, '')))
  return { ...Object.fromEntries(kept), referral: footReferral(ui) }
}

/** A tree that shows its first question and its standing, and says nothing of any outcome. */
const firstOf = (
  tree: Tree,
  question: Tree['questions'][string],
  observation: Tree['observations'][string]
): Tree => ({
  ...tree,
  // Nothing is said, shared or kept of a walk before its first answer.
  ...SAYS_NOTHING,
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
  }
})

/** The English beside a draft translation's screen; null in English. */
export const cautionsOf = (tag: string, ui: Texts): Texts | null =>
  tag === SOURCE_TAG ? null : { ui: safetyOf(ui) }

/** The texts of a namespace that tell people what to do or what to beware of, groups kept. */
function safetyOf(texts: Texts, above: readonly string[] = []): Texts {
  const kept = Object.entries(texts).flatMap(([key, text]): [string, unknown][] => {
    const keys = [...above, key]
    if (typeof text === 'string') return isSafetyText('ui', keys.join('.')) ? [[key, text]] : []
    const group = safetyOf(groupOf(text), keys)
    return Object.keys(group).length > 0 ? [[key, group]] : []
  })
  return Object.fromEntries(kept)
}

/** Of a record what these ids name. */
export const only = <T>(all: Readonly<Record<string, T>>, ids: readonly string[]) =>
  Object.fromEntries(Object.entries(all).filter(([id]) => ids.includes(id)))
