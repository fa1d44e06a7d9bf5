import { useMemo, useState } from 'preact/hooks'
import { type Call, callOf, type Fact } from '../../evaluate/facts.ts'
import { emergencyTold, withoutEmergency } from '../../parts/emergency-told.ts'
import { useSetting } from '../../parts/setting.tsx'
import { useWalk, type WalkInHand } from '../../parts/use-walk.ts'
import { factKey, type Told } from '../../reader/fact.ts'
import { without } from '../../reader/heard.ts'
import type { Answer, Answers } from '../../tree/answers.ts'

/** One call: every fact as it was told, and the walk that they come to. */
export interface CallInHand {
  readonly facts: readonly Told[]
  readonly contradictions: Call['contradictions']
  readonly walk: WalkInHand
  /**
   * Adds facts to those told before, without what was taken back: none is forgotten only because another
   * one contradicts it.
   */
  tell(facts: readonly Told[], takenBack: readonly Fact[]): void
  remove(fact: Fact): void
}

/** Opens a call, with the facts that were told before another tree was chosen. Answering the question on the sheet replaces what was told of it before. */
export function useCall(start: readonly Told[]): CallInHand {
  const { tree } = useSetting()
  const [facts, setFacts] = useState<readonly Told[]>(() =>
    start.filter(({ observation }) => Object.hasOwn(tree.observations, observation))
  )
  const call = useMemo(() => callOf(tree, facts), [tree, facts])
  const [first] = useState(call)
  const walk = useWalk(first.answers, first.either)
  const put = (next: readonly Told[], stays = false) => {
    setFacts(next)
    const { answers, either } = callOf(tree, next)
    walk.retell(answers, either, stays)
  }
  const replaced = (answers: Answers) => [
    ...facts.filter(fact => !Object.hasOwn(answers, fact.observation)),
    ...Object.entries(answers).map(([observation, answer]) => ({ observation, answer }))
  ]
  const answerTogether = (answers: Answers) => put(replaced(answers))
  const answer = (observation: string, answer: Answer) => answerTogether({ [observation]: answer })
  const replace = (observation: string, answer: Answer) =>
    put(replaced({ [observation]: answer }), true)
  const workOut = (observation: string, inputs: Answers) =>
    put([
      ...facts.filter(fact => fact.observation !== observation && !(fact.observation in inputs)),
      ...Object.entries(inputs).map(([id, answer]) => ({ observation: id, answer: answer }))
    ])
  const takeBack = () => {
    const emergencies = emergencyTold(tree, walk.answers, walk.walked)
    put(
      facts.flatMap(({ observation, answer: before }) =>
        Object.entries(withoutEmergency({ [observation]: before }, emergencies)).map(
          ([id, left]) => ({
            observation: id,
            answer: left
          })
        )
      )
    )
    walk.change(emergencies[0]?.observation ?? walk.emergencyAt)
  }
  return {
    facts,
    contradictions: call.contradictions,
    walk: { ...walk, answer, answerTogether, replace, workOut, takeBack },
    // Said twice it is still one fact.
    tell: (more, takenBack) => {
      const left = without(facts, takenBack)
      const names = new Set(left.map(factKey))
      put([...left, ...more.filter(fact => !names.has(factKey(fact)))])
    },
    remove: gone => put(facts.filter(fact => fact !== gone))
  }
}
