import type { FirstQuestion } from '../../opening/first-question.ts'
import type { Answers } from '../../tree/answers.ts'
import type { RestThere } from './rest-there.ts'

/** A first question in one language. */
export interface Spoken {
  readonly tag: string
  readonly question: FirstQuestion
}

/** What an element holds while it stands in a page. */
export interface LifeContext {
  /** The language asked for. */
  readonly language: string
  readonly first: Spoken | null
  readonly rest: RestThere | null
  /** Without drawings every answer still has its words. */
  readonly drawings: Readonly<Record<string, string>> | null
  readonly answers: Answers
  /** Counts how often was tried to get what did not come. */
  readonly attempt: number
  /** Counts how often was begun anew. */
  readonly round: number
}

export type LifeEvent =
  | { readonly type: 'first-came'; readonly first: Spoken }
  | { readonly type: 'first-failed' }
  | { readonly type: 'rest-came'; readonly rest: RestThere }
  | { readonly type: 'rest-failed' }
  | { readonly type: 'drawings-came'; readonly drawings: Readonly<Record<string, string>> }
  | { readonly type: 'answered'; readonly answers: Answers }
  | { readonly type: 'again' }
  | { readonly type: 'start-over' }
  | { readonly type: 'speak'; readonly language: string }

export type LifeState =
  /** The first question is on its way; the page's own words stand. */
  | 'opening'
  | 'not-opened'
  /** The first question stands; the rest is on its way, there, or did not come. */
  | 'first'
  | 'ready'
  | 'lacking'
  /** Answered, and the rest is not there yet, or did not come. */
  | 'waiting'
  | 'not-gone-on'
  | 'running'

/** What changes in the context, by name. */
export const CHANGES = {
  keepFirst: (_, event) => (event.type === 'first-came' ? { first: event.first } : {}),
  keepRest: (_, event) => (event.type === 'rest-came' ? { rest: event.rest } : {}),
  keepDrawings: (_, event) => (event.type === 'drawings-came' ? { drawings: event.drawings } : {}),
  keepAnswers: (_, event) => (event.type === 'answered' ? { answers: event.answers } : {}),
  speak: (_, event) => (event.type === 'speak' ? { language: event.language } : {}),
  tryAgain: ({ attempt }) => ({ attempt: attempt + 1 }),
  beginAnew: ({ round }) => ({ answers: {}, round: round + 1 })
} satisfies Record<string, (context: LifeContext, event: LifeEvent) => Partial<LifeContext>>

interface Way {
  readonly target?: LifeState
  readonly actions?: readonly (keyof typeof CHANGES)[]
}
type Ways = { readonly [Type in LifeEvent['type']]?: Way }

/**
 * The life of an element as a statechart, written as XState reads it. The library itself is part of
 * the rest, which is loaded later: until then `follow` reads the chart, and a test holds it to XState.
 */
export const LIFE: {
  readonly initial: LifeState
  readonly on: Ways
  readonly states: Readonly<Record<LifeState, { readonly on: Ways }>>
} = {
  initial: 'opening',
  on: {
    'first-came': { actions: ['keepFirst'] },
    'rest-came': { actions: ['keepRest'] },
    'drawings-came': { actions: ['keepDrawings'] },
    speak: { actions: ['speak'] }
  },
  states: {
    opening: {
      on: {
        'first-came': { target: 'first', actions: ['keepFirst'] },
        'first-failed': { target: 'not-opened' }
      }
    },
    'not-opened': {
      on: {
        'first-came': { target: 'first', actions: ['keepFirst'] },
        again: { target: 'opening', actions: ['tryAgain'] }
      }
    },
    first: {
      on: {
        'rest-came': { target: 'ready', actions: ['keepRest'] },
        'rest-failed': { target: 'lacking' },
        answered: { target: 'waiting', actions: ['keepAnswers'] }
      }
    },
    ready: { on: { answered: { target: 'running', actions: ['keepAnswers'] } } },
    lacking: {
      on: {
        'rest-came': { target: 'ready', actions: ['keepRest'] },
        // What failed behind the reader's back is tried once more before a word is said of it.
        answered: { target: 'waiting', actions: ['keepAnswers', 'tryAgain'] }
      }
    },
    waiting: {
      on: {
        'rest-came': { target: 'running', actions: ['keepRest'] },
        'rest-failed': { target: 'not-gone-on' },
        'start-over': { target: 'first', actions: ['beginAnew'] }
      }
    },
    'not-gone-on': {
      on: {
        'rest-came': { target: 'running', actions: ['keepRest'] },
        again: { target: 'waiting', actions: ['tryAgain'] }
      }
    },
    running: { on: { 'start-over': { target: 'ready', actions: ['beginAnew'] } } }
  }
}

export interface Life {
  readonly at: LifeState
  readonly context: LifeContext
}

/** An element that was just put into a page, in a language. */
export const born = (language: string): Life => ({
  at: LIFE.initial,
  context: {
    language,
    first: null,
    rest: null,
    drawings: null,
    answers: {},
    attempt: 0,
    round: 0
  }
})

/** Where the chart leads from there; what it does not hear changes nothing. */
export function follow(life: Life, event: LifeEvent): Life {
  const way = LIFE.states[life.at].on[event.type] ?? LIFE.on[event.type]
  if (way === undefined) return life
  let { context } = life
  for (const name of way.actions ?? []) {
    context = { ...context, ...CHANGES[name](context, event) }
  }
  return { at: way.target ?? life.at, context }
}
