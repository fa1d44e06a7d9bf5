// How often an outcome can be told before the last question, and whether it ever differs from the end.
// node --import tsx bench/stop-here.ts <calls a tree> [tree]
import fc from 'fast-check'
import { type Evaluation, evaluate } from '../src/evaluate/evaluate.ts'
import { callOf } from '../src/evaluate/facts.ts'
import { emergenciesTold } from '../src/tree/emergency.ts'
import type { Tree } from '../src/tree/tree.ts'
import { missing, rawCall, rawRest } from '../tests/helpers/random-call.ts'
import { shippedTrees } from '../tests/helpers/shipped.ts'

const [calls = '1000', only] = process.argv.slice(2)

/** Everything that is to be done, and everything decided. */
const saidOf = ({ settled }: Evaluation) => {
  if (settled === null) throw new Error('nothing is certain')
  const { doNow, clean, keep, startAgain, refer, recheck } = settled.advice
  const lists = [doNow, clean, keep, startAgain, refer].map(list => [...list].sort())
  const { person, container, batch, use } = settled.outcome
  return JSON.stringify([lists, recheck, person, container, batch, use])
}

function goOn(tree: Tree, seed: number) {
  const [[facts, rest]] = fc.sample(fc.tuple(rawCall(tree), rawRest(tree)), {
    numRuns: 1,
    seed
  }) as [[Parameters<typeof callOf>[1], Readonly<Record<string, never>>]]
  const stages: Evaluation[] = []
  for (let sofar = facts; ; ) {
    const { answers, either } = callOf(tree, sofar)
    const now = evaluate(tree, answers, either)
    stages.push(now)
    if (now.walk.asks === null) return { facts, stages }
    const { observation } = now.walk.asks
    sofar = [...sofar, missing(answers, observation, rest[observation] as never)]
  }
}

for (const tree of await shippedTrees()) {
  if (only !== undefined && tree.id !== only) continue
  const count = { calls: Number(calls), partial: 0, offered: 0, wrong: 0, emergencies: 0 }
  for (let seed = 1; seed <= count.calls; seed++) {
    const { facts, stages } = goOn(tree, seed)
    const end = stages.at(-1) as Evaluation
    if (emergenciesTold(tree, end.answers).length > 0) {
      count.emergencies++
      continue
    }
    for (const stage of stages.slice(0, -1)) {
      count.partial++
      if (stage.settled === null) continue
      count.offered++
      if (saidOf(stage) === saidOf(end)) continue
      count.wrong++
      console.error(JSON.stringify({ tree: tree.id, seed, facts }))
    }
  }
  console.log(JSON.stringify({ tree: tree.id, ...count }))
}
