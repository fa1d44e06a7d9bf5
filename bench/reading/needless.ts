import { evaluate } from '../../src/evaluate/evaluate.ts'
import { withDerived } from '../../src/machine/derived/derive.ts'
import type { Answer, Answers } from '../../src/tree/answers.ts'
import { bandsOf } from '../../src/tree/bands.ts'
import type { Observation } from '../../src/tree/observation.ts'
import type { Tree } from '../../src/tree/tree.ts'

/**
 * Of what was asked, what could change nothing: whatever else had been answered to it, everything else told
 * the same, verdicts, use, steps, calls and the day to look again would be what they are.
 *
 * Signs are tried one at a time, and all unsure. An answer that leaves something open counts as a change.
 */
export function needlessIn(tree: Tree, answers: Answers): readonly string[] {
  const reached = saidOf(tree, answers)
  if (reached === OPEN) throw new Error(`${tree.id}: the walk is not at its end`)
  return Object.keys(answers).filter(id =>
    otherAnswers(tree, tree.observations[id], answers[id]).every(
      answer => saidOf(tree, { ...answers, [id]: answer }) === reached
    )
  )
}

const OPEN = 'open'

/** Everything that is decided and everything that is to be done; `open` while either can still change. */
function saidOf(tree: Tree, answers: Answers): string {
  const { settled } = evaluate(tree, withDerived(tree, answers))
  if (settled === null) return OPEN
  const { person, container, batch, use } = settled.outcome
  const { doNow, later, clean, keep, startAgain, refer, recheck } = settled.advice
  const lists = [[...doNow, ...later], clean, keep, startAgain, refer]
  const said = lists.map(list => [...list].sort())
  return JSON.stringify([person, container, batch, use, said, recheck])
}

/** Every other answer to an observation that the tree or its limits tell apart. */
function otherAnswers(
  tree: Tree,
  observation: Observation | undefined,
  given: Answer | undefined
): readonly Answer[] {
  switch (observation?.kind) {
    case 'choice':
      return [...observation.answers.map(({ id }) => id), 'unsure']
    case 'measure':
      return [...bandsOf(tree, observation).map(({ interval }) => interval), 'unsure']
    case 'signs': {
      const asked = observation.signs.filter(sign => !sign.volunteered)
      const all = (value: 'no' | 'unsure') =>
        Object.fromEntries(asked.map(({ id }) => [id, value] as const))
      const withOne = (sign: string, value: 'yes' | 'no' | 'unsure') => ({
        ...(given as Record<string, 'yes' | 'no' | 'unsure'>),
        [sign]: value
      })
      const singles = asked.flatMap(({ id }) =>
        (['yes', 'no', 'unsure'] as const).map(value => withOne(id, value))
      )
      return [all('no'), all('unsure'), ...singles]
    }
    default:
      return []
  }
}
