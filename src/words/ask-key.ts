import type { Observation } from '../tree/observation.ts'
import type { TextKey } from './text-key.ts'
import type { Words } from './words.ts'

/**
 * The text that asks for an observation: as a rule its heading; of a jar to which nobody goes back what
 * was seen before, because "look down into the jar" would send somebody there.
 */
export function askKey(words: Words, observation: string, recalled: boolean): TextKey {
  const memory: TextKey = `ui:recall.${observation}`
  if (!recalled) return `observations:${observation}.ask`
  return words.has(memory) ? memory : 'ui:recall.anything'
}

/** How to find the answer. From memory nobody is sent to the jar, but days are counted as they always are. */
export function howKey(words: Words, observation: Observation, recalled: boolean): TextKey {
  const { id, kind } = observation
  const memory: TextKey = `ui:recall-how.${id}`
  if (recalled && words.has(memory)) return memory
  const isCount = kind === 'measure' && observation.unit === 'day'
  return recalled && !isCount ? 'ui:hands-off' : `observations:${id}.how`
}
