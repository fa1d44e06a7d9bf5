import type { Walk } from '../evaluate/walk.ts'
import { type Answers, choiceOf, signsOf } from '../tree/answers.ts'
import { EMERGENCY, emergenciesTold } from '../tree/emergency.ts'
import type { Tree } from '../tree/tree.ts'

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
  const here = trail.filter(({ raised }) => raised.includes(EMERGENCY))
  // Told before the walk has come to the question that makes it one.
  const asking =
    here.length > 0 ? here.map(({ question }) => question) : Object.keys(tree.questions)
  const emergencies = asking.flatMap(id => toldAt(tree, answers, id))
  return [...new Map(emergencies.map(each => [`${each.observation} ${each.sign}`, each])).values()]
}

function toldAt(tree: Tree, answers: Answers, id: string): readonly EmergencyTold[] {
  const question = tree.questions[id]
  if (question === undefined || question.kind === 'measure') return []
  const observation = question.asks
  const raises = (sign: string) => {
    const effect = question.kind === 'choice' ? question.answers[sign] : question.signs[sign]?.yes
    return effect?.raise.includes(EMERGENCY) === true
  }
  const choice = choiceOf(answers, observation)
  const signs = Object.entries(signsOf(answers, observation))
    .filter(([, value]) => value === 'yes')
    .map(([sign]) => sign)
  return (choice === undefined ? signs : [choice])
    .filter(raises)
    .map(sign => ({ observation, sign }))
}

/** The answers without those signs: of a screen all else stays told. */
export function withoutEmergency(answers: Answers, emergencies: readonly EmergencyTold[]): Answers {
  const gone = (observation: string) => emergencies.filter(each => each.observation === observation)
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
