import type { Answers } from '../tree/answers.ts'
import { isLeft, level, type Outcome, verdict } from '../tree/caution.ts'
import { changesKeptFood, type Does, goesNear, isForLater } from '../tree/does.ts'
import { effectsOf } from '../tree/effects.ts'
import { EMERGENCY } from '../tree/emergency.ts'
import type { FollowUp } from '../tree/follow-ups.ts'
import { TRACKS, type Track } from '../tree/observation.ts'
import type { NoteAdvice, Recheck, Steps, Tree } from '../tree/tree.ts'
import { callUrgency, spoken, tracksByUrgency, verdictUrgency } from '../tree/urgency.ts'
import { afterNotes } from './after.ts'
import { MOST_FIRST, parted, USUAL_FIRST } from './first-steps.ts'
import { isRuledOut } from './presumed.ts'
import { soonestRecheck } from './recheck.ts'
import { saidOnce } from './said-once.ts'

/** What is said of an outcome, as ids: their words are in the locales. */
export interface SpokenAdvice {
  /** The verdict said first, and the rest, most urgent first. */
  readonly verdict: string | null
  readonly also: readonly string[]
  readonly doNow: readonly string[]
  /** What is done once that is done; not spoken in an emergency. */
  readonly later: readonly string[]
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
  /** What callers ask next, and is answered. */
  readonly followUps: readonly FollowUp[]
  /** The soonest of all rechecks named, when something is to be looked at again. */
  readonly recheck: Recheck | null
}

/** What stands in the way of doing what a batch verdict says. */
export type Manner = 'plain' | 'while-ill' | 'leave-it'

/** What one track has to say: its verdict's steps, and the notes that its questions added. */
interface Part {
  readonly steps: Steps | undefined
  readonly notes: readonly NoteAdvice[]
}

/**
 * Puts together the steps of an outcome: the track with the most urgent verdict first, mended by the notes.
 */
