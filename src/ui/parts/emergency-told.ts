import { type Answers, choiceOf, signsOf } from '../../tree/answers.ts'
import { EMERGENCY, emergenciesTold } from '../../tree/emergency.ts'
import type { Tree } from '../../tree/tree.ts'
import type { Walk } from '../../tree/walk.ts'

/** An answer or a sign that was told and is an emergency. */
export interface EmergencyTold {
  readonly observation: string
  readonly sign: string
}

/** What was told that is an emergency: on any walk, or where this one came to it. */
export function emergencyTold(
  tree: Tree,
  answers: Answers,
  { trail }: Walk
): readonly EmergencyTold[] {
  const anywhere = emergenciesTold(tree, answers)
  if (anywhere.length > 0) return anywhere.map(({ observation, sign }) => ({ observation, sign }))
  return trail
    .filter(({ raised }) => raised.includes(EMERGENCY))
    .flatMap(({ question, observation }) => toldAt(tree, answers, question, observation))
}

function toldAt(
  tree: Tree,
  answers: Answers,
  id: string,
  observation: string
): readonly EmergencyTold[] {
  const question = tree.questions[id]
  if (question?.kind === 'choice') {
    const sign = choiceOf(answers, observation)
    return sign === undefined ? [] : [{ observation, sign }]
  }
  if (question?.kind !== 'signs') return []
  return Object.entries(signsOf(answers, observation))
    .filter(
      ([sign, value]) =>
        value === 'yes' && question.signs[sign]?.yes.raise.includes(EMERGENCY) === true
    )
    .map(([sign]) => ({ observation, sign }))
}

/** The answers without those signs: of a screen all else stays told. */
export function withoutEmergency(answers: Answers, told: readonly EmergencyTold[]): Answers {
  const gone = (observation: string) => told.filter(each => each.observation === observation)
  return Object.fromEntries(
    Object.entries(answers).flatMap(([observation, answer]) => {
      const signs = gone(observation).map(({ sign }) => sign)
      if (signs.length === 0) return [[observation, answer]]
      const rest = Object.entries(signsOf(answers, observation)).filter(
        ([sign]) => !signs.includes(sign)
      )
      return rest.length === 0 ? [] : [[observation, Object.fromEntries(rest)]]
    })
  )
}
