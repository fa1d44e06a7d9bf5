import { walk } from '../evaluate/walk.ts'
import type { Answer, Answers } from '../tree/answers.ts'
import type { Outcome } from '../tree/caution.ts'
import { decide } from '../tree/decide.ts'
import { effectiveChoice } from '../tree/effective.ts'
import { emergenciesTold } from '../tree/emergency.ts'
import { settlersOf } from '../tree/linked.ts'
import { must } from '../tree/must.ts'
import type { Question, Tree } from '../tree/tree.ts'
import { StillRead } from './still-read.ts'

/** Where a walk stands: the question that waits, and the answers that can still decide where it goes. */
export interface RouteStop {
  readonly id: number
  readonly question: string
  /** What is asked; null at an end. */
  readonly asks: string | null
  readonly told: Answers
  /** At an emergency: its outcome, whatever else was told. */
  readonly emergency: Outcome | null
  /** At an end: an observation that others settle stayed unsure all the same. */
  readonly unsure: boolean
}

/** The ways through a tree, one answer at a time, as `walk()` goes them. */
export class Routes {
  /** Every question that some walk so far has passed or waited at. */
  readonly met = new Set<string>()
  readonly #tree: Tree
  readonly #read: StillRead
  readonly #known = new Map<string, RouteStop>()

  constructor(tree: Tree) {
    this.#tree = tree
    this.#read = new StillRead(tree)
  }

  start(): RouteStop {
    return this.#follow(this.#tree.start, {})
  }

  /** After one more answer. */
  answered({ asks, question, told }: RouteStop, answer: Answer): RouteStop {
    const id = must(asks, 'observation')
    // What changes an earlier reading may lead elsewhere from there.
    const from = this.#read.restarts.has(id) ? this.#tree.start : question
    return this.#told(from, told, id, answer)
  }

  /** After an observation is told before anything is asked. */
  toldFirst(observation: string, answer: Answer): RouteStop {
    return this.#told(this.#tree.start, {}, observation, answer)
  }

  #told(from: string, before: Answers, observation: string, answer: Answer): RouteStop {
    const one = { [observation]: answer }
    if (emergenciesTold(this.#tree, one).length === 0) {
      return this.#follow(from, { ...before, ...one })
    }
    const { trail, outcome } = walk(this.#tree, one)
    for (const { question } of trail) this.met.add(question)
    return this.#ended({}, outcome)
  }

  #follow(from: string, answers: Answers): RouteStop {
    let id = from
    for (;;) {
      this.met.add(id)
      const question = must(this.#tree.questions[id], 'question')
      const branch = decide(this.#tree, question, answers)?.branch
      if (branch === undefined) return this.#waiting(question, answers)
      if ('end' in branch.leads) return this.#ended(answers, null)
      id = branch.leads.to
    }
  }

  #waiting({ id: question, asks }: Question, all: Answers): RouteStop {
    const { told, text } = this.#read.kept(question, all)
    return this.#once(`${question} ${text}`, {
      question,
      asks,
      told,
      emergency: null,
      unsure: false
    })
  }

  #ended(all: Answers, emergency: Outcome | null): RouteStop {
    const { told, text } = this.#read.settling(all)
    const unsure = Object.keys(told).some(id => this.#staysUnsure(id, told))
    const key = `end ${text} ${JSON.stringify(emergency)}`
    return this.#once(key, { question: '', asks: null, told, emergency, unsure })
  }

  #once(key: string, route: Omit<RouteStop, 'id'>): RouteStop {
    const before = this.#known.get(key) ?? { id: this.#known.size, ...route }
    this.#known.set(key, before)
    return before
  }

  #staysUnsure(id: string, answers: Answers): boolean {
    const observation = this.#tree.observations[id]
    return (
      observation?.kind === 'choice' &&
      settlersOf(this.#tree, id).length > 0 &&
      effectiveChoice(this.#tree, observation, answers)?.answer === 'unsure'
    )
  }
}
