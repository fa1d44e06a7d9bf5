// One case of the prover's bench, alone in a process: its lines of JSON replace one another, the last counts.
import { getSimplePaths } from 'xstate/graph'
import { loadProject } from '../src/cli/read-project.ts'
import { Diagrams } from '../src/diagrams/diagram.ts'
import { spaceOf } from '../src/diagrams/space.ts'
import { TreeDiagrams } from '../src/diagrams/tree-diagrams.ts'
import { walk } from '../src/evaluate/walk.ts'
import { sharesOf } from '../src/figures/shares.ts'
import { compileMachine } from '../src/machine/compile-machine.ts'
import { everything } from '../src/prove/open.ts'
import { anUnsureDangerSignIsNotGentle } from '../src/prove/properties/an-unsure-danger-sign-is-not-gentle.ts'
import { notKnowingNeverReassures } from '../src/prove/properties/not-knowing-never-reassures.ts'
import { proveWith } from '../src/prove/prove.ts'
import { proveRule } from '../src/prove/prove-rule.ts'
import type { Answer } from '../src/tree/answers.ts'
import type { Tree } from '../src/tree/tree.ts'
import { everySet, holdsClaim, speaks } from '../tests/helpers/brute-force.ts'
import { generatedTree } from './generated-tree.ts'
import { searchOf, standingOf } from './search/large.ts'
import { threeAnswers } from './three-answers.ts'

interface Case {
  readonly work: keyof typeof WORKS
  readonly tree: 'shipped' | 'three' | 'shape' | 'hostile'
  readonly questions: number
  readonly observations: number
  readonly seconds: number
  /** Path generation: states are told apart by the answers as well. */
  readonly withAnswers?: boolean
}

const WORKS = { prover, shipped, force, generation, large, diagrams }

const MOST_VERTICES = 2_000_000

const say = (value: object) => process.stdout.write(`${JSON.stringify(value)}\n`)

function timed<T>(work: () => T): { ms: number; made: T } {
  const start = performance.now()
  const result = work()
  return { ms: performance.now() - start, made: result }
}

/** Every rule by this prover, from a tree never seen before. */
function prover(fresh: () => Tree): void {
  const runs = Array.from({ length: 7 }, () => {
    const tree = fresh()
    return timed(() => {
      const compiled = new TreeDiagrams(tree)
      return tree.rules.map(rule => proveRule(compiled, rule, {}).standing)
    })
  })
  const times = runs.map(({ ms }) => ms).sort((a, b) => a - b)
  // The first has nothing compiled by the language yet: it is what a command line waits for.
  say({
    coldMs: runs[0]?.ms,
    ms: times[3],
    rules: runs[0]?.made.length,
    standings: counted(runs[0]?.made)
  })
}

/** Every property of the shipped trees, cold and warm. */
function shipped(fresh: () => Tree): void {
  const runs = Array.from({ length: 5 }, () => {
    const tree = fresh()
    return timed(() => {
      const compiled = new TreeDiagrams(tree)
      const proved = proveWith(compiled, {}, ledger)
      return { proved, vertices: compiled.diagrams.count }
    })
  })
  const times = runs.map(({ ms }) => ms).sort((a, b) => a - b)
  const { proved, vertices } = runs[0]?.made ?? { proved: [], vertices: 0 }
  say({
    coldMs: runs[0]?.ms,
    ms: times[2],
    properties: proved.length,
    cases: proved.reduce((sum, { counts }) => sum + counts.proved + counts.refuted, 0),
    standings: counted(proved.map(({ standing }) => standing)),
    vertices
  })
}

/** Every rule on every complete set of answers, one by one. */
function force(fresh: () => Tree, { seconds }: Case): void {
  const tree = fresh()
  const sets = spaceOf(tree).reduce((n, { values }) => n * values.length, 1)
  const start = performance.now()
  let done = 0
  for (const answers of everySet(tree)) {
    const walked = walk(tree, answers)
    for (const rule of tree.rules) {
      if (speaks(tree, rule, answers)) holdsClaim(tree, rule.claim, walked)
    }
    done++
    const ms = performance.now() - start
    if (done % 256 === 0 && ms > seconds * 1000) {
      say({ stopped: 'seconds', sets, done, ms, wouldTakeMs: (ms / done) * sets })
      return
    }
  }
  say({ sets, done, ms: performance.now() - start })
}

