import type { Answers } from '../../tree/answers.ts'
import { type Derivation, derivationOf, MODEL_INPUTS, type Worked } from '../../tree/derived.ts'
import type { Observation } from '../../tree/observation.ts'
import type { Tree } from '../../tree/tree.ts'
import { acidProgress } from './acid-progress.ts'
import { bottlePressure } from './bottle-pressure.ts'
import type { WorksOut } from './inputs.ts'
import { mixAcidity } from './mix-acidity.ts'
import { saltShare } from './salt-share.ts'
import { starterShare } from './starter-share.ts'

const MODELS: Readonly<Record<Derivation['by'], WorksOut>> = {
  'starter-share': starterShare,
  'mix-acidity': mixAcidity,
  'acid-progress': acidProgress,
  'bottle-pressure': bottlePressure,
  'salt-share': saltShare
}

/** Works one observation out from what was told; null while something that it needs is not told yet. */
export function workOut(observation: Observation | undefined, answers: Answers): Worked | null {
  const derivation = derivationOf(observation)
  if (derivation === null) return null
  const inputs = Object.fromEntries(
    MODEL_INPUTS[derivation.by].map(input => {
      const id = derivation.from[input] ?? ''
      return [input, Object.hasOwn(answers, id) ? answers[id] : undefined]
    })
  )
  const worked = MODELS[derivation.by](inputs)
  return worked && { by: derivation.by, ...worked }
}

/** The answers with all that can be worked out from them. A direct answer wins. */
export function withDerived(tree: Tree, answers: Answers): Answers {
  const derived = Object.values(tree.observations).flatMap(observation => {
    const worked = Object.hasOwn(answers, observation.id) ? null : workOut(observation, answers)
    return worked === null ? [] : [[observation.id, worked.answer] as const]
  })
  return derived.length === 0 ? answers : { ...answers, ...Object.fromEntries(derived) }
}
