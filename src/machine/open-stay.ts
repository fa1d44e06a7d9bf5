import { createActor } from 'xstate'
import type { Answers } from '../tree/answers.ts'
import { hasKey } from '../tree/group.ts'
import { type ClockReading, GRACE, type Looks, type StayEvent, stayMachine } from './stay.ts'

const SHOWN_TO_STAFF = ['menu', 'cleaning'] as const

/** What the kiosk shows of a stay. */
export interface StayView {
  /** Null while it waits for somebody. */
  readonly language: string | null
  /** Nobody has touched the waiting screen for a while. */
  readonly untouched: boolean
  /** Null while the visitor chooses. */
  readonly tree: string | null
  /** Counts the choices: what could not be had is asked for once more. */
  readonly chosen: number
  readonly told: Answers
  readonly looks: Looks
  /** The seconds until the visitor is wiped, while the warning stands. */
  readonly left: number | null
  readonly visitors: number
  /** What staff see in place of the waiting screen; null where they see that. */
  readonly staff: (typeof SHOWN_TO_STAFF)[number] | null
}

export interface Stay {
  view(): StayView
  send(event: StayEvent): void
  /** Calls back when something else is to be shown; returns how to stop. */
  subscribe(listener: () => void): () => void
}

/** What runs the seconds of a stay; left out, the browser's own timers. */
export interface Timers {
  setTimeout(call: (...given: unknown[]) => void, milliseconds: number): unknown
  clearTimeout(timer: unknown): void
}

/** Opens a kiosk's stay. */
export function createStay(read: () => ClockReading, timers?: Timers): Stay {
  const actor = createActor(stayMachine, {
    input: { read },
    ...(timers && { clock: timers })
  }).start()
  const viewNow = (): StayView => {
    const snapshot = actor.getSnapshot()
    const { language, tree, chosen, told, looks, visitors, idle, quiet } = snapshot.context
    const isWarned = snapshot.matches({ visit: { presence: 'warned' } })
    return {
      language,
      untouched: snapshot.matches({ waiting: 'untouched' }),
      tree,
      chosen,
      told,
      looks,
      left: isWarned ? Math.max(1, Math.ceil((quiet + GRACE - idle) / 1000)) : null,
      visitors,
      staff: SHOWN_TO_STAFF.find(state => snapshot.matches({ staff: state })) ?? null
    }
  }
  let view = viewNow()
  const listeners = new Set<() => void>()
  actor.subscribe(() => {
    const next = viewNow()
    // Every touch is heard; few of them change what is shown.
    if (Object.entries(next).every(([key, one]) => hasKey(view, key) && view[key] === one)) return
    view = next
    for (const listener of listeners) listener()
  })
  return {
    view: () => view,
    send: event => actor.send(event),
    subscribe(listener) {
      listeners.add(listener)
      return () => listeners.delete(listener)
    }
  }
}
