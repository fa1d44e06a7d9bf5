import type { Answer, Answers } from '../tree/answers.ts'
import { branchesOf } from '../tree/circuit.ts'
import { decide, isVolunteered } from '../tree/decide.ts'
import { settlersOf } from '../tree/linked.ts'
import { must } from '../tree/must.ts'
import type { Question, Tree } from '../tree/tree.ts'

/** Which of the answers told can still decide where a walk goes, so that walks alike in them are one. */
export class StillRead {
  readonly #tree: Tree
  readonly #readers = new Map<string, ReadonlyMap<string, readonly Question[]>>()
  readonly #turns = new Map<string, string>()
  readonly #numbers = new Map<Answer, number>()
  /** Observations that settle, or are settled: their answers are never merged. */
  readonly #settling: ReadonlySet<string>
  /** Observations whose answer can change what was passed before: the walk goes over it from the start. */
  readonly restarts: ReadonlySet<string>

  constructor(tree: Tree) {
    this.#tree = tree
    this.#settling = new Set(
      Object.keys(tree.observations).flatMap(id => {
        const settlers = settlersOf(tree, id)
        return settlers.length === 0 ? [] : [id, ...settlers.map(settler => settler.id)]
      })
    )
    this.restarts = new Set(
      Object.values(tree.observations)
        .filter(one => (one.kind === 'choice' && one.settles) || this.#passedUntold(one.id))
        .map(({ id }) => id)
    )
  }

  /** The answers that count from a question on; equal texts lead every walk the same way. */
  kept(question: string, answers: Answers): { readonly told: Answers; readonly text: string } {
    const readers = this.#from(question)
    const kept: [string, Answer][] = []
    const text: string[] = []
    for (const [id, answer] of Object.entries(answers)) {
      const reading = readers.get(id)
      if (this.#settling.has(id)) text.push(`${id}=${this.#number(answer)}`)
      else if (reading === undefined) continue
      else text.push(`${id}>${this.#ways(question, id, answer, reading)}`)
      kept.push([id, answer])
    }
    return { told: Object.fromEntries(kept), text: text.sort().join(' ') }
  }

  /** The answers that settle or are settled: what they come to is judged at the end. */
  settling(answers: Answers): { readonly told: Answers; readonly text: string } {
    const kept = Object.entries(answers).filter(([id]) => this.#settling.has(id))
    const text = kept.map(([id, answer]) => `${id}=${this.#number(answer)}`).sort()
    return { told: Object.fromEntries(kept), text: text.join(' ') }
  }

  /** Where an answer leads at each question that may still read it. */
  #ways(question: string, id: string, answer: Answer, reading: readonly Question[]): string {
    const key = `${question} ${id} ${this.#number(answer)}`
    const before = this.#turns.get(key)
    if (before !== undefined) return before
    const ways = reading.map(reader => {
      const leads = decide(this.#tree, reader, { [id]: answer })?.branch.leads
      return leads && 'to' in leads ? leads.to : '.'
    })
    this.#turns.set(key, ways.join())
    return ways.join()
  }

  #from(start: string): ReadonlyMap<string, readonly Question[]> {
    const before = this.#readers.get(start)
    if (before) return before
    const readers = new Map<string, Question[]>()
    for (const question of this.#below(start, this.restarts)) {
      readers.set(question.asks, [...(readers.get(question.asks) ?? []), question])
    }
    this.#readers.set(start, readers)
    return readers
  }

  /** The questions that a walk can still come to. */
  #below(start: string, restarts: ReadonlySet<string>): readonly Question[] {
    const seen = new Set([start])
    const below: Question[] = []
    for (const id of seen) {
      const question = must(this.#tree.questions[id], 'question')
      below.push(question)
      for (const { leads } of branchesOf(question)) if ('to' in leads) seen.add(leads.to)
      if (restarts.has(question.asks)) seen.add(this.#tree.start)
    }
    return below
  }

  /** Whether a question passes over signs as not told that a later one asks for. */
  #passedUntold(id: string): boolean {
    const reading = Object.values(this.#tree.questions).filter(({ asks }) => asks === id)
    const asksToo = (from: string) =>
      this.#below(from, new Set()).some(question => question.asks === id && !isPassed(question))
    return reading.some(question => isPassed(question) && asksToo(question.id))
  }

  #number(answer: Answer): number {
    const before = this.#numbers.get(answer) ?? this.#numbers.size
    this.#numbers.set(answer, before)
    return before
  }
}

/** Read where it stands and never stopped at. */
const isPassed = isVolunteered
