import { afterNotes } from './after.ts'
import type { Answers } from './answers.ts'
import { measureOf } from './answers.ts'
import { type Outcome, spoken } from './caution.ts'
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
  readonly notes: readonly string[]
  /** Whom to call, by trigger. */
  readonly refer: readonly string[]
  readonly because: readonly string[]
  /** The soonest of all rechecks named, when something is to be looked at again. */
  readonly recheck: Recheck | null
}

/** Puts together the steps of an outcome: person, then container, then batch, mended by the notes. */
export function adviceFor(tree: Tree, outcome: Outcome, answers: Answers): SpokenAdvice {
  const [verdict = null, ...also] = spoken(outcome)
  const stands = spoken(outcome)
    .map(id => tree.advice.verdicts[id])
    .filter(steps => steps !== undefined)
  const emergency = outcome.person === EMERGENCY
  const notes = emergency ? outcome.notes : [...outcome.notes, ...afterNotes(tree, answers)]
  const said = notes.map(id => tree.advice.notes[id]).filter(note => note !== undefined)
  const kept = dropper(tree, outcome, stands, said)
  const batch = outcome.batch === null ? undefined : tree.advice.verdicts[outcome.batch]
  const leaveIt = stands.some(steps => steps.leaveIt)
  const people = [outcome.person, outcome.container].flatMap(id =>
    id === null ? [] : (tree.advice.verdicts[id]?.doNow ?? [])
  )
  const ill = outcome.person !== null && !emergency && !leaveIt ? tree.advice.whileIll.adds : []
  const jar = leaveIt
    ? []
    : [
        ...said.flatMap(note => note.adds),
        ...(batch?.doNow ?? []),
        ...(batch?.byUse[outcome.use] ?? [])
      ]
  const clean = leaveIt ? [] : kept(batch?.clean ?? [])
  return {
    verdict,
    also,
    doNow: once(kept([...people, ...ill, ...jar])),
    clean: clean.length > 0 ? once([...said.flatMap(note => note.clean), ...clean]) : [],
    keep: leaveIt ? [] : once(kept(batch?.keep ?? [])),
    startAgain: once(batch?.startAgain ?? []),
    notes,
    refer: once([...stands, ...said].flatMap(part => part.refer)),
    because: once([...stands, ...said].flatMap(part => part.because)),
    recheck: soonest([...stands, ...said], outcome, answers)
  }
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
