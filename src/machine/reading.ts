import { assign, createActor, fromCallback, setup } from 'xstate'

/** Whoever says a sentence. */
export interface Voice {
  /** Says it, and calls back once when it was said or could not be; returns how to break off. */
  say(sentence: string, onEnd: (how: 'said' | 'failed') => void): () => void
}

interface Context {
  readonly sentences: readonly string[]
  /** The sentence that is said, or that a pause broke off. */
  readonly at: number
  /** The voice failed. */
  readonly failed: boolean
}

export type ReadingEvent =
  /** A screen is to be read from its start. */
  | { readonly type: 'read'; readonly sentences: readonly string[]; readonly voice: Voice }
  /** The reading stands still, goes on with the sentence that it broke off, or begins anew. */
  | { readonly type: 'pause' | 'go-on' | 'again' }
  /** Something else is shown, or nobody is there any more. */
  | { readonly type: 'stop' }
  | { readonly type: 'said' | 'failed' }

/** A screen read aloud: silent, speaking or paused; every way out of speaking breaks the voice off. */
const readingMachine = setup({
  // The library reads types off a value that it never looks at.
  types: {} as { context: Context & { readonly voice: Voice | null }; events: ReadingEvent },
  actors: {
    sentence: fromCallback<
      { type: 'none' },
      { readonly voice: Voice | null; readonly sentence: string | undefined }
    >(({ input: { voice, sentence }, sendBack }) => {
      if (voice === null || sentence === undefined) return sendBack({ type: 'failed' })
      let isOpen = true
      const hush = voice.say(sentence, how => {
        // A sentence that was broken off may say that it failed.
        if (isOpen) sendBack({ type: how })
      })
      return () => {
        isOpen = false
        hush()
      }
    })
  },
  guards: {
    isWorded: ({ event }) => event.type === 'read' && event.sentences.length > 0,
    isMore: ({ context: { sentences, at } }) => at + 1 < sentences.length
  },
  actions: {
    take: assign(({ event }) =>
      event.type === 'read'
        ? { sentences: event.sentences, voice: event.voice, at: 0, failed: false }
        : {}
    ),
    next: assign(({ context }) => ({ at: context.at + 1 })),
    rewind: assign({ at: 0 }),
    fail: assign({ failed: true }),
    forget: assign({ sentences: [], voice: null, at: 0, failed: false })
  }
}).createMachine({
  id: 'reading',
  context: { sentences: [], voice: null, at: 0, failed: false },
  initial: 'silent',
  on: { stop: { target: '.silent', actions: 'forget' } },
  states: {
    silent: { on: { read: { guard: 'isWorded', target: 'speaking', actions: 'take' } } },
    speaking: {
      invoke: {
        src: 'sentence',
        input: ({ context: { voice, sentences, at } }) => ({ voice, sentence: sentences[at] })
      },
      on: {
        said: [
          { guard: 'isMore', target: 'speaking', reenter: true, actions: 'next' },
          { target: 'silent' }
        ],
        failed: { target: 'silent', actions: 'fail' },
        pause: 'paused',
        again: { target: 'speaking', reenter: true, actions: 'rewind' }
      }
    },
    paused: { on: { 'go-on': 'speaking', again: { target: 'speaking', actions: 'rewind' } } }
  }
})

const STATES = ['silent', 'speaking', 'paused'] as const

/** What is shown of a reading. */
export interface ReadingView {
  readonly state: (typeof STATES)[number]
  /** Counts the sentences from 0. */
  readonly at: number
  readonly failed: boolean
}

export interface Reading {
  view(): ReadingView
  send(event: Exclude<ReadingEvent, { readonly type: 'said' | 'failed' }>): void
  /** Calls back at every sentence, and when it pauses or ends; returns how to stop listening. */
  subscribe(listener: () => void): () => void
}

/** Opens a reading, silent at first. */
export function createReading(): Reading {
  const actor = createActor(readingMachine).start()
  return {
    view() {
      const { value, context } = actor.getSnapshot()
      const state = STATES.find(one => one === value) ?? 'silent'
      return { state, at: context.at, failed: context.failed }
    },
    send: event => actor.send(event),
    subscribe(listener) {
      const subscription = actor.subscribe(listener)
      return () => subscription.unsubscribe()
    }
  }
}