/** Every simple way through the machine, by the library's own generator. Only generated, not judged. */
function generation(fresh: () => Tree, { withAnswers }: Case): void {
  const tree = fresh()
  const shares = sharesOf(tree)
  const { ms, made } = timed(() => {
    const machine = compileMachine(tree)
    const events = ({ value }: { value: unknown }) => {
      const asks = tree.questions[String(value)]?.asks ?? ''
      return (shares[asks] ?? []).map(({ answer }: { answer: Answer }) => ({
        type: 'observe',
        observation: asks,
        answer
      }))
    }
    return getSimplePaths(machine, {
      events: events as never,
      // By the question alone a tree that reads nothing again is generated whole, and soonest.
      serializeState: (state: { value: unknown; context: { answers: unknown } }) =>
        `${String(state.value)}${withAnswers ? JSON.stringify(state.context.answers) : ''}` as never
    } as never)
  })
  say({ ms, ways: made.length, ...memory() })
}

/** Which questions are reached, and every rule: by searching. */
function large(fresh: () => Tree): void {
  const tree = fresh()
  const start = performance.now()
  const compiled = new TreeDiagrams(tree)
  const reached = searchOf(compiled).reached(everything(compiled))
  const reachedMs = performance.now() - start
  const standings: string[] = []
  const figures = () => ({
    questions: Object.keys(tree.questions).length,
    readsAgain: searchOf(compiled).readsAgain,
    reached: reached?.size ?? null,
    reachedMs,
    rules: standings.length,
    standings: counted(standings),
    ms: performance.now() - start,
    ...memory()
  })
  say({ stopped: 'seconds', ...figures() })
  for (const rule of tree.rules) {
    standings.push(standingOf(compiled, rule))
    say({ stopped: 'seconds', ...figures() })
  }
  say(figures())
}

/** The whole diagrams of person, container, batch and use, and the properties that compare two of them. */
function diagrams(fresh: () => Tree): void {
  const tree = fresh()
  const start = performance.now()
  const variables = spaceOf(tree)
  const all = new Diagrams(
    variables.map(({ values }) => values.length),
    MOST_VERTICES
  )
  const compiled = new TreeDiagrams(tree, variables, all)
  const done: string[] = []
  const figures = () => ({ done, vertices: all.count, ms: performance.now() - start, ...memory() })
  const steps: [string, () => unknown][] = [
    ...(['person', 'container', 'batch', 'use'] as const).map(
      lens => [lens, () => compiled.of(lens)] as [string, () => unknown]
    ),
    ['not-knowing', () => notKnowingNeverReassures.prove(compiled, {}, undefined)],
    ['danger-unsure', () => anUnsureDangerSignIsNotGentle.prove(compiled, {}, undefined)]
  ]
  for (const [name, step] of steps) {
    say({ stopped: 'seconds', at: name, ...figures() })
    try {
      step()
      done.push(name)
    } catch (error) {
      say({
        stopped: error instanceof RangeError ? 'call stack' : 'vertices',
        at: name,
        ...figures()
      })
      return
    }
  }
  say(figures())
}

const memory = () => ({
  peakMB: Math.round(process.resourceUsage().maxRSS / 1000),
  heapMB: Math.round(process.memoryUsage().heapUsed / 1e6)
})

function counted(all: readonly string[] = []): Record<string, number> {
  const counts: Record<string, number> = {}
  for (const one of all) counts[one] = (counts[one] ?? 0) + 1
  return counts
}

const wanted: Case = JSON.parse(process.argv[2] ?? '{}')
const project = wanted.tree === 'shipped' ? (await loadProject()).loaded : undefined
const ledger = project?.sources as never

WORKS[wanted.work](() => {
  if (project) return structuredClone(project.trees[0]) as Tree
  if (wanted.tree === 'three') return threeAnswers(wanted.questions)
  return generatedTree({ ...wanted, hostile: wanted.tree === 'hostile' })
}, wanted)
