import { assign, createActor, setup } from 'xstate'
import type { Fact } from '../evaluate/facts.ts'

interface Context {
  /** The language of the desk, which a new caller is taken to speak. */
  readonly own: string
  /** Null where no tree is shown at all. */
  readonly tree: string | null
  /** What was told before another tree was chosen. */
  readonly facts: readonly Fact[]
  /** What the caller said that named another tree, in the words typed: it reads the line again. */
  readonly line: string
  /** The language that the caller speaks. */
  readonly caller: string
  /** How many calls came before this one. */
  readonly calls: number
  /** How often a tree or a language was asked for: what could not be had is fetched once more. */
  readonly asked: number
}

export type CallEvent =
  /** Facts were typed: more may follow. */
  | { readonly type: 'tell' }
  /** The question was answered in its place, or the outcome is told. */
  | { readonly type: 'answer' }
  | {
      readonly type: 'choose'
      readonly tree: string
      readonly facts: readonly Fact[]
      readonly line?: string
    }
  | { readonly type: 'speak'; readonly language: string }
  | { readonly type: 'next-call' }

/** A desk from call to call: where its keys go, and what one call leaves for the next, which is the tree. */
export const callMachine = setup({
  // The library reads types off a value that it never looks at.
  types: {} as { context: Context; events: CallEvent; input: Pick<Context, 'own' | 'tree'> },
  actions: {
    choose: assign(({ context, event }) =>
      event.type === 'choose'
        ? {
            tree: event.tree,
            facts: event.facts,
            line: event.line ?? '',
            asked: context.asked + 1
          }
        : {}
    ),
    speak: assign(({ context, event }) =>
      event.type === 'speak' ? { caller: event.language, asked: context.asked + 1 } : {}
    ),
    hangUp: assign(({ context }) => ({
      facts: [],
      line: '',
      caller: context.own,
      calls: context.calls + 1
    }))
  }
}).createMachine({
  id: 'call',
  context: ({ input: { own, tree } }) => ({
    own,
    tree,
    facts: [],
    line: '',
    caller: own,
    calls: 0,
    asked: 0
  }),
  initial: 'typing',
  on: {
    choose: { target: '.typing', actions: 'choose' },
    speak: { actions: 'speak' },
    'next-call': { target: '.typing', actions: 'hangUp' }
  },
  states: {
    // A call begins in the field, and stays there for as long as facts are typed.
    typing: { on: { answer: 'asking' } },
    asking: { on: { tell: 'typing' } }
  }
})

/** What the desk shows of a call. */
export interface CallView extends Omit<Context, 'own'> {
  /** The focus belongs in the field, whatever question the facts lead to. */
  readonly typing: boolean
}

/** The desk's calls, one after another. */
export interface Calls {
  view(): CallView
  send(event: CallEvent): void
  /** Calls back when something else is to be shown; returns how to stop. */
  subscribe(listener: () => void): () => void
}

/** Opens the desk with its first call. */
export function createCalls(own: string, tree: string | null): Calls {
  const actor = createActor(callMachine, { input: { own, tree } }).start()
  return {
    view() {
      const snapshot = actor.getSnapshot()
      const { own: _, ...context } = snapshot.context
      return { ...context, typing: snapshot.matches('typing') }
    },
    send: event => actor.send(event),
    subscribe(listener) {
      const { unsubscribe } = actor.subscribe(listener)
      return unsubscribe
    }
  }
}