export function adviceFor(tree: Tree, reached: Outcome, answers: Answers): SpokenAdvice {
  // In an emergency container and batch stay unspoken, also where the walk had judged them.
  const outcome =
    reached.person === EMERGENCY ? { ...reached, container: null, batch: null } : reached
  const [verdictFirst = null, ...also] = spoken(tree, outcome)
  const manner = mannerOf(tree, outcome)
  const makesSense = sense(tree, outcome, manner)
  const met = outcome.notes.filter(makesSense)
  const changes =
    manner === 'leave-it' || outcome.person === EMERGENCY
      ? []
      : afterNotes(tree, answers).filter(makesSense)
  const dropsOf = (ids: readonly string[]) =>
    new Set(ids.flatMap(id => tree.advice.notes[id]?.drops ?? []))
  const wrong = dropsOf([...met, ...changes])
  const notes = met.filter(id => !wrong.has(id))
  const change = changes.filter(id => !wrong.has(id))
  const partOf = partsOf(tree, outcome, [...notes, ...change])
  const parts = [partOf.person, partOf.container, partOf.batch]
  const said = parts.flatMap(part => part.notes)
  const stands = parts.flatMap(({ steps }) => steps ?? [])
  const { whileIll, does } = tree.advice
  const ill = manner === 'while-ill'
  const distant = manner === 'leave-it' && isIll(tree, outcome)
  const dropped = dropsOf([...notes, ...change])
  const occasioned = stepsOfOccasion(tree, partOf, manner, outcome)
  const fits = (step: string) =>
    !dropped.has(step) && (occasioned.has(step) || isFit(does[step], manner, outcome))
  const kept = (steps: readonly string[]) =>
    once(
      steps
        .filter(fits)
        .flatMap(step => inPlace(tree, step, answers))
        .filter(fits)
    )
  const adds = ({ notes: of }: Part) => of.flatMap(note => note.adds)
  // Nobody goes back to a jar that may burst: its batch has nothing to do.
  const jar = manner === 'leave-it' ? undefined : partOf.batch.steps
  const ofTrack: Readonly<Record<Track, readonly string[]>> = {
    person: [...(partOf.person.steps?.doNow ?? []), ...adds(partOf.person)],
    container: [...(partOf.container.steps?.doNow ?? []), ...adds(partOf.container)],
    batch: [
      ...(ill ? whileIll.adds : distant ? whileIll.atADistance : []),
      ...adds(partOf.batch),
      ...(jar?.doNow ?? []),
      ...(jar?.byUse[outcome.use] ?? [])
    ]
  }
  // Where nobody is sure how somebody is, that is found out first, once everyone is out of harm's way.
  const asks = tree.advice.unsureNote.person ?? ''
  const findOut =
    notes.includes(asks) && manner !== 'leave-it' ? (tree.advice.notes[asks]?.adds ?? []) : []
  const steps = saidOnce(tree, kept([...findOut, ...inOrder(tree, outcome, ofTrack)]))
  // A pot that is thrown out is not washed.
  const potGoes = steps.some(step => does[step]?.vessel?.includes('discard'))
  const cleaned = (steps: readonly string[]) =>
    kept(steps).filter(step => !(potGoes && does[step]?.washes))
  const clean = cleaned(jar?.clean ?? [])
  // In an emergency all of it is about the person: what there is no room for is not spoken.
  const usual = outcome.person === EMERGENCY ? MOST_FIRST : USUAL_FIRST
  const { first: doNow, later } = parted(tree, steps, usual)
  return {
    verdict: verdictFirst,
    also,
    doNow,
    later,
    clean: clean.length > 0 ? cleaned([...said.flatMap(note => note.clean), ...clean]) : [],
    keep: kept(jar?.keep ?? []),
    // While the jar is kept for somebody's sake nobody starts again from it.
    startAgain: ill ? [] : kept(jar?.startAgain ?? []),
    notes,
    change,
    manner,
    refer: once([
      ...parts.flatMap(part => [
        ...(part.steps?.refer ?? []),
        ...part.notes.flatMap(note => note.refer)
      ]),
      ...(ill || distant ? whileIll.refer : [])
    ]),
    followUps: followUpsAfter(tree, outcome, manner),
    because: once([...stands, ...said].flatMap(part => part.because)),
    recheck:
      manner === 'leave-it' || isDiscarded(tree, outcome)
        ? null
        : soonestRecheck(tree, said, stands, answers)
  }
}

/** The tracks by urgency; what stops all other steps stands before those that are less urgent than its call. */
function inOrder(
  tree: Tree,
  outcome: Outcome,
  ofTrack: Readonly<Record<Track, readonly string[]>>
): readonly string[] {
  const tracks = tracksByUrgency(tree, outcome)
  const stops = TRACKS.flatMap(track => ofTrack[track]).filter(
    step => tree.advice.does[step]?.stops === true
  )
  const urgent = Math.min(...stops.map(step => callUrgency(tree, step) ?? Number.MAX_VALUE))
  const sooner = tracks.filter(track => verdictUrgency(tree, outcome[track]) <= urgent)
  const rest = tracks.filter(track => !sooner.includes(track))
  const said = (among: readonly Track[]) => among.flatMap(track => ofTrack[track])
  return [...said(sooner), ...stops, ...said(rest)]
}

/** A step, or what is said in its place where the answers rule out what it presumes. */
function inPlace(tree: Tree, step: string, answers: Answers): readonly string[] {
  const does = tree.advice.does[step]
  if (does?.otherwise === undefined || !isRuledOut(tree, does, answers)) return [step]
  return does.otherwise
}

/** What is written for the occasion itself is said as it stands; the laws hold it to what may be done then. */
function stepsOfOccasion(
  { advice: { whileIll } }: Tree,
  { person, container }: Readonly<Record<Track, Part>>,
  manner: Manner,
  outcome: Outcome
): ReadonlySet<string> {
  return new Set([
    ...whileIll.adds,
    ...whileIll.atADistance,
    ...(manner === 'leave-it' ? (container.steps?.doNow ?? []) : []),
    ...(outcome.person === EMERGENCY ? (person.steps?.doNow ?? []) : [])
  ])
}

