import { afterNotes } from './after.ts'
import type { Answers } from './answers.ts'
import { measureOf } from './answers.ts'
import { type Outcome, spoken } from './caution.ts'
import { effectsOf } from './effects.ts'
import { EMERGENCY } from './emergency.ts'
import type { NoteAdvice, Recheck, Steps, Tree } from './tree.ts'

/** What is said of an outcome, as ids: their words are in the locales. */
export interface SpokenAdvice {
  /** The verdict said first, and the rest in order: person, container, batch. */
  readonly verdict: string | null
  readonly also: readonly string[]
  readonly doNow: readonly string[]
  readonly clean: readonly string[]
  readonly keep: readonly string[]
  readonly startAgain: readonly string[]
  /** What the answers mean. */
  readonly notes: readonly string[]
  /** What to change next time, from the questions asked after the outcome. */
  readonly change: readonly string[]
  /** How a batch verdict is worded: to be done now, kept for the health department, or not gone back to. */
  readonly manner: Manner
  /** Whom to call, by trigger. */
  readonly refer: readonly string[]
  readonly because: readonly string[]
  /** The soonest of all rechecks named, when something is to be looked at again. */
  readonly recheck: Recheck | null
}

/** What stands in the way of doing what a batch verdict says. */
export type Manner = 'plain' | 'while-ill' | 'leave-it'

/** Puts together the steps of an outcome: person, then container, then batch, mended by the notes. */
export function adviceFor(tree: Tree, outcome: Outcome, answers: Answers): SpokenAdvice {
  const [verdict = null, ...also] = spoken(outcome)
  const stands = spoken(outcome).flatMap(id => tree.advice.verdicts[id] ?? [])
  const emergency = outcome.person === EMERGENCY
  const leaveIt = stands.some(steps => steps.leaveIt)
  const notes = leaveIt ? withoutBatch(tree, outcome.notes) : outcome.notes
  const change = emergency || leaveIt ? [] : afterNotes(tree, answers)
  const said = [...notes, ...change].flatMap(id => tree.advice.notes[id] ?? [])
  const kept = dropper(tree, outcome, stands, said)
  const batch = leaveIt || outcome.batch === null ? undefined : tree.advice.verdicts[outcome.batch]
  const ill = outcome.person !== null && !emergency && !leaveIt
  const first = [outcome.person, outcome.container].flatMap(id =>
    id === null ? [] : (tree.advice.verdicts[id]?.doNow ?? [])
  )
  const jar = [
    ...(leaveIt ? [] : said.flatMap(note => note.adds)),
    ...(batch?.doNow ?? []),
    ...(batch?.byUse[outcome.use] ?? [])
  ]
  const clean = kept(batch?.clean ?? [])
  return {
    verdict,
    also,
    doNow: once(kept([...first, ...(ill ? tree.advice.whileIll.adds : []), ...jar])),
    clean: clean.length > 0 ? once([...said.flatMap(note => note.clean), ...clean]) : [],
    keep: once(kept(batch?.keep ?? [])),
    startAgain: once(batch?.startAgain ?? []),
    notes,
    change,
    manner: leaveIt ? 'leave-it' : ill ? 'while-ill' : 'plain',
    refer: once([...stands, ...said].flatMap(part => part.refer)),
    because: once([...stands, ...said].flatMap(part => part.because)),
    // Nobody goes back to a jar that may burst.
    recheck: leaveIt ? null : soonest([...stands, ...said], outcome, answers)
  }
}

/** Notes that send nobody to the jar: those that questions about people or the container add. */
function withoutBatch(tree: Tree, notes: readonly string[]): readonly string[] {
  const elsewhere = Object.values(tree.questions).filter(
    ({ asks }) => tree.observations[asks]?.about !== 'batch'
  )
  const said = new Set(elsewhere.flatMap(effectsOf).flatMap(effect => effect.notes))
  return notes.filter(note => said.has(note))
}

/** Steps that notes take back, and "throw it away" while somebody needs help. */
function dropper(
  tree: Tree,
  outcome: Outcome,
  stands: readonly Steps[],
  said: readonly NoteAdvice[]
): (steps: readonly string[]) => readonly string[] {
  const ill = outcome.person !== null
  const dropped = new Set([
    ...said.flatMap(note => note.drops),
    ...(ill && stands.length > 0 ? tree.advice.whileIll.drops : [])
  ])
  return steps => steps.filter(step => !dropped.has(step))
}

/** A batch that is thrown away is not looked at again. */
function soonest(
  parts: readonly { readonly recheck?: Recheck }[],
  outcome: Outcome,
  answers: Answers
): Recheck | null {
  if (outcome.use === 'never' && outcome.batch !== 'wait-and-recheck') return null
  const day = measureOf(answers, 'day')
  const today = typeof day === 'object' ? day.reading : null
  const hoursUntil = (recheck: Recheck) =>
    'hours' in recheck
      ? recheck.hours[1]
      : today === null
        ? Number.MAX_VALUE
        : (recheck.day - today) * 24
  const named = parts.flatMap(part => (part.recheck ? [part.recheck] : []))
  return named.sort((a, b) => hoursUntil(a) - hoursUntil(b))[0] ?? null
}

function once(ids: readonly string[]): readonly string[] {
  return [...new Set(ids)]
}
