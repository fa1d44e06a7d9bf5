import { assign, setup } from 'xstate'
import type { Evaluation } from '../evaluate/evaluate.ts'
import { EMERGENCY } from '../tree/emergency.ts'
import { must } from '../tree/must.ts'

interface Context {
  readonly evaluation: Evaluation
  /** The earlier question shown again, while it is being changed. */
  readonly changing: string | null
  /** Whether anything was answered or changed since the walk was opened. */
  readonly moved: boolean
}

/** What the screen of a walk hears. */
export type ScreenEvent =
  /** Other answers: the question or outcome that they lead to is shown. */
  | { readonly type: 'told'; readonly evaluation: Evaluation }
  /** Other answers, and what is shown stays where it can. */
  | { readonly type: 'added'; readonly evaluation: Evaluation }
  /** An earlier question is to be changed. */
  | { readonly type: 'change'; readonly observation: string }
  /** Back to the walk: from a question being changed, or from an outcome told early. */
  | { readonly type: 'go-on' }
  /** The outcome is to be told now; heard only once it is certain. */
  | { readonly type: 'stop' }

const STATES = ['asking', 'reached', 'emergency', 'changing', 'stopped'] as const
export type ScreenState = (typeof STATES)[number]

/** What a screen rests in. @throws RangeError while it is only passing through. */
export const screenState = (value: unknown): ScreenState =>
  must(
    STATES.find(state => state === value),
    'screen to show'
  )

/**
 * What one walk shows: the question that is asked, an earlier one being changed, the outcome (reached,
 * or certain and told early), or the emergency card, which stands until what was told is taken back.
 */
export const screenMachine = setup({
  // The library reads types off a value that it never looks at.
  types: {} as {
    context: Context
    events: ScreenEvent
    input: { readonly evaluation: Evaluation }
  },
  guards: {
    isEmergency: ({ context: { evaluation } }) =>
      evaluation.walk.finished && evaluation.walk.outcome.person === EMERGENCY,
    isFinished: ({ context: { evaluation } }) => evaluation.walk.finished,
    isOpen: ({ context: { evaluation } }) => evaluation.settled === null,
    isCertain: ({ context: { evaluation } }) => evaluation.settled !== null
  },
  actions: {
    take: assign(({ event }) =>
      event.type === 'told' || event.type === 'added' ? { evaluation: event.evaluation } : {}
    ),
    move: assign({ moved: true }),
    leave: assign({ changing: null }),
    show: assign(({ event }) =>
      event.type === 'change' ? { changing: event.observation, moved: true } : {}
    )
  }
}).createMachine({
  id: 'screen',
  context: ({ input }) => ({ ...input, changing: null, moved: false }),
  initial: 'arriving',
  on: {
    told: { target: '.arriving', actions: ['take', 'move'] },
    change: { target: '.changing', actions: 'show' }
  },
  states: {
    arriving: {
      entry: 'leave',
      always: [
        { guard: 'isEmergency', target: 'emergency' },
        { guard: 'isFinished', target: 'reached' },
        { target: 'asking' }
      ]
    },
    asking: {
      on: {
        stop: { guard: 'isCertain', target: 'stopped' },
        added: { target: 'arriving', actions: 'take' }
      }
    },
    reached: { on: { added: { target: 'arriving', actions: 'take' } } },
    emergency: { on: { added: { target: 'arriving', actions: 'take' } } },
    changing: { on: { 'go-on': 'arriving', added: { actions: 'take' } } },
    stopped: {
      // What was certain can be so no longer after a correction, and is reached by more answers.
      always: [
        { guard: 'isFinished', target: 'arriving' },
        { guard: 'isOpen', target: 'arriving' }
      ],
      on: { 'go-on': 'arriving', added: { actions: 'take' } }
    }
  }
})
