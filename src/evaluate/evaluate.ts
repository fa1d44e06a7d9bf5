import { diagramsOf } from '../diagrams/tree-diagrams.ts'
import { type Answers, measureOf, signsOf } from '../tree/answers.ts'
import type { Outcome } from '../tree/caution.ts'
import { emergencySigns } from '../tree/emergency.ts'
import { type SignsObservation, TRACKS } from '../tree/observation.ts'
import type { NoteAdvice, Tree } from '../tree/tree.ts'
import { adviceFor, isDiscarded, type SpokenAdvice } from './advice.ts'
import { type Either, levelsOfAll } from './either.ts'
import { type Possible, possibleAfter, type Walks, walkEither } from './possible.ts'
import { askedOn, type Progress, progressOf, questionsAhead } from './progress.ts'
import { sweptWith } from './swept-with.ts'
import { type Walk, walk } from './walk.ts'

/** What a set of answers comes to: worked out once, each part at first need, and read by every place. */
export interface Evaluation {
  readonly tree: Tree
  readonly answers: Answers
  /** Several things told of which only one is so; empty where nothing contradicts itself. */
  readonly either: readonly Either[]
  readonly walk: Walk
  /** The observations asked so far, in order, each once. */
  readonly asked: readonly string[]
  readonly progress: Progress
  readonly possible: Possible
  /** The signs that one answer can rule out together with those asked for. */
  readonly sweptWith: SignsObservation | null
  /**
   * The outcome and its advice as soon as both are certain: once the walk is finished, and before that
   * when no answer still to come could change a verdict, the use, a step, a call or a day. Until then null.
   */
  readonly settled: Settled | null
}

export interface Settled {
  readonly outcome: Outcome
  readonly advice: SpokenAdvice
}

/**
 * Evaluates answers, with what could be worked out from them.
 *
 * `walks`: how they are walked, the reference or the machine that is held to it.
 */
export function evaluate(
  tree: Tree,
  answers: Answers,
  either: readonly Either[] = [],
  walks: Walks = walk
): Evaluation {
  const walked = walkEither(tree, answers, either, walks)
  const once = <T>(make: () => T) => {
    let result: { readonly value: T } | null = null
    return () => {
      result ??= { value: make() }
      return result.value
    }
  }
  const asked = once(() => askedOn(tree, walked))
  const progress = once(() => progressOf(tree, answers, walked))
  const swept = once(() => sweptWith(tree, answers, walked))
  const possible = once(() => possibleAfter(tree, answers, either, walked))
  // No emergency is counted as possible until it is told: while one can still be asked for, nothing is certain.
  const emergencyAhead = () => {
    const ahead = new Set(questionsAhead(tree, walked).map(({ id }) => id))
    return emergencySigns(tree).some(
      ({ question, observation, sign }) =>
        ahead.has(question) && !Object.hasOwn(signsOf(answers, observation), sign)
    )
  }
  const certain = () => (emergencyAhead() ? null : certainOf(tree, answers, either, possible()))
  const settled = once(() => {
    const outcome = walked.finished ? walked.outcome : certain()
    return outcome && { outcome, advice: adviceFor(tree, outcome, answers) }
  })
  return {
    tree,
    answers,
    either,
    walk: walked,
    get asked() {
      return asked()
    },
    get progress() {
      return progress()
    },
    get possible() {
      return possible()
    },
    get sweptWith() {
      return swept()
    },
    get settled() {
      return settled()
    }
  }
}

/** The outcome that no answer still to come can change, with its notes; null while something is open. */
function certainOf(
  tree: Tree,
  answers: Answers,
  either: readonly Either[],
  { settled, atLeast }: Possible
): Outcome | null {
  if (!settled) return null
  const diagrams = diagramsOf(tree)
  const notes: string[] = []
  for (const [note, advice] of Object.entries(tree.advice.notes)) {
    // Of a batch that goes out nothing is said of waiting, whatever is still answered.
    if (advice.notWhenDiscarded && isDiscarded(tree, { ...atLeast, notes })) continue
    const levels = levelsOfAll(diagrams, diagrams.of({ note }), answers, either)
    if (levels.length > 1) {
      if (doesSomething(advice)) return null
    } else if (levels[0] === 1) notes.push(note)
  }
  const { countsDays, advice } = tree
  const names = [
    ...notes.map(note => advice.notes[note]),
    ...TRACKS.map(track => advice.verdicts[atLeast[track] ?? ''])
  ]
  const waits = names.some(each => 'day' in (each?.recheck ?? {}))
  // Until the day is told it is open which of two days comes first, and whether one has come.
  if (waits && countsDays !== undefined && measureOf(answers, countsDays) === undefined) return null
  return { ...atLeast, notes }
}

/** Whether a note changes what to do, whom to call or when to look again: more than its own sentence. */
function doesSomething({ because: _, notWhenDiscarded: __, ...does }: NoteAdvice): boolean {
  return Object.values(does).some(value =>
    Array.isArray(value) ? value.length > 0 : Boolean(value)
  )
}
