import { createActor } from 'xstate'
import type { Either } from '../evaluate/either.ts'
import { type Evaluation, evaluate } from '../evaluate/evaluate.ts'
import type { Walks } from '../evaluate/possible.ts'
import { type Answer, type Answers, isSigns } from '../tree/answers.ts'
import type { Tree } from '../tree/tree.ts'
import { machineOf, walkOf } from './compile-machine.ts'
import { withDerived } from './derived/derive.ts'
import { type ScreenState, screenMachine, screenState } from './screen.ts'

/** One caller's walk, as it goes. Only the answers are ever kept; no snapshot is. */
export interface Session {
  readonly tree: Tree
  /** The answers as told. */
  told(): Answers
  /** What the answers come to, with what could be worked out from them. */
  evaluation(): Evaluation
  /** What is shown. */
  shows(): ScreenState
  /** The earlier question that is being changed; null while none is. */
  changing(): string | null
  /** Whether anything was answered or changed since the walk was opened. */
  moved(): boolean
  /** Tells an answer; of signs only those named, beside those told before. */
  observe(observation: string, answer: Answer): void
  /** Tells an answer in place of all that was told of the observation; the walk goes on from there. */
  replace(observation: string, answer: Answer): void
  /** Tells an answer in place of what was told, without leaving what is shown. */
  add(observation: string, answer: Answer): void
  withdraw(observation: string): void
  /**
   * Tells a whole set of answers in place of all that was told, and what in it contradicts itself.
   * `stays`: without leaving what is shown.
   */
  retell(answers: Answers, either?: readonly Either[], stays?: boolean): void
  /** Shows an earlier question again. */
  change(observation: string): void
  /** Back to the walk from a question being changed, or from an outcome told early. */
  goOn(): void
  /** Tells the outcome before the last question, once it is certain. */
  stop(): void
  /** Calls back after each change; returns how to stop. */
  subscribe(listener: () => void): () => void
}

/** Opens a walk with nothing told, or with the answers of an earlier one. */
export function createSession(
  tree: Tree,
  start: Answers = {},
  startEither: readonly Either[] = []
): Session {
  const walker = createActor(machineOf(tree)).start()
  // The machine walks, and nothing walks beside it: an evaluation reads its snapshot.
  const walks: Walks = (_, answers) => {
    walker.send({ type: 'retell', answers })
    return walkOf(tree, walker.getSnapshot())
  }
  let answersTold = start
  let contradicted = startEither
  // All is told again each time: a withdrawn input withdraws what was derived from it.
  const evaluation = () => evaluate(tree, withDerived(tree, answersTold), contradicted, walks)
  const screen = createActor(screenMachine, { input: { evaluation: evaluation() } }).start()
  const tell = (type: 'told' | 'added', answers: Answers, either: readonly Either[] = []) => {
    answersTold = answers
    contradicted = either
    screen.send({ type, evaluation: evaluation() })
  }
  const shown = () => screen.getSnapshot()

  return {
    tree,
    told: () => answersTold,
    evaluation: () => shown().context.evaluation,
    shows: () => screenState(shown().value),
    changing: () => shown().context.changing,
    moved: () => shown().context.moved,
    observe: (observation, answer) => {
      const before = answersTold[observation]
      const both = isSigns(answer) && isSigns(before) ? { ...before, ...answer } : answer
      tell('told', { ...answersTold, [observation]: both })
    },
    replace: (observation, answer) => tell('told', { ...answersTold, [observation]: answer }),
    add: (observation, answer) => tell('added', { ...answersTold, [observation]: answer }),
    withdraw: observation => {
      const { [observation]: _, ...rest } = answersTold
      tell('told', rest)
    },
    retell: (answers, either, stays = false) => tell(stays ? 'added' : 'told', answers, either),
    change: observation => screen.send({ type: 'change', observation }),
    goOn: () => screen.send({ type: 'go-on' }),
    stop: () => screen.send({ type: 'stop' }),
    subscribe: listener => {
      const subscription = screen.subscribe(listener)
      return () => subscription.unsubscribe()
    }
  }
}
