// How much any other order of asking could save, beside the order of the trees:
// node --import tsx bench/order.ts <callers a tree> [tree]
import fc from 'fast-check'
import { evaluate } from '../src/evaluate/evaluate.ts'
import { askedObservations } from '../src/figures/shares.ts'
import type { Answer, Answers } from '../src/tree/answers.ts'
import type { Tree } from '../src/tree/tree.ts'
import { rawRest } from '../tests/helpers/random-call.ts'
import { shippedTrees } from '../tests/helpers/shipped.ts'
import { usualExcept } from '../tests/helpers/usual.ts'

const [callers = '300', only] = process.argv.slice(2)

/** Asks in the tree's order until the outcome is certain. */
function inTreeOrder(tree: Tree, answerTo: (observation: string) => Answer): Answers {
  let answers: Answers = {}
  for (;;) {
    const now = evaluate(tree, answers)
    if (now.settled !== null || now.walk.asks === null) return answers
    const { observation } = now.walk.asks
    answers = { ...answers, [observation]: answerTo(observation) }
  }
}

/**
 * How many of the answers no order could have done without: with all that this caller could tell but that
 * one, the outcome is still open, so it is in every set of answers that settles it.
 */
function needed(tree: Tree, asked: Answers, answerTo: (observation: string) => Answer): number {
  const whole = Object.fromEntries(askedObservations(tree).map(({ id }) => [id, answerTo(id)]))
  return Object.keys(asked).filter(id => {
    const { [id]: _, ...rest } = whole
    return evaluate(tree, rest).settled === null
  }).length
}

/** Callers whose jars are usual but for one thing, and callers who answer anything at all. */
function calls(tree: Tree, kind: 'one odd thing' | 'anything') {
  const observations = askedObservations(tree)
  const usual = usualExcept(tree, {})
  return fc
    .sample(fc.tuple(rawRest(tree), fc.constantFrom(...observations)), {
      numRuns: Number(callers),
      seed: 14
    })
    .map(([rest, odd]) => (id: string): Answer => {
      const own = kind === 'anything' || id === odd.id ? rest[id] : (usual[id] ?? rest[id])
      if (own === undefined) throw new Error(`nothing is told of ${id}`)
      return own
    })
}

const mean = (numbers: readonly number[]) =>
  Math.round((100 * numbers.reduce((sum, each) => sum + each, 0)) / numbers.length) / 100

for (const tree of await shippedTrees()) {
  if (only !== undefined && tree.id !== only) continue
  for (const kind of ['one odd thing', 'anything'] as const) {
    const walks = calls(tree, kind).map(answerTo => {
      const answers = inTreeOrder(tree, answerTo)
      return { asked: Object.keys(answers).length, least: needed(tree, answers, answerTo) }
    })
    const asked = walks.map(walk => walk.asked)
    console.log(
      JSON.stringify({
        tree: tree.id,
        callers: kind,
        asked: mean(asked),
        most: Math.max(...asked),
        noOrderBelow: mean(walks.map(walk => walk.least))
      })
    )
  }
}
