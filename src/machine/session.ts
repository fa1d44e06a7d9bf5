import { createActor } from 'xstate'
import type { Answer, Answers } from '../tree/answers.ts'
import type { Outcome } from '../tree/caution.ts'
import type { Tree } from '../tree/tree.ts'
import { type Context, compileMachine } from './compile-machine.ts'
import { withDerived } from './derived/derive.ts'

/** One caller's walk, as it goes. Only the answers are ever kept; the machine's snapshot never is. */
export interface Session {
  readonly tree: Tree
  /** The answers as told. */
  told(): Answers
  /** The answers as told, with what could be worked out from them. */
  answers(): Answers
  /** The question that waits, or null when the walk is finished. */
  asks(): string | null
  /** Final once `asks` is null. */
  outcome(): Outcome
  /** Tells an answer; of signs only those named, beside those told before. */
  observe(observation: string, answer: Answer): void
  /** Tells an answer in place of all that was told of the observation. */
  replace(observation: string, answer: Answer): void
  withdraw(observation: string): void
  /** Tells a whole set of answers in place of all that was told. */
  retell(answers: Answers): void
  /** Calls back after each telling; returns how to stop. */
  subscribe(listener: () => void): () => void
}

/** Opens a walk with nothing told, or with the answers of an earlier one. */
export function createSession(tree: Tree, start: Answers = {}): Session {
  const actor = createActor(compileMachine(tree)).start()
  const listeners = new Set<() => void>()
  let told: Answers = {}

  const context = () => actor.getSnapshot().context as Context
  // All is told anew each time: a withdrawn input withdraws what was derived from it.
  const retell = (answers: Answers) => {
    told = answers
    actor.send({ type: 'retell', answers: withDerived(tree, told) })
    for (const listener of listeners) listener()
  }
  retell(start)

  return {
    tree,
    told: () => told,
    answers: () => context().answers,
    asks: () => {
      const state = String(actor.getSnapshot().value)
      return Object.hasOwn(tree.questions, state) ? state : null
    },
    outcome: () => context().outcome,
    observe: (observation, answer) => {
      const before = told[observation]
      const both =
        typeof answer === 'object' && !('reading' in answer) && typeof before === 'object'
          ? { ...before, ...answer }
          : answer
      retell({ ...told, [observation]: both as Answer })
    },
    replace: (observation, answer) => retell({ ...told, [observation]: answer }),
    withdraw: observation => {
      const { [observation]: _, ...rest } = told
      retell(rest)
    },
    retell,
    subscribe: listener => {
      listeners.add(listener)
      return () => listeners.delete(listener)
    }
  }
}
