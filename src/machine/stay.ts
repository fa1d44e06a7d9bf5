import { assign, setup } from 'xstate'
import type { Answers } from '../tree/answers.ts'

/** How long a visitor may sit still before being asked unless staff set it, and how long the question then stands. */
export const QUIET = 60_000
export const GRACE = 60_000
/** A staff menu that nobody touches closes by itself. */
const STAFF_GONE = 120_000
/** A wall clock that runs ahead by more than this between two looks was set, or the device slept. */
const LEAP = 10_000

/** The two clocks of a device, in milliseconds: one stands still while it sleeps, the other can be set. */
export interface ClockReading {
  readonly steady: number
  readonly wall: number
}

/** What a visitor set of the look of every screen; null where it is as staff settled it. */
export interface Looks {
  /** Larger text. */
  readonly large: boolean | null
  /** Strong contrast. */
  readonly strong: boolean | null
}

const AS_SETTLED: Looks = { large: null, strong: null }

interface Context {
  readonly read: () => ClockReading
  /** How long a visitor may sit still before being asked, in milliseconds. */
  readonly quiet: number
  /** When the sitting was last looked at, and how long nobody had done anything then. */
  readonly since: ClockReading
  readonly idle: number
  /** The screen is dark, or shows something else. */
  readonly hidden: boolean
  readonly language: string | null
  readonly tree: string | null
  /** How often a ferment was chosen. */
  readonly chosen: number
  /** What was told of one ferment before another was chosen. */
  readonly told: Answers
  readonly looks: Looks
  /** How many have been here since the kiosk was opened. */
  readonly visitors: number
}

export type StayEvent =
  /** Somebody did something; heard everywhere but over the warning. */
  | { readonly type: 'touch' }
  /** The warning is answered: the visitor is still there. */
  | { readonly type: 'keep' }
  | { readonly type: 'hide' }
  | { readonly type: 'show' }
  | { readonly type: 'speak'; readonly language: string }
  | { readonly type: 'see'; readonly looks: Partial<Looks> }
  | { readonly type: 'choose'; readonly tree: string }
  /** Back to the choice of a ferment, with what was told of this one, or with nothing. */
  | { readonly type: 'choose-again'; readonly told: Answers }
  /** The visitor goes, or says so; staff close their menu. */
  | { readonly type: 'leave' }
  /** Staff set how long a visitor may sit still, in milliseconds. */
  | { readonly type: 'settle'; readonly quiet: number }
  /** Staff ask for their menu; lock the screen to clean it; unlock it. */
  | { readonly type: 'staff' | 'clean' | 'unlock' }

/** How long nobody has done anything. While the screen is hidden the clock counts that has run further. */
function idleNow({ read, since, idle, hidden }: Context): number {
  const { steady, wall } = read()
  const passed = steady - since.steady
  return idle + (hidden ? Math.max(passed, wall - since.wall) : passed)
}

function leapt({ read, since, hidden }: Context): boolean {
  const { steady, wall } = read()
  return !hidden && wall - since.wall - (steady - since.steady) > LEAP
}

/**
 * A kiosk from the moment it is opened: it waits, serves one visitor, warns, wipes, and waits again.
 * Nothing of a visitor is anywhere but in its context, and `wiped` empties that.
 */
