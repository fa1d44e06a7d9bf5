import type { Outcome } from '../tree/caution.ts'
import { TRACKS } from '../tree/observation.ts'
import { USES, type Verdict } from '../tree/tree.ts'

/** What somebody came to on a call. */
export type CallOutcome = Omit<Outcome, 'notes'>

/** One practice call: what a volunteer came to, and what the tree came to on the caller's full answers. */
export interface Attempt {
  /** At random, so that files of several desks add up without counting anything twice. */
  readonly id: string
  /** The invented caller. */
  readonly caller: string
  /** The tree of what the caller really has, and the one that the volunteer took. */
  readonly tree: string
  readonly took: string
  /** The fingerprint of the caller's tree on that day. */
  readonly fingerprint: string
  /** A volunteer's number, 1 to 9999. */
  readonly volunteer: number
  /** YYYY-MM-DD. */
  readonly day: string
  readonly given: CallOutcome
  readonly expected: CallOutcome
}

const NAME = /^[a-z0-9-]{1,80}$/
const FINGERPRINT = /^[0-9a-f]{8,64}$/
const DAY = /^\d{4}-\d\d-\d\d$/

export function judgedOf({ person, container, batch, use }: CallOutcome): CallOutcome {
  return { person, container, batch, use }
}

/** An attempt as a line of JSON Lines, without its end. */
export const lineOfAttempt = (attempt: Attempt): string =>
  JSON.stringify({ practice: 1, ...attempt })

/** Reads a line of JSON Lines back, or says in a few words what is wrong with it. */
export function readAttempt(
  line: string,
  verdicts: readonly Verdict[]
): { readonly attempt: Attempt } | { readonly fault: string } {
  try {
    return { attempt: attemptIn(JSON.parse(line), verdicts) }
  } catch (error) {
    return { fault: error instanceof RangeError ? error.message : 'it is no JSON' }
  }
}

function attemptIn(said: unknown, verdicts: readonly Verdict[]): Attempt {
  const given = groupIn(said, 'a line')
  if (given.practice !== 1) throw new RangeError('it is no practice call')
  const name = (key: string, pattern: RegExp): string => {
    const value = given[key]
    if (typeof value === 'string' && pattern.test(value)) return value
    throw new RangeError(`its \`${key}\` cannot be`)
  }
  const { volunteer } = given
  if (typeof volunteer !== 'number' || !Number.isInteger(volunteer) || !isNumber(volunteer)) {
    throw new RangeError('its `volunteer` is no number from 1 to 9999')
  }
  return {
    id: name('id', NAME),
    caller: name('caller', NAME),
    tree: name('tree', NAME),
    took: name('took', NAME),
    fingerprint: name('fingerprint', FINGERPRINT),
    volunteer,
    day: name('day', DAY),
    given: judgedIn(given.given, 'given', verdicts),
    expected: judgedIn(given.expected, 'expected', verdicts)
  }
}

/** Whether it can be a volunteer's number. */
export const isNumber = (volunteer: number): boolean => volunteer >= 1 && volunteer <= 9999

function judgedIn(said: unknown, what: string, verdicts: readonly Verdict[]): CallOutcome {
  const group = groupIn(said, `its \`${what}\``)
  const [person, container, batch] = TRACKS.map(track => {
    const id = group[track]
    if (id === null) return null
    const found = verdicts.find(each => each.id === id && each.track === track)
    if (found) return found.id
    throw new RangeError(`its \`${what}\` has no verdict \`${id}\` on \`${track}\``)
  })
  const use = USES.find(each => each === group.use)
  if (use === undefined) throw new RangeError(`its \`${what}\` says no use`)
  return { person: person ?? null, container: container ?? null, batch: batch ?? null, use }
}

function groupIn(said: unknown, what: string): Readonly<Record<string, unknown>> {
  if (typeof said !== 'object' || said === null || Array.isArray(said)) {
    throw new RangeError(`${what} is no group`)
  }
  return Object.fromEntries(Object.entries(said))
}