/** A jar that may burst is left alone, whoever is ill; food that made somebody ill is kept. */
function mannerOf(tree: Tree, outcome: Outcome): Manner {
  if (outcome.person === EMERGENCY) return 'plain'
  if (isLeft(tree, outcome.container)) return 'leave-it'
  return isIll(tree, outcome) ? 'while-ill' : 'plain'
}

/**
 * Whether somebody is ill. In a tree that has no note for it: somebody needs help today, or asks a doctor
 * beside a batch that is to go. A doctor's visit this week beside a batch that looks fine is not illness.
 */
function isIll(tree: Tree, outcome: Outcome): boolean {
  const { note } = tree.advice.whileIll
  if (note !== undefined) return outcome.notes.includes(note)
  const { person } = outcome
  const urgent = level(tree, 'person', person) > 1
  return (
    urgent || (person !== null && (isDiscarded(tree, outcome) || isLeft(tree, outcome.container)))
  )
}

/** Whether what a step or a note does may be done: kept food is not changed, a jar that may burst not touched. */
function isFit(does: Does | undefined, manner: Manner, { person }: Outcome): boolean {
  if (does === undefined) return true
  if (person === EMERGENCY && isForLater(does)) return false
  // In an emergency everybody stays with the person.
  if (manner === 'leave-it' || person === EMERGENCY) return !goesNear(does)
  return manner === 'plain' || !changesKeptFood(does)
}

/**
 * The follow-ups that fit an outcome: none in an emergency, and beside a jar that nobody goes back to
 * those alone that speak of the container.
 */
function followUpsAfter(tree: Tree, outcome: Outcome, manner: Manner): readonly FollowUp[] {
  if (outcome.person === EMERGENCY) return []
  const tracks = manner === 'leave-it' ? (['container'] as const) : TRACKS
  const given = tracks.flatMap(track => outcome[track] ?? [])
  return tree.advice.followUps.filter(
    ({ after, does }) =>
      after.some(verdict => given.includes(verdict)) && isFit(does, manner, outcome)
  )
}

/** Whether the batch's own verdict leaves nothing to drink, now or later. */
export function isDiscarded(tree: Tree, { batch }: Outcome): boolean {
  return batch !== null && verdict(tree, batch).ceiling === 'never'
}

/** Which notes still make sense: none on waiting for what is thrown out, none that send anybody to look. */
function sense(tree: Tree, outcome: Outcome, manner: Manner): (note: string) => boolean {
  const origin = originOf(tree)
  const discarded = isDiscarded(tree, outcome)
  return id => {
    const note = tree.advice.notes[id]
    if (manner === 'leave-it' && origin.get(id) === 'batch') return false
    return isFit(note?.does, manner, outcome) && !(discarded && note?.notWhenDiscarded === true)
  }
}

const origins = new WeakMap<Tree, ReadonlyMap<string, Track>>()

/** The track whose questions add a note, worked out once for a tree; none for what is asked afterwards. */
export function originOf(tree: Tree): ReadonlyMap<string, Track> {
  const before = origins.get(tree) ?? originIn(tree)
  origins.set(tree, before)
  return before
}

/** The track whose questions add a note; of several the first, person before container before batch. */
function originIn(tree: Tree): ReadonlyMap<string, Track> {
  const origin = new Map<string, Track>()
  for (const track of TRACKS) {
    const asking = Object.values(tree.questions).filter(
      ({ asks }) => tree.observations[asks]?.about === track
    )
    for (const note of asking.flatMap(effectsOf).flatMap(effect => effect.notes)) {
      if (!origin.has(note)) origin.set(note, track)
    }
  }
  return origin
}

function partsOf(
  tree: Tree,
  outcome: Outcome,
  notes: readonly string[]
): Readonly<Record<Track, Part>> {
  const origin = originOf(tree)
  const part = (track: Track): Part => ({
    steps: tree.advice.verdicts[outcome[track] ?? ''],
    notes: notes
      .filter(id => (origin.get(id) ?? 'batch') === track)
      .flatMap(id => tree.advice.notes[id] ?? [])
  })
  return { person: part('person'), container: part('container'), batch: part('batch') }
}

function once(ids: readonly string[]): readonly string[] {
  return [...new Set(ids)]
}
