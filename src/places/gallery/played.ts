import { walk } from '../../evaluate/walk.ts'
import { type Answer, type Answers, isSigns, signsOf } from '../../tree/answers.ts'
import type { Observation, Unit } from '../../tree/observation.ts'
import { measured } from '../../tree/reading.ts'
import { noneOf } from '../../tree/tell.ts'
import type { Tree } from '../../tree/tree.ts'

/** What an ordinary, finished jar measures. */
const READINGS: Readonly<Record<Unit, number>> = {
  ph: 3.2,
  day: 9,
  fahrenheit: 75,
  percent: 10,
  milliliter: 475,
  gram: 45,
  'gram-per-liter': 20,
  'ph-difference': 0
}

/** The answers of a whole walk: what is told, and for everything else asked what an ordinary jar shows. */
export function played(tree: Tree, facts: Answers): Answers {
  let answers: Answers = {}
  for (;;) {
    const { asks } = walk(tree, answers)
    const observation = asks === null ? undefined : tree.observations[asks.observation]
    if (observation === undefined) return answers
    answers = { ...answers, [observation.id]: completed(observation, facts[observation.id]) }
  }
}

/** The answers of a walk that has only just come to a question. */
export function playedUntil(tree: Tree, answers: Answers, observation: string): Answers {
  const all = Object.entries(played(tree, answers))
  return Object.fromEntries(
    all.slice(
      0,
      all.findIndex(([id]) => id === observation)
    )
  )
}

function completed(observation: Observation, answer: Answer | undefined): Answer {
  switch (observation.kind) {
    case 'signs':
      return { ...signsOf(noneOf({}, observation), observation.id), ...(isSigns(answer) && answer) }
    case 'choice':
      return answer ?? observation.answers.filter(({ usual }) => usual).at(-1)?.id ?? 'unsure'
    case 'measure':
      return (
        answer ??
        measured(observation, READINGS[observation.unit], observation.instruments.at(0)?.id)
      )
  }
}
