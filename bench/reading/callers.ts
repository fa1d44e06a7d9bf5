import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parse } from 'yaml'
import { type Answer, isInterval, type Signs } from '../../src/tree/answers.ts'
import type { Observation } from '../../src/tree/observation.ts'
import { measured } from '../../src/tree/reading.ts'
import type { Tree } from '../../src/tree/tree.ts'
import { usualExcept } from '../../tests/helpers/usual.ts'

/** What is true of an observation, as it stands in `callers.yaml`. */
export type Truth =
  | string
  | number
  | readonly string[]
  | { readonly reading: number; readonly by: string }

/** One caller, and what is true of the jar that the call is about. */
export interface Caller {
  readonly id: string
  /** What the call begins with, in English and in Spanish. */
  readonly says: string
  readonly dice: string
  readonly tree: string
  readonly tells?: Readonly<Record<string, Truth>>
  /** What is answered to a question about anything not told; left out: what an ordinary jar shows. */
  readonly otherwise?: 'unsure'
}

/** The callers, as `callers.yaml` beside this file lists them. */
export const callers = (): readonly Caller[] =>
  parse(readFileSync(join(import.meta.dirname, 'callers.yaml'), 'utf8'))

/**
 * What a caller answers to a question.
 *
 * @throws Error when what is told is no answer to it: the question has changed, or the list is wrong.
 */
export function answerOf(caller: Caller, tree: Tree, observation: Observation): Answer {
  const { id } = observation
  const answer = caller.tells?.[id]
  if (answer === undefined) return caller.otherwise === 'unsure' ? unsure(observation) : usual()
  const wrong = () => new Error(`${caller.id}: ${JSON.stringify(answer)} is no answer to ${id}`)
  if (answer === 'unsure') return unsure(observation)
  switch (observation.kind) {
    case 'choice':
      if (!observation.answers.some(each => each.id === answer)) throw wrong()
      return answer as string
    case 'signs': {
      if (!Array.isArray(answer)) throw wrong()
      const seen = observation.signs.filter(sign => answer.includes(sign.id))
      if (seen.length < answer.length) throw wrong()
      return signs(observation, sign => (answer.includes(sign) ? 'yes' : 'no'))
    }
    case 'measure':
      if (typeof answer === 'number') return measured(observation, answer)
      if (typeof answer !== 'object' || !('reading' in answer)) throw wrong()
      return measured(observation, answer.reading, answer.by)
  }

  function usual(): Answer {
    if (observation.kind === 'measure' && observation.usual === undefined) return 'unsure'
    const answer = usualExcept(tree, {})[id]
    if (answer === undefined) throw new Error(`${tree.id} never asks for ${id}`)
    if (observation.kind === 'signs') return signs(observation, () => 'no')
    return isInterval(answer) ? measured(observation as never, answer.reading) : answer
  }
}

const unsure = (observation: Observation): Answer =>
  observation.kind === 'signs' ? signs(observation, () => 'unsure') : 'unsure'

/** What is said of every sign that is asked for, and of every other that is there. */
const signs = (
  observation: Observation & { readonly kind: 'signs' },
  of: (sign: string) => Signs[string] | undefined
): Signs =>
  Object.fromEntries(
    observation.signs.flatMap(({ id, volunteered }) => {
      const value = of(id) ?? 'no'
      return volunteered && value !== 'yes' ? [] : [[id, value] as const]
    })
  )