export const stayMachine = setup({
  // The library reads types off a value that it never looks at.
  types: {} as {
    context: Context
    events: StayEvent
    input: { readonly read: () => ClockReading }
  },
  delays: { second: 1000, rest: QUIET, staffGone: STAFF_GONE },
  guards: {
    isGone: ({ context }) => idleNow(context) >= context.quiet + GRACE,
    // A clock that was set forward wipes nobody: whoever is there is asked.
    isInDoubt: ({ context }) => idleNow(context) >= context.quiet || leapt(context)
  },
  actions: {
    restart: assign(({ context }) => ({ idle: 0, since: context.read() })),
    count: assign(({ context }) => ({ idle: idleNow(context), since: context.read() })),
    doubt: assign(({ context }) => ({
      idle: Math.max(context.quiet, idleNow(context)),
      since: context.read()
    })),
    settle: assign(({ event }) => (event.type === 'settle' ? { quiet: event.quiet } : {})),
    hide: assign({ hidden: true }),
    show: assign({ hidden: false }),
    speak: assign(({ event }) => (event.type === 'speak' ? { language: event.language } : {})),
    see: assign(({ context, event }) =>
      event.type === 'see' ? { looks: { ...context.looks, ...event.looks } } : {}
    ),
    choose: assign(({ context, event }) =>
      event.type === 'choose' ? { tree: event.tree, chosen: context.chosen + 1 } : {}
    ),
    chooseAgain: assign(({ event }) =>
      event.type === 'choose-again' ? { tree: null, told: event.told } : {}
    ),
    wipe: assign(({ context }) => ({
      idle: 0,
      language: null,
      tree: null,
      chosen: 0,
      told: {},
      looks: AS_SETTLED,
      visitors: context.visitors + 1
    }))
  }
}).createMachine({
  id: 'stay',
  context: ({ input: { read } }) => ({
    read,
    quiet: QUIET,
    since: read(),
    idle: 0,
    hidden: false,
    language: null,
    tree: null,
    chosen: 0,
    told: {},
    looks: AS_SETTLED,
    visitors: 0
  }),
  initial: 'waiting',
  on: { settle: { actions: 'settle' } },
  states: {
    waiting: {
      initial: 'touched',
      on: {
        touch: '.touched',
        hide: { actions: 'hide' },
        show: { actions: 'show' },
        speak: { target: 'visit', actions: ['speak', 'restart'] },
        staff: 'staff'
      },
      states: { touched: { after: { rest: 'untouched' } }, untouched: {} }
    },
    staff: {
      initial: 'menu',
      states: {
        menu: {
          after: { staffGone: '#stay.waiting' },
          on: {
            touch: { target: 'menu', reenter: true },
            clean: 'cleaning',
            leave: '#stay.waiting',
            // Whoever wakes the tablet may be somebody else.
            hide: { target: '#stay.waiting', actions: 'hide' }
          }
        },
        cleaning: {
          on: { unlock: '#stay.waiting', hide: { actions: 'hide' }, show: { actions: 'show' } }
        }
      }
    },
    visit: {
      type: 'parallel',
      on: { speak: { actions: 'speak' }, see: { actions: 'see' }, leave: 'wiped' },
      states: {
        place: {
          initial: 'choosing',
          states: {
            choosing: { on: { choose: { target: 'walking', actions: 'choose' } } },
            walking: {
              on: {
                // What could not be opened is chosen again, or another in its place.
                choose: { actions: 'choose' },
                'choose-again': { target: 'choosing', actions: 'chooseAgain' }
              }
            }
          }
        },
        presence: {
          initial: 'there',
          states: {
            there: {
              after: {
                second: [
                  { guard: 'isGone', target: '#stay.wiped' },
                  { guard: 'isInDoubt', target: 'warned', actions: 'doubt' },
                  { target: 'there', reenter: true, actions: 'count' }
                ]
              },
              on: {
                // Whoever wakes a sleeping device is somebody else: time that ran out stays run out.
                touch: [
                  { guard: 'isGone', target: '#stay.wiped' },
                  { target: 'there', reenter: true, actions: 'restart' }
                ],
                hide: { actions: ['count', 'hide'] },
                show: [
                  { guard: 'isGone', target: '#stay.wiped', actions: 'show' },
                  { guard: 'isInDoubt', target: 'warned', actions: ['doubt', 'show'] },
                  { actions: ['count', 'show'] }
                ]
              }
            },
            warned: {
              after: {
                second: [
                  { guard: 'isGone', target: '#stay.wiped' },
                  { target: 'warned', reenter: true, actions: 'count' }
                ]
              },
              on: {
                keep: [
                  { guard: 'isGone', target: '#stay.wiped' },
                  { target: 'there', actions: 'restart' }
                ],
                hide: { actions: ['count', 'hide'] },
                show: [
                  { guard: 'isGone', target: '#stay.wiped', actions: 'show' },
                  { actions: ['count', 'show'] }
                ]
              }
            }
          }
        }
      }
    },
    wiped: { entry: 'wipe', always: 'waiting' }
  }
})
