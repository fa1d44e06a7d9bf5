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
