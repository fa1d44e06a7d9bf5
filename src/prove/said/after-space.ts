import { spaceOf, type Value, type Variable } from '../../diagrams/space.ts'
import type { Interval } from '../../tree/answers.ts'
import { decide } from '../../tree/decide.ts'
import type { Range } from '../../tree/observation.ts'
import type { AfterQuestion, Tree } from '../../tree/tree.ts'

/**
 * The answer space of a tree, and after it what is asked once the outcome is out: that adds notes too,
 * and what they say must agree with the rest.
 */
export function spaceWithAfter(tree: Tree): readonly Variable[] {
  const space = spaceOf(tree)
  const names = new Set(space.map(({ observation }) => observation))
  const asked = new Map(tree.after.map(question => [question.asks, question]))
  const more = [...asked.values()]
    .filter(({ asks }) => !names.has(asks))
    .flatMap(question => variablesOf(question))
  return [...space, ...more]
}

/** The notes that a question put after the outcome adds, by one value of one coordinate of what it asks. */
export function notesAfter(
  tree: Tree,
  question: AfterQuestion,
  { sign }: Variable,
  { answer }: Value
): readonly string[] {
  if (question.kind === 'signs') {
    const effects = question.signs[sign ?? '']
    if (answer === 'no' || effects === undefined) return []
    return (answer === 'yes' ? effects.yes : effects.unsure).notes
  }
  if (question.kind === 'choice') return question.answers[String(answer)]?.notes ?? []
  return decide(tree, question, { [question.asks]: answer })?.branch.notes ?? []
}

function variablesOf(question: AfterQuestion): readonly Variable[] {
  const observation = question.asks
  switch (question.kind) {
    case 'signs':
      return Object.keys(question.signs).map(sign => ({
        observation,
        sign,
        values: ['yes', 'unsure', 'no'].map(named)
      }))
    case 'choice':
      return [{ observation, values: Object.keys(question.answers).map(named) }]
    case 'measure': {
      const readings = question.ranges.map(({ range }) => inside(range))
      const across = question.ranges.flatMap(({ range }) => edgeOf(range))
      return [{ observation, values: [...readings, ...across, named('unsure')] }]
    }
  }
}

const named = (answer: string): Value => ({ label: answer, answer })

/** A reading that lies in the range with all of its interval. */
function inside({ atLeast, over, under, atMost }: Range): Value {
  const low = atLeast ?? over
  const high = atMost ?? under
  const reading =
    low === undefined ? (high ?? 0) - 1 : high === undefined ? low + 1 : (low + high) / 2
  return reads({ low: reading, reading, high: reading })
}

/** A reading that reaches to both sides of the range's lower edge. */
function edgeOf({ atLeast, over }: Range): readonly Value[] {
  const edge = atLeast ?? over
  return edge === undefined ? [] : [reads({ low: edge - 0.1, reading: edge, high: edge + 0.1 })]
}

const reads = (answer: Interval): Value => ({
  label: `${answer.reading}`,
  answer
})
