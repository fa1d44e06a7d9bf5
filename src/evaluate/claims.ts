import { type Answers, signsOf } from '../tree/answers.ts'
import type { SignsObservation, Track } from '../tree/observation.ts'
import type { Tree } from '../tree/tree.ts'
import type { Evaluation } from './evaluate.ts'
import { questionsAhead } from './progress.ts'

/** The tracks of which it can be said that nothing is wrong: of a batch nobody says that. */
export type Ruled = 'person' | 'container'

/**
 * What may be said of the answers themselves while a walk goes on. Each is a claim about what was told,
 * never about a verdict that did not come: a sign that is untold or unsure was not told as no.
 */
export interface Claims {
  /** Tracks about which nothing can come any more, and every sign of every screen was told as no. */
  readonly ruledOut: readonly Ruled[]
  /** Screens of signs about a person or a container, still to come on the walk, with a sign untold. */
  readonly notAsked: readonly string[]
}

const RULED: readonly Ruled[] = ['person', 'container']

/** The claims that hold of some answers, with what can still come of them. */
export function claimsOf({ tree, answers, walk, possible }: Evaluation): Claims {
  const ahead = new Set(questionsAhead(tree, walk).map(({ asks }) => asks))
  const open = RULED.flatMap(track =>
    screensOf(tree, track).filter(screen => ahead.has(screen.id) && !isFull(answers, screen))
  )
  return {
    notAsked: open.map(({ id }) => id),
    ruledOut: RULED.filter(
      track =>
        possible[track].every(verdict => verdict === null) &&
        !open.some(({ about }) => about === track) &&
        isRuledOut(tree, answers, track)
    )
  }
}

/** Every screen told, one at least, was answered no in each of its signs, and nothing else is unsure. */
function isRuledOut(tree: Tree, answers: Answers, track: Track): boolean {
  const screens = screensOf(tree, track).filter(({ id }) => Object.hasOwn(answers, id))
  const unsure = Object.values(tree.observations).some(
    ({ id, about }) => about === track && answers[id] === 'unsure'
  )
  return (
    screens.length > 0 &&
    !unsure &&
    screens.every(
      screen =>
        isFull(answers, screen) &&
        Object.values(signsOf(answers, screen.id)).every(value => value === 'no')
    )
  )
}

function screensOf(tree: Tree, track: Track): readonly SignsObservation[] {
  return Object.values(tree.observations).filter(
    (observation): observation is SignsObservation =>
      observation.kind === 'signs' && observation.about === track
  )
}

/** What nobody asks for is not missing. */
function isFull(answers: Answers, { id, signs }: SignsObservation): boolean {
  const marks = signsOf(answers, id)
  return signs.every(sign => sign.volunteered || Object.hasOwn(marks, sign.id))
}
