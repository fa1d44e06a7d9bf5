import { type Answer, type Answers, signsOf } from './answers.ts'
import type { MeasureObservation, Observation } from './observation.ts'
import { holds } from './range.ts'
import type { Tree } from './tree.ts'

/** What is told, and for everything else that the tree asks what an ordinary, untroubled jar shows. */
export function usualExcept(tree: Tree, answers: Answers): Answers {
  const asked = new Set(Object.values(tree.questions).map(question => question.asks))
  const rest = Object.values(tree.observations)
    .filter(({ id }) => asked.has(id))
    .map(observation => [observation.id, usual(observation, answers)])
  return Object.fromEntries(rest)
}

function usual(observation: Observation, answers: Answers): Answer {
  const answer = answers[observation.id]
  switch (observation.kind) {
    case 'signs': {
      const none = Object.fromEntries(observation.signs.map(({ id }) => [id, 'no' as const]))
      return { ...none, ...signsOf(answers, observation.id) }
    }
    case 'choice':
      // A settling answer that is not told settles nothing.
      return answer ?? (observation.settles ? 'unsure' : usualAnswer(observation.answers))
    case 'measure': {
      if (answer !== undefined) return answer
      const reading = usualReading(observation)
      return { low: reading, reading, high: reading }
    }
  }
}

function usualAnswer(answers: readonly { readonly id: string; readonly usual: boolean }[]): string {
  // The last usual one: the ordinary film, not the islands before it.
  return answers.filter(answer => answer.usual).at(-1)?.id ?? 'unsure'
}

/** A reading that an ordinary jar shows: the ones that the rows are told beside where they are usual. */
function usualReading({ unit, usual: range, span }: MeasureObservation): number {
  const reading = unit === 'day' ? 9 : 3.2
  if (range === undefined || holds(range, reading)) return reading
  const from = range.atLeast ?? range.over ?? span.from
  const to = range.atMost ?? range.under ?? span.to
  return unit === 'day' ? Math.ceil((from + to) / 2) : (from + to) / 2
}
